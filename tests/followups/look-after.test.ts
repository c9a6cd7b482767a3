import { describe, expect, test } from 'vitest';
import { ANSWERS } from '../../src/followups/answers.ts';
import { followUps } from '../../src/followups/follow-ups.ts';
import type { DiaryFact, LookAfterRow } from '../../src/followups/item.ts';
import { cautionsFor, keepOutAfter, LOOK_AFTER, nextLook, rowsFor } from '../../src/followups/look-after.ts';
import { ACTION_KINDS, type ActionKind, FINDING_KINDS } from '../../src/reading/record.ts';

const DONE = '2030-03-04';

describe('the look after work done on Mon 4 Mar', () => {
  test.each<[ActionKind, string, string]>([
    ['replant', '2030-03-14', '2030-03-18'],
    ['hand_weed', '2030-03-11', '2030-03-13'],
    ['irrigate', '2030-03-05', '2030-03-05'],
    ['mend_bund', '2030-03-05', '2030-03-05'],
    ['spray', '2030-03-11', '2030-03-14'],
    ['control_rodents', '2030-03-11', '2030-03-13'],
  ])('%s is due from %s to %s', (kind, from, to) => {
    expect(nextLook(rowsFor(LOOK_AFTER, kind), DONE, DONE, false)?.due).toMatchObject({
      from,
      to,
      forecast: false,
    });
  });

  test('after topdressing the water comes first, then the colour', () => {
    const rows = rowsFor(LOOK_AFTER, 'fertilise');
    expect(nextLook(rows, DONE, '2030-03-06', false)?.lookAt).toContain('water');
    expect(nextLook(rows, DONE, '2030-03-07', false)?.lookAt).toBe('leaf colour');
    expect(nextLook(rows, DONE, '2030-03-05', true)?.lookAt).toBe('leaf colour');
  });

  test('a farm that looks after its weeding at ten days is asked at ten days', () => {
    const own: LookAfterRow[] = [{ ...rowsFor(LOOK_AFTER, 'hand_weed')[0]!, days: 10, goodFromDays: 8 }];
    expect(item(own, '2030-03-05').due?.from).toBe('2030-03-14');
    expect(item(own, '2030-03-11').state).toBe('to_look');
    expect(item(own, '2030-03-12').state).toBe('closed');
  });

  test('without a row the work still waits for a look, without a day', () => {
    expect(item([], '2030-03-03')).toMatchObject({
      state: 'to_look',
      bucket: 'to_look_again',
      timing: 'undated',
    });
  });
});

/** Weeding done on Mon 4 Mar, and a clean plot seen on `cleanOn`. */
function item(lookAfter: LookAfterRow[], cleanOn: string) {
  const base = { plot: 'B2', by: 'Ana', words: '' };
  const facts: DiaryFact[] = [
    {
      ...base,
      ...{ id: 'a:actions:0', noteId: 'a', observedAt: `${DONE}T07:00` },
      fact: { list: 'actions', fact: { plot: 'B2', kind: 'hand_weed', status: 'done' } },
    },
    {
      ...base,
      ...{ id: 'b:findings:0', noteId: 'b', observedAt: `${cleanOn}T07:00` },
      fact: { list: 'findings', fact: { plot: 'B2', kind: 'weeds', status: 'absent' } },
    },
  ];
  return followUps({ facts, steps: [], lookAfter, forecasts: [], today: '2030-03-05' })[0]!;
}

test('every kind of work with a result to see has a row that closes; looking, counting and telling have none', () => {
  const closing = new Set(LOOK_AFTER.filter((row) => !row.passes).map((row) => row.action));
  expect(ACTION_KINDS.filter((kind) => !closing.has(kind))).toEqual(['inspect', 'measure', 'tell', 'leave']);
});

test('every problem is answered by some work', () => {
  const answered = new Set(Object.values(ANSWERS).flatMap(({ usual, also }) => [...usual, ...also]));
  expect(FINDING_KINDS.filter((kind) => !answered.has(kind))).toEqual([]);
});

test('dangerous work carries its cautions and gives way to the label', () => {
  for (const kind of ['spray', 'control_rodents', 'control_snails'] as const)
    expect(cautionsFor(kind).join(' ')).toMatch(/label/);
  expect(cautionsFor('harvest').join(' ')).toMatch(/machines.*thunderstorm/);
  expect(keepOutAfter('spray', DONE)?.through).toBe('2030-03-07');
  expect(keepOutAfter('hand_weed', DONE)).toBeUndefined();
});
