/**
 * Works the follow-ups out for the plots that something happened to, when a list is asked for. That something happened is
 * marked in the same commit as the happening, so that neither a stop nor a hurry can leave an item behind.
 */
import { followUps } from '../followups/follow-ups.ts';
import type { DiaryFact, FollowUp, LookAfterRow, PersonStep, StageForecast } from '../followups/item.ts';
import { LOOK_AFTER } from '../followups/look-after.ts';
import { expectedStages } from '../plots/expected-stages.ts';
import type { Db } from '../storage/open-store.ts';
import type { FollowUpRow } from '../storage/tables.ts';
import type { Diary } from './diary.ts';
import { localToday, type Plot, readPlots } from './farm.ts';

/** To be called in the transaction that changes the facts or steps of these plots. */
export async function markStale(db: Db, plots: Iterable<string | null>): Promise<void> {
  for (const plot of plots) {
    await db
      .insertInto('follow_ups_stale')
      .values({ plot: plot ?? '' })
      .onConflict((clash) => clash.doNothing())
      .execute();
  }
}

/** The lists speak of today: what is stale is worked out again, and all of it when the day has changed. */
export async function followUpsOfToday(diary: Diary): Promise<void> {
  const today = await localToday(diary);
  const row = await diary.db.selectFrom('follow_ups_day').select('day').executeTakeFirst();
  const stale = await diary.db.selectFrom('follow_ups_stale').select('plot').execute();
  if (row?.day === today && stale.length === 0) return;
  const known = { today, known: await readPlots(diary), lookAfter: await lookAfterRows(diary.db) };
  await diary.db.transaction().execute(async (db) => {
    const plots = row?.day === today ? stale.map(({ plot }) => plot || null) : await plotsWithItems(db);
    for (const plot of plots) await fileOfPlot(db, plot, known);
    await db
      .deleteFrom('follow_ups_stale')
      .where(
        'plot',
        'in',
        [...plots].map((plot) => plot ?? ''),
      )
      .execute();
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

/** What the fold needs besides the plot's own facts and steps. */
interface Known {
  today: string;
  known: Plot[];
  lookAfter: LookAfterRow[];
}

async function fileOfPlot(db: Db, plot: string | null, { today, known, lookAfter }: Known): Promise<void> {
  const facts = await factsOfPlot(db, plot);
  const steps = await stepsOfPlot(db, plot);
  const forecasts = stageForecasts(
    known.find(({ code }) => code === plot),
    facts,
  );
  const items = followUps({ facts, steps, lookAfter, forecasts, today });
  await db
    .deleteFrom('follow_ups')
    .where('plot', plot === null ? 'is' : '=', plot)
    .execute();
  const rows = items.map(toRow);
  for (let at = 0; at < rows.length; at += 50)
    await db
      .insertInto('follow_ups')
      .values(rows.slice(at, at + 50))
      .execute();
}

async function factsOfPlot(db: Db, plot: string | null): Promise<DiaryFact[]> {
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
    .where('facts.plot', plot === null ? 'is' : '=', plot)
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

async function stepsOfPlot(db: Db, plot: string | null): Promise<PersonStep[]> {
  const rows = await db
    .selectFrom('steps')
    .select('step')
    .where('plot', plot === null ? 'is' : '=', plot)
    .execute();
  return rows.map((row) => JSON.parse(row.step) as PersonStep);
}

/** Observed stages as they were seen; those still to come from the crop's dates, marked as forecast. */
function stageForecasts(plot: Plot | undefined, facts: DiaryFact[]): StageForecast[] {
  if (!plot) return [];
  const observed = facts.flatMap(({ fact, observedAt }): StageForecast[] =>
    fact.list === 'stages' && fact.fact.status === 'current'
      ? [{ plot: plot.code, stage: fact.fact.stage, date: observedAt.slice(0, 10), sure: 'observed' }]
      : [],
  );
  const seen = new Set(observed.map(({ stage }) => stage));
  const forecast = expectedStages(plot.crop ?? { daysToMaturity: null, sownOn: null, plantedOn: null })
    .filter(({ stage }) => !seen.has(stage))
    .map(({ stage, from }): StageForecast => ({ plot: plot.code, stage, date: from, sure: 'forecast' }));
  return [...observed, ...forecast];
}

async function plotsWithItems(db: Db): Promise<Set<string | null>> {
  const rows = await Promise.all([
    db.selectFrom('facts').select('plot').distinct().execute(),
    db.selectFrom('steps').select('plot').distinct().execute(),
    db.selectFrom('follow_ups').select('plot').distinct().execute(),
  ]);
  return new Set(rows.flat().map((row) => row.plot));
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
