/**
 * Works the follow-ups out when a list is asked for. That something happened is
 * marked in the same commit as the happening, so that neither a stop nor a hurry can leave an item behind.
 */
import { isDeepStrictEqual } from 'node:util';
import { followUps } from '../followups/follow-ups.ts';
import type { DiaryFact, FollowUp, LookAfterRow, PersonStep, StageForecast } from '../followups/item.ts';
import { LOOK_AFTER } from '../followups/look-after.ts';
import { expectedStages } from '../plots/expected-stages.ts';
import type { Db } from '../storage/open-store.ts';
import type { FollowUpRow } from '../storage/tables.ts';
import type { Diary } from './diary.ts';
import { localToday, type Plot, readPlots } from './farm.ts';

/** To be called in the transaction that changes facts or steps. */
export const markStale = (db: Db) => db.deleteFrom('follow_ups_day').execute();

/**
 * The lists speak of today: when something happened since they were worked out, or the day has changed, they are worked out
 * again. Always of the whole farm, because rain, the next walk or a report without a plot move items anywhere.
 */
export async function followUpsOfToday(diary: Diary): Promise<void> {
  const today = await localToday(diary);
  const row = await diary.db.selectFrom('follow_ups_day').select('day').executeTakeFirst();
  if (row?.day === today) return;
  const plots = await readPlots(diary);
  const lookAfter = await lookAfterRows(diary.db);
  await diary.db.transaction().execute(async (db) => {
    const facts = await allFacts(db);
    const steps = await allSteps(db);
    const items = followUps({ facts, steps, lookAfter, forecasts: plots.flatMap(stageForecasts), today });
    await fileChanged(db, items.map(toRow));
    await noteDay(db, today);
  });
}

/** The farm's own rows where it has any for an action, else those that every farm starts with. */
export async function lookAfterRows(db: Db): Promise<LookAfterRow[]> {
  const own = (await db.selectFrom('look_after').select('row').execute()).map(
    ({ row }) => JSON.parse(row) as LookAfterRow,
  );
  const ruled = new Set(own.map((row) => row.action));
  return [...LOOK_AFTER.filter((row) => !ruled.has(row.action)), ...own];
}

async function allFacts(db: Db): Promise<DiaryFact[]> {
  const rows = await db
    .selectFrom('facts')
    .innerJoin('notes', 'notes.id', 'facts.note_id')
    .select([
      'facts.id',
      'facts.note_id',
      'facts.observed_at',
      'facts.plot',
      'facts.list',
      'facts.fact',
      'facts.words',
      'notes.author',
    ])
    .execute();
  return rows.map((row) => ({
    id: row.id,
    noteId: row.note_id,
    observedAt: row.observed_at,
    plot: row.plot,
    by: row.author,
    fact: { list: row.list, fact: JSON.parse(row.fact) } as DiaryFact['fact'],
    words: row.words,
  }));
}

async function allSteps(db: Db): Promise<PersonStep[]> {
  const rows = await db.selectFrom('steps').select('step').execute();
  return rows.map((row) => JSON.parse(row.step) as PersonStep);
}

/** From the dates of the crop that stands; what was seen moves items by itself. */
const stageForecasts = ({ code, crop }: Plot): StageForecast[] =>
  crop
    ? expectedStages(crop).map(({ stage, from }) => ({ plot: code, stage, date: from, sure: 'forecast' }))
    : [];

/** Only rows that differ are written. */
async function fileChanged(db: Db, rows: FollowUpRow[]): Promise<void> {
  const filed = new Map(
    (await db.selectFrom('follow_ups').selectAll().execute()).map((row) => [row.id, row]),
  );
  const changed = rows.filter((row) => !isDeepStrictEqual(filed.get(row.id), row));
  const kept = new Set(rows.map(({ id }) => id));
  const gone = [...filed.keys()].filter((id) => !kept.has(id)).concat(changed.map(({ id }) => id));
  for (let at = 0; at < gone.length; at += 500)
    await db
      .deleteFrom('follow_ups')
      .where('id', 'in', gone.slice(at, at + 500))
      .execute();
  for (let at = 0; at < changed.length; at += 50)
    await db
      .insertInto('follow_ups')
      .values(changed.slice(at, at + 50))
      .execute();
}

const noteDay = (db: Db, day: string) =>
  db
    .insertInto('follow_ups_day')
    .values({ id: 'day', day })
    .onConflict((clash) => clash.column('id').doUpdateSet({ day }))
    .execute();

const toRow = (item: FollowUp): FollowUpRow => ({
  id: item.id,
  plot: item.plot,
  kind: item.kind,
  state: item.state,
  bucket: item.bucket,
  due_from: item.due?.from ?? null,
  due_to: item.due?.to ?? null,
  who: item.who ?? null,
  item: JSON.stringify(item),
});
