/** The follow-ups as files: a calendar that other programs subscribe to, and a table. */
import Papa from 'papaparse';
import { calendarText } from '../followups/calendar.ts';
import type { FollowUp } from '../followups/item.ts';
import type { Diary } from './diary.ts';
import { localToday, readFarm } from './farm.ts';
import { followUpsOfToday } from './file-follow-ups.ts';
import { everyFollowUp, type FollowUpFilter } from './follow-up-lists.ts';

export async function followUpCalendar(diary: Diary): Promise<string> {
  await followUpsOfToday(diary);
  const rows = await diary.db
    .selectFrom('follow_ups')
    .select('item')
    .where('bucket', '!=', 'settled')
    .orderBy('due_to')
    .execute();
  const farm = await readFarm(diary);
  return calendarText(
    rows.map(({ item }) => JSON.parse(item) as FollowUp),
    {
      name: `${farm?.name ?? 'Bundwalk'}: follow-ups`,
      source: 'bundwalk.invalid',
      writtenAt: diary.now().toString({ smallestUnit: 'second' }),
      today: await localToday(diary),
    },
  );
}

/** Everything that the page's filter lets through, also what its lists do not show at once, as CSV. */
export async function followUpCsv(diary: Diary, filter: FollowUpFilter): Promise<string> {
  const rows = (await everyFollowUp(diary, filter)).map(({ list, item }) => ({
    list,
    plot: item.plot,
    kind: item.kind,
    title: item.title,
    due_to: item.dueTo,
    due: item.due,
    stands: item.stands,
    state: item.state,
    who: item.who,
    words: item.words,
    note_id: item.noteId,
    id: item.id,
  }));
  return Papa.unparse(
    { fields: [...FIELDS], data: rows.map((row) => FIELDS.map((field) => row[field])) },
    { escapeFormulae: true, newline: '\n' },
  );
}

const FIELDS = [
  'list',
  'plot',
  'kind',
  'title',
  'due_to',
  'due',
  'stands',
  'state',
  'who',
  'words',
  'note_id',
  'id',
] as const;
