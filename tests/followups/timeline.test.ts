import { describe, expect, test } from 'vitest';
import { followUps } from '../../src/followups/follow-ups.ts';
import type { DiaryFact, PersonStep, StageForecast } from '../../src/followups/item.ts';
import { LOOK_AFTER } from '../../src/followups/look-after.ts';

const plan: DiaryFact = {
  ...{
    id: 'n1:actions:0',
    noteId: 'n1',
    observedAt: '2030-03-04T07:00',
    plot: 'B2',
    by: 'Ana',
    words: 'weed B2',
  },
  fact: { list: 'actions', fact: { plot: 'B2', kind: 'hand_weed', status: 'planned' } },
};
const step = (more: Partial<PersonStep>): PersonStep => ({
  ...{ id: 's1', itemId: plan.id, at: '2030-03-05T12:00', by: 'Ben', kind: 'report_done', words: '' },
  snapshot: { plot: 'B2', kind: 'hand_weed', openedAt: plan.observedAt, words: plan.words, noteId: 'n1' },
  ...more,
});
const fold = (
  facts: DiaryFact[],
  steps: PersonStep[],
  forecasts: StageForecast[] = [],
  today = '2030-03-08',
) => followUps({ facts, steps, lookAfter: LOOK_AFTER, forecasts, today });

describe('what arrives twice or out of order', () => {
  test('of two readings under one id the same is kept, whichever came first', () => {
    const other: DiaryFact = { ...plan, words: 'weed B2 soon', by: 'Bea' };
    expect(fold([plan, other], [])).toEqual(fold([other, plan], []));
    expect(fold([plan, other], [])).toHaveLength(1);
  });

  test('a step whose clock runs behind its note still counts', () => {
    const [item] = fold([plan], [step({ at: '2030-03-03T12:00', on: '2030-03-04' })]);
    expect(item).toMatchObject({ state: 'reported', doneOn: '2030-03-04' });
  });

  test('a step goes with its work when the facts of the note move up by one', () => {
    const moved: DiaryFact[] = [
      { ...plan, id: 'n1:actions:1' },
      { ...plan, fact: { list: 'actions', fact: { plot: 'B2', kind: 'drain', status: 'planned' } } },
    ];
    const items = fold(moved, [step({})]);
    expect(items.map(({ kind, state }) => `${kind} ${state}`).sort()).toEqual([
      'drain open',
      'hand_weed reported',
    ]);
  });

  test('a step on a note that is gone keeps its item, with the day it was opened', () => {
    const items = fold([], [step({ kind: 'put_off', when: { from: '2030-03-20', to: '2030-03-20' } })]);
    expect(items).toHaveLength(1);
    expect(items[0]).toMatchObject({
      openedByHand: true,
      state: 'put_off',
      openedAt: plan.observedAt,
      kind: 'hand_weed',
    });
  });

  test('an undo that is undone leaves the first step standing', () => {
    const undo = step({ id: 's2', kind: 'undo', undoes: 's1', at: '2030-03-06T12:00' });
    const redo = step({ id: 's3', kind: 'undo', undoes: 's2', at: '2030-03-07T12:00' });
    expect(fold([plan], [step({}), undo])[0]!.state).toBe('open');
    expect(fold([plan], [redo, undo, step({})])[0]!.state).toBe('reported');
  });

  test('steps that undo each other in a ring harm nothing', () => {
    const ring = [
      step({}),
      step({ id: 's2', kind: 'undo', undoes: 's3' }),
      step({ id: 's3', kind: 'undo', undoes: 's2' }),
    ];
    expect(fold([plan], ring)).toEqual(fold([plan], [...ring].reverse()));
  });
});

describe('stages from the plot’s records', () => {
  const waiting: DiaryFact = {
    ...plan,
    fact: {
      list: 'actions',
      fact: {
        plot: 'B2',
        kind: 'fertilise',
        status: 'planned',
        when: { trigger: 'panicle_initiation', days: 2 },
      },
    },
  };
  const stage = (date: string, sure: StageForecast['sure']): StageForecast => ({
    ...{ plot: 'B2', stage: 'panicle_initiation', date, sure },
  });

  test('an observed date wakes, and the days after it count', () => {
    const [item] = fold([waiting], [], [stage('2030-03-14', 'forecast'), stage('2030-03-07', 'observed')]);
    expect(item!.due).toMatchObject({ from: '2030-03-09', to: '2030-03-09', forecast: false });
    expect(item!.waitsFor).toBeUndefined();
  });

  test('what was observed in an earlier crop does not', () => {
    const [item] = fold([waiting], [], [stage('2029-09-14', 'observed'), stage('2030-03-14', 'forecast')]);
    expect(item).toMatchObject({ bucket: 'waiting', due: { from: '2030-03-16', forecast: true } });
  });

  test('a forecast day that has passed asks for a look and is never late', () => {
    const [item] = fold([waiting], [], [stage('2030-03-10', 'forecast')], '2030-04-20');
    expect(item).toMatchObject({ bucket: 'today', waitsFor: { trigger: 'panicle_initiation' } });
  });
});
