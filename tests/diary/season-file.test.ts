import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { Diary } from '../../src/diary/diary.ts';
import { readCrews, readPlots } from '../../src/diary/farm.ts';
import { checkSeasonFile, loadSeasonFile, seasonFileText } from '../../src/diary/season-file.ts';
import { openTestDiary, SEASON } from './test-diary.ts';

/** Each fault, and the line in which it stands. */
const FAULTS: [string, string, number, RegExp][] = [
  ['a date that does not exist', SEASON.replace('from: 2031-06-01', 'from: 2031-06-31'), 3, /2031-07-05/],
  [
    'a season that ends before it begins',
    SEASON.replace('to: 2031-11-30', 'to: 2031-01-30'),
    3,
    /ends before it begins/,
  ],
  ['an unknown time zone', SEASON.replace('Asia/Manila', 'Asia/Nowhere'), 2, /IANA/],
  [
    'planted before it was sown',
    SEASON.replace(
      'sown: 2031-06-10, planted: 2031-07-02 }, protocol',
      'sown: 2031-07-10, planted: 2031-07-02 }, protocol',
    ),
    9,
    /before it was sown/,
  ],
  [
    'days to maturity that no rice has',
    SEASON.replace('daysToMaturity: 120, establishment', 'daysToMaturity: 12, establishment'),
    8,
    /at least 60/,
  ],
  ['a code twice', SEASON.replace('code: B3', 'code: b2'), 10, /stands twice, first in line 9/],
  [
    'a field that nobody described',
    SEASON.replace('{ code: B4, field: B,', '{ code: B4, field: Q,'),
    11,
    /field Q is not listed/,
  ],
  [
    'a word that is no key',
    SEASON.replace('replicate: 2, walk: 3', 'replikate: 2, walk: 3'),
    10,
    /replikate/,
  ],
  ['a bracket left open', SEASON.replace('walk: 4 }', 'walk: 4'), 12, /./],
  ['a latitude off the globe', SEASON.replace('latitude: 15.5', 'latitude: 155'), 2, /at most 90/],
  ['no plots', 'farm: { name: A, timeZone: UTC }\nplots: []\n', 2, /at least one plot/],
  ['nothing at all', '', 1, /./],
];

test.each(FAULTS)('%s is named with its line', (_name, text, line, words) => {
  const answer = checkSeasonFile(text);
  expect('problems' in answer && answer.problems).toEqual(
    expect.arrayContaining([{ line, words: expect.stringMatching(words) }]),
  );
});

describe('loading', () => {
  let diary: Diary;
  let end: () => Promise<void>;
  beforeEach(async () => {
    ({ diary, end } = await openTestDiary());
  });
  afterEach(() => end());

  test('twice adds nothing twice', async () => {
    await loadSeasonFile(diary, SEASON);
    expect((await readPlots(diary)).map(({ code }) => code)).toEqual(['B1', 'B2', 'B3', 'B4']);
    expect(await readCrews(diary)).toHaveLength(1);
    expect(await diary.db.selectFrom('crops').selectAll().execute()).toHaveLength(2);
  });

  test('a file with a fault changes nothing', async () => {
    await loadSeasonFile(diary, SEASON.replace('Kestrel Bottom', 'Other').replace('walk: 2', 'walk: none'));
    expect(await diary.db.selectFrom('farm').select('name').execute()).toEqual([{ name: 'Kestrel Bottom' }]);
  });

  test('what is taken out again loads as the same season', async () => {
    const before = await readPlots(diary);
    const answer = await loadSeasonFile(diary, await seasonFileText(diary));
    expect(answer).toMatchObject({ loaded: { plots: 4 } });
    expect(await readPlots(diary)).toEqual(before);
  });

  test('keeps the protocol remark with the crop', async () => {
    expect((await readPlots(diary))[1]!.crop!.protocol).toEqual(['zero nitrogen: meant to be yellow']);
  });
});
