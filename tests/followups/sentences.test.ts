import { describe, expect, test } from 'vitest';
import type { FollowUp } from '../../src/followups/item.ts';
import { BUCKETS, inListOrder } from '../../src/followups/order.ts';
import { dueSentence, stateSentence, titleOf } from '../../src/followups/sentences.ts';

const TODAY = '2030-03-08';
const ITEM: FollowUp = {
  ...{
    id: 'a',
    alsoKnownAs: ['a'],
    plot: 'B2',
    kind: 'hand_weed',
    state: 'open',
    openedAt: '2030-03-04T07:00',
  },
  ...{ openedByHand: false, bucket: 'soon', timing: 'soon', hearsay: false, cautions: [], steps: [] },
};
const due = (from: string, to: string, because = 'the day that was said', forecast = false) => ({
  due: { from, to, because, forecast },
});

describe('sentences', () => {
  test.each<[string, Partial<FollowUp>]>([
    ['No day given', {}],
    ['Due by Tue 12 Mar', due('2030-03-04', '2030-03-12')],
    ['Due today', due('2030-03-08', '2030-03-08')],
    ['Due Mon 11 Mar to Tue 12 Mar', due('2030-03-11', '2030-03-12')],
    ['Late by 1 day: due on Thu 7 Mar', due('2030-03-07', '2030-03-07')],
    ['Waits for rain', { waitsFor: { trigger: 'rain', words: 'rain' }, bucket: 'waiting' }],
    [
      'Waits for panicle initiation, forecast Thu 14 Mar',
      {
        waitsFor: { trigger: 'panicle_initiation', words: 'panicle initiation' },
        ...due('2030-03-14', '2030-03-17', 'panicle initiation, forecast Thu 14 Mar', true),
        bucket: 'waiting',
      },
    ],
    [
      'Due by Mon 11 Mar, a forecast date (before the spraying, due Tue 12 Mar)',
      due('2030-03-04', '2030-03-11', 'before the spraying, due Tue 12 Mar', true),
    ],
    [
      'Look again Mon 11 Mar to Wed 13 Mar: regrowth',
      { state: 'to_look', lookAt: 'regrowth', ...due('2030-03-11', '2030-03-13', '7 days after the work') },
    ],
    [
      'Look again on Tue 12 Mar: count the hills that took',
      {
        state: 'to_look',
        lookAt: 'count the hills that took',
        ...due('2030-03-12', '2030-03-12', '10 days after the work'),
      },
    ],
    [
      'Look again by Sun 10 Mar: leaf colour',
      { state: 'reported', lookAt: 'leaf colour', ...due('2030-03-07', '2030-03-10') },
    ],
    ['Look again today: the result', { state: 'to_look', ...due('2030-03-08', '2030-03-08') }],
    [
      'Late by 3 days: to be looked at since Tue 5 Mar (the mended place, next morning)',
      {
        state: 'to_look',
        lookAt: 'the mended place, next morning',
        ...due('2030-03-05', '2030-03-05', 'the day after the work'),
      },
    ],
    [
      'Late by 1 day: to be looked at by Thu 7 Mar (regrowth)',
      { state: 'to_look', lookAt: 'regrowth', ...due('2030-03-05', '2030-03-07', '7 days after the work') },
    ],
    ['Put off, no day given', { state: 'put_off' }],
    ['', { state: 'closed', bucket: 'settled' }],
  ])('%s', (sentence, more) => {
    expect(dueSentence({ ...ITEM, ...more }, TODAY)).toBe(sentence);
  });

  test('a title names work, plot, place and problem', () => {
    expect(titleOf({ ...ITEM, place: 'north bund', problem: 'weeds' })).toBe(
      'Hand weeding in B2, north bund, against weeds',
    );
    expect(titleOf({ ...ITEM, plot: null })).toBe('Hand weeding, plot not named');
  });

  test('work that only somebody else speaks of is said to be done, not done', () => {
    expect(stateSentence({ ...ITEM, state: 'reported', doneOn: '2030-03-07' })).toBe(
      'Said to be done on Thu 7 Mar; nobody has looked yet',
    );
  });
});

test('the list runs late, today, soon, waiting, to be looked at again, and within each by day', () => {
  expect(BUCKETS.slice(0, 5)).toEqual(['late', 'today', 'soon', 'waiting', 'to_look_again']);
  const items: FollowUp[] = [
    { ...ITEM, id: 'e', bucket: 'to_look_again' },
    { ...ITEM, id: 'c', bucket: 'soon' },
    { ...ITEM, id: 'd', bucket: 'waiting' },
    { ...ITEM, id: 'b', bucket: 'soon', ...due('2030-03-09', '2030-03-09') },
    { ...ITEM, id: 'a', bucket: 'late' },
  ];
  expect(items.sort(inListOrder).map(({ id }) => id)).toEqual(['a', 'b', 'c', 'd', 'e']);
});
