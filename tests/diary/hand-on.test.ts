import ICAL from 'ical.js';
import Papa from 'papaparse';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { crewSheet } from '../../src/diary/crew-sheet.ts';
import { type Diary, isRefusal } from '../../src/diary/diary.ts';
import { followUpCalendar, followUpCsv } from '../../src/diary/follow-up-files.ts';
import { openOnPlot } from '../../src/diary/follow-up-lists.ts';
import { type HandedOn, makeHandOn, readHandOn, tickHandedOn } from '../../src/diary/hand-on.ts';
import { keepNote } from '../../src/diary/keep-note.ts';
import { changeLookAfter, lookAfterTable, resetLookAfter } from '../../src/diary/look-after-table.ts';
import { openTestDiary } from './test-diary.ts';

let diary: Diary;
let end: () => Promise<void>;
let setTime: (at: string) => void;
beforeEach(async () => {
  ({ diary, end, setTime } = await openTestDiary('2031-07-14T00:00:00Z'));
  const notes: [string, string][] = [
    ['note-0001', 'B3: bund leaking near the gate, mend it today.'],
    ['note-0002', 'B1: 30 kg N per hectare today.'],
    ['note-0003', 'B2: weeds thick, hand weed by 30 July.'],
  ];
  for (const [id, text] of notes) await keepNote(diary, { id, text, observedAt: '2031-07-14T07:00' });
});
afterEach(() => end());

describe('the sheet for a day', () => {
  test('goes in walking order and says how much for the plot', async () => {
    const { plots } = await crewSheet(diary, '2031-07-14');
    expect(plots.map(({ plot }) => plot.code).slice(0, 1)).toEqual(['B1']);
    const job = plots[0]!.jobs.find(({ what }) => what === 'Fertilise')!;
    // 30 kg/ha on 5 m x 20 m: 30 x 100 / 10 000 = 0.3 kg.
    expect(job).toMatchObject({ dose: '30 kg/ha N', doseForPlot: '300 g N' });
  });
});

describe('a link for the crew', () => {
  let link: HandedOn;
  beforeEach(async () => {
    link = (await makeHandOn(diary, '2031-07-14', null)) as HandedOn;
  });
  const sheet = async () => {
    const answer = await readHandOn(diary, link.token);
    if (isRefusal(answer)) throw new Error(answer.refused);
    return answer;
  };

  test('shows the sheet, and after a week no more', async () => {
    expect((await sheet()).plots.length).toBeGreaterThan(0);
    setTime('2031-07-21T00:00:00Z');
    expect(await readHandOn(diary, link.token)).toMatchObject({
      status: 410,
      refused: expect.stringMatching(/expired/),
    });
  });

  test('that is guessed shows nothing', async () => {
    expect(await readHandOn(diary, 'x'.repeat(24))).toMatchObject({ status: 404 });
  });

  test('a tick reports the work and does not close it', async () => {
    const { itemId } = (await sheet()).plots.find(({ plot }) => plot.code === 'B1')!.jobs[0]!;
    await tickHandedOn(diary, link.token, { id: 'tick-0001', itemId, name: 'Teun' });
    await tickHandedOn(diary, link.token, { id: 'tick-0001', itemId, name: 'Teun' });
    const [item] = (await openOnPlot(diary, 'B1')).filter(({ id }) => id === itemId);
    expect(item).toMatchObject({ state: 'reported' });
    expect(item!.steps.filter(({ by }) => by === 'Teun')).toHaveLength(1);
  });

  test('a tick without a name, or of other work, is refused in words', async () => {
    const { itemId } = (await sheet()).plots[0]!.jobs[0]!;
    expect(await tickHandedOn(diary, link.token, { id: 'tick-0001', itemId, name: ' ' })).toMatchObject({
      field: 'name',
    });
    expect(
      await tickHandedOn(diary, link.token, { id: 'tick-0001', itemId: 'other', name: 'Teun' }),
    ).toMatchObject({ status: 409 });
  });
});

describe('the list as files', () => {
  test('a calendar that a public parser reads, one event a dated item', async () => {
    const events = new ICAL.Component(ICAL.parse(await followUpCalendar(diary))).getAllSubcomponents(
      'vevent',
    );
    const dated = await diary.db
      .selectFrom('follow_ups')
      .select('id')
      .where('due_to', 'is not', null)
      .where('bucket', '!=', 'settled')
      .execute();
    expect(events).toHaveLength(dated.length);
    expect(dated.length).toBeGreaterThan(0);
  });
  test('a table with a row an item', async () => {
    const { data, errors } = Papa.parse<Record<string, string>>(await followUpCsv(diary, { plot: 'B2' }), {
      header: true,
    });
    expect(errors).toEqual([]);
    expect(data).toMatchObject([{ plot: 'B2', kind: 'hand_weed' }]);
  });
});

describe('the look afterwards', () => {
  const weeding = async () => (await lookAfterTable(diary)).find(({ action }) => action === 'hand_weed')!;
  test('has a source in every row', async () => {
    for (const { source } of await lookAfterTable(diary)) expect(source).not.toBe('');
  });
  test('can be set to the farm’s own days, and back', async () => {
    const { lookAt, days } = await weeding();
    await changeLookAfter(diary, {
      action: 'hand_weed',
      lookAt,
      days: 10,
      spanDays: 1,
      source: 'our own practice',
    });
    expect(await weeding()).toMatchObject({ days: 10, own: true, source: 'our own practice' });
    await resetLookAfter(diary, 'hand_weed');
    expect(await weeding()).toMatchObject({ days, own: false });
  });
  test('refuses days that are none', async () => {
    const { lookAt } = await weeding();
    expect(
      await changeLookAfter(diary, { action: 'hand_weed', lookAt, days: 'soon', spanDays: 1, source: 'x' }),
    ).toMatchObject({ field: 'days' });
    expect(
      await changeLookAfter(diary, { action: 'hand_weed', lookAt, days: -1, spanDays: 1, source: 'x' }),
    ).toMatchObject({ field: 'days' });
  });
});
