import { afterEach, beforeEach, expect, test } from 'vitest';
import { addFact, changeFact, strikeFact, undoCorrection } from '../../src/diary/correct.ts';
import { type Diary, isRefusal } from '../../src/diary/diary.ts';
import { openOnPlot } from '../../src/diary/follow-up-lists.ts';
import { keepNote } from '../../src/diary/keep-note.ts';
import { notePage } from '../../src/diary/note-page.ts';
import { readAllAgain } from '../../src/diary/read-again.ts';
import { openTestDiary } from './test-diary.ts';

let diary: Diary;
let end: () => Promise<void>;
beforeEach(async () => {
  ({ diary, end } = await openTestDiary());
  await keepNote(diary, {
    id: 'note-0001',
    text: 'B1: rats along the road bund. Set traps tonight.',
    observedAt: '2031-07-14T07:10',
  });
});
afterEach(() => end());

const page = async () => (await notePage(diary, 'note-0001'))!;
const sentences = async (): Promise<string[]> => (await page()).facts.map(({ sentence }) => sentence);
const factOf = async (kind: string) => (await page()).facts.find((fact) => fact.kind === kind)!;

test('what is struck is gone from the facts, stays visible, and its follow-up goes with it', async () => {
  const work = await factOf('control_rodents');
  await strikeFact(diary, 'note-0001', work.id, 'Odalys');
  expect((await page()).facts.some(({ kind }) => kind === 'control_rodents')).toBe(false);
  expect((await page()).struck).toMatchObject([{ sentence: work.sentence }]);
  expect(await openOnPlot(diary, 'B1')).toEqual([]);
});

test('a correction wins when the note is read again', async () => {
  const rats = await factOf('rodents');
  await changeFact(
    diary,
    'note-0001',
    rats.id,
    { list: 'findings', fact: { plot: 'B2', kind: 'rodents', status: 'suspected' } },
    'Odalys',
  );
  const before = await sentences();
  await readAllAgain(diary, { all: true });
  expect(await sentences()).toEqual(before);
  expect(await factOf('rodents')).toMatchObject({
    plot: 'B2',
    status: 'suspected',
    origin: 'person',
    id: rats.id,
  });
});

test('undo brings back what was read', async () => {
  const before = await sentences();
  const answer = await strikeFact(diary, 'note-0001', (await factOf('rodents')).id, 'Odalys');
  await undoCorrection(diary, (answer as { correction: string }).correction);
  expect(await sentences()).toEqual(before);
  expect((await page()).corrections).toMatchObject([{ verb: 'strike', by: 'Odalys', undone: true }]);
});

test('a fact can be added where the reader saw none', async () => {
  await addFact(
    diary,
    'note-0001',
    { list: 'measurements', fact: { plot: 'B1', quantity: 'burrows', value: '4' } },
    'Teun',
  );
  expect(await sentences()).toContain('4 burrows.');
});

test.each([
  [
    'a figure that is none',
    { list: 'measurements', fact: { plot: 'B1', quantity: 'burrows', value: 'lots' } },
    /no number/,
  ],
  ['a plot that nobody set up', { list: 'unvisited', fact: { plot: 'Q7' } }, /No plot is called Q7/],
  [
    'a kind that is not in the list',
    { list: 'findings', fact: { plot: 'B1', kind: 'ghosts', status: 'present' } },
    /Choose a problem/,
  ],
  [
    'a last day before the first',
    {
      list: 'actions',
      fact: { plot: 'B1', kind: 'spray', status: 'planned', when: { from: '2031-07-20', to: '2031-07-18' } },
    },
    /comes before the first/,
  ],
])('%s is refused in words and changes nothing', async (_name, fact, words) => {
  const before = await sentences();
  const answer = await addFact(diary, 'note-0001', fact, 'Teun');
  expect(isRefusal(answer) && answer.refused).toMatch(words);
  expect(await sentences()).toEqual(before);
});

test('a fact that stands no more is refused', async () => {
  const { id } = await factOf('rodents');
  await strikeFact(diary, 'note-0001', id, 'Odalys');
  expect(await strikeFact(diary, 'note-0001', id, 'Teun')).toMatchObject({ status: 409 });
});
