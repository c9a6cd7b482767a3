import { afterEach, beforeEach, expect, test } from 'vitest';
import type { Diary } from '../../src/diary/diary.ts';
import { followUpLists, openOnPlot } from '../../src/diary/follow-up-lists.ts';
import { keepNote } from '../../src/diary/keep-note.ts';
import { searchNotes } from '../../src/diary/search-notes.ts';
import { story } from '../../src/diary/story.ts';
import { takeStep } from '../../src/diary/take-step.ts';
import { walkSheet } from '../../src/diary/walk-sheet.ts';
import { openTestDiary } from './test-diary.ts';

let diary: Diary;
let end: () => Promise<void>;
let setTime: (at: string) => void;
beforeEach(async () => {
  ({ diary, end, setTime } = await openTestDiary('2031-07-21T00:00:00Z'));
  const notes: [string, string, string][] = [
    ['note-0001', '2031-07-07T07:00', 'B1 weeds coming between the rows, slight.'],
    [
      'note-0002',
      '2031-07-14T07:00',
      'B1 water 5 cm. Weeds thick now along the road bund, hand weed by Friday.',
    ],
    ['note-0003', '2031-07-14T07:20', 'B2 pale, as it should be. B1 taller than B2.'],
    ['note-0004', '2031-07-21T07:00', 'Did not get to B4.'],
  ];
  for (const [id, observedAt, text] of notes)
    await keepNote(diary, { id, observedAt, text, author: 'Odalys' });
});
afterEach(() => end());

test('is told newest first, with the crop’s age on each day', async () => {
  const { days } = (await story(diary, 'B1'))!;
  expect(days.map(({ day, age }) => [day, age])).toEqual([
    ['2031-07-14', '12 DAT'],
    ['2031-07-07', '5 DAT'],
  ]);
});

test('marks the note’s own words', async () => {
  const note = (await story(diary, 'B1', { show: 'measurements' }))!.days[0]!.notes[0]!;
  expect(note.facts.map(({ sentence }) => sentence)).toEqual(['Water 5 cm deep.']);
  expect(note.marks.map(({ start, end: to }) => note.text.slice(start, to)).join(' ')).toMatch(/5 cm/);
});

test('can be narrowed to one problem', async () => {
  const { days, problems } = (await story(diary, 'B1', { problem: 'weeds' }))!;
  expect(days).toHaveLength(2);
  expect(problems).toContainEqual({ kind: 'weeds', count: 2 });
});

test('can be narrowed to one problem and one kind at once', async () => {
  const note = { observedAt: '2031-07-13T07:00', plot: 'B1' };
  await keepNote(diary, { ...note, id: 'both-0001', text: 'Rats cutting hills. Set traps tonight.' });
  await keepNote(diary, { ...note, id: 'both-0002', text: 'Rats cutting hills.' });
  await keepNote(diary, { ...note, id: 'both-0003', text: 'Hand weed by Friday.' });
  const { days } = (await story(diary, 'B1', { problem: 'rodents', show: 'work' }))!;
  const ids = days.flatMap(({ notes }) => notes.map(({ id }) => id));
  expect(ids).toContain('both-0001');
  expect(ids).not.toContain('both-0002');
  expect(ids).not.toContain('both-0003');
});

test('of an unknown plot is null', async () => {
  expect(await story(diary, 'Q7')).toBeNull();
});

test('goes on page after page without losing or doubling a note', async () => {
  for (let n = 0; n < 95; n++)
    await keepNote(diary, {
      id: `more-${n}`,
      plot: 'B3',
      observedAt: `2031-07-15T07:${String(n % 60).padStart(2, '0')}`,
      text: `round ${n}`,
    });
  const seen: string[] = [];
  let before: string | undefined;
  do {
    const page = (await story(diary, 'B3', { before }))!;
    seen.push(...page.days.flatMap(({ notes }) => notes.map(({ id }) => id)));
    before = page.older ?? undefined;
  } while (before);
  expect(seen).toHaveLength(95);
  expect(new Set(seen).size).toBe(95);
});

test('a plot that was not looked at does not count as seen', async () => {
  const stop = (await walkSheet(diary)).find(({ plot }) => plot.code === 'B4')!;
  expect(stop.lastSeen).toBeNull();
});

test('notes are found by all of their words', async () => {
  expect((await searchNotes(diary, 'weeds friday')).notes.map(({ id }) => id)).toEqual(['note-0002']);
  expect((await searchNotes(diary, '100%')).notes).toEqual([]);
});

test('work that was due is late the week after, and reported work still waits for a look', async () => {
  const [item] = (await followUpLists(diary)).late;
  expect(item).toMatchObject({ plot: 'B1', kind: 'hand_weed' });
  await takeStep(diary, {
    id: 'step-0001',
    itemId: item!.id,
    kind: 'report_done',
    by: 'Teun',
    words: 'done this morning',
  });
  setTime('2031-07-29T00:00:00Z');
  const [after] = (await openOnPlot(diary, 'B1')).filter(({ kind }) => kind === 'hand_weed');
  expect(after!.state).not.toBe('closed');
  await takeStep(diary, {
    id: 'step-0002',
    itemId: after!.id,
    kind: 'look',
    found: 'fixed',
    by: 'Odalys',
    words: 'no regrowth',
  });
  expect((await openOnPlot(diary, 'B1')).filter(({ kind }) => kind === 'hand_weed')).toEqual([]);
});

test.each([
  [{ kind: 'look' }, /what was found/],
  [{ kind: 'put_off' }, /until which day/],
  [{ kind: 'drop' }, /why it is dropped/],
  [{ kind: 'put_off', until: '2031-02-30' }, /2031-07-14/],
] as const)('a step that says too little is refused: %o', async (step, words) => {
  const [item] = (await followUpLists(diary)).late;
  const answer = await takeStep(diary, {
    id: 'step-0009',
    itemId: item!.id,
    by: '',
    words: '',
    ...step,
  } as never);
  expect('refused' in answer && answer.refused).toMatch(words);
});
