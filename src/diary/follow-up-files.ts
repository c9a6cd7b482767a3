/** The follow-ups as files: a calendar that other programs subscribe to, and a table. */
import Papa from 'papaparse';
import { calendarText } from '../followups/calendar.ts';
import type { FollowUp } from '../followups/item.ts';
import type { Diary } from './diary.ts';
import { localToday, readFarm } from './farm.ts';
import { type FollowUpFilter, followUpLists } from './follow-up-lists.ts';

export async function followUpCalendar(diary: Diary): Promise<string> {
  const lists = await followUpLists(diary);
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
      name: `${farm?.name ?? 'Bundwalk'}: ${lists.total} follow-ups`,
      source: 'bundwalk.invalid',
      writtenAt: diary.now().toString({ smallestUnit: 'second' }),
      today: await localToday(diary),
    },
  );
}

/** The same list as on the page, as CSV. */
export async function followUpCsv(diary: Diary, filter: FollowUpFilter): Promise<string> {
  const { total: _total, ...lists } = await followUpLists(diary, filter);
  const rows = Object.entries(lists).flatMap(([list, items]) =>
    items.map(({ id, plot, kind, title, due, stands, state, who, words, noteId }) => ({
      list,
      plot,
      kind,
      title,
      due,
      stands,
      state,
      who,
      words,
      note_id: noteId,
      id,
    })),
  );
  return Papa.unparse(rows, { escapeFormulae: true, newline: '\n' });
}
