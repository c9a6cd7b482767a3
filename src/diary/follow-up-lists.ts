/** Follow-ups as lists: late, today, soon, waiting, to be looked at again, to be decided, later. */
import { type SelectQueryBuilder, sql } from 'kysely';
import type { Bucket, FollowUp, Found, ItemStepKind } from '../followups/item.ts';
import { dueSentence, stateSentence, titleOf } from '../followups/sentences.ts';
import { sayDose } from '../reading/say-fact.ts';
import type { FollowUpRow, Tables } from '../storage/tables.ts';
import type { Diary } from './diary.ts';
import { localToday } from './farm.ts';
import { followUpsOfToday } from './file-follow-ups.ts';

export interface FollowUpShown {
  id: string;
  plot: string | null;
  kind: FollowUp['kind'];
  /** `Hand weed along the north bund`. */
  title: string;
  /** `Due Fri 14 Mar`, `Waits for panicle initiation, forecast Fri 14 Mar`. */
  due: string;
  /** Where it stands, with who said so. */
  stands: string;
  state: FollowUp['state'];
  bucket: Bucket;
  who: string | null;
  /** The words that it grew from. */
  words: string;
  noteId: string | null;
  lookAt: string | null;
  cautions: string[];
  keepOut: string | null;
  dose: string | null;
  openedAt: string;
  doneOn: string | null;
  dueTo: string | null;
  steps: {
    id: string;
    what: ItemStepKind;
    at: string;
    by: string;
    /** Why it was taken to be about this item. */
    says: string;
    words: string;
    found: Found | null;
    noteId: string | null;
    undone: boolean;
    undoneBy: string;
  }[];
  question: FollowUp['unsure'] | null;
}

export interface FollowUpFilter {
  plot?: string | undefined;
  kind?: string | undefined;
  who?: string | undefined;
  /** Due on this day or before; what has no day is left out. */
  dueBy?: string | undefined;
  /** Also those that are closed, dropped or ruled out. */
  settled?: boolean | undefined;
}

export type FollowUpLists = Record<Bucket, FollowUpShown[]> & {
  /** All that stand open, shown or not. */
  total: number;
  /** All of each list, shown or not. */
  counts: Record<Bucket, number>;
};

const BUCKETS: Bucket[] = ['late', 'today', 'soon', 'to_look_again', 'waiting', 'to_decide', 'later'];
const MOST_A_LIST = 200;

/** Each list by due day, `most` of each at the most; `counts` and `total` count them all. */
export async function followUpLists(
  diary: Diary,
  filter: FollowUpFilter = {},
  most = MOST_A_LIST,
): Promise<FollowUpLists> {
  await followUpsOfToday(diary);
  const today = await localToday(diary);
  const buckets: Bucket[] = filter.settled ? [...BUCKETS, 'settled'] : BUCKETS;
  const { counts, total } = await followUpCounts(diary, filter);
  const lists = Object.fromEntries(
    await Promise.all(
      buckets.map(async (bucket) => {
        const rows = counts[bucket] > 0 ? await rowsOf(diary, bucket, filter).limit(most).execute() : [];
        return [bucket, rows.map((row) => showFollowUp(row, today))] as const;
      }),
    ),
  ) as Record<Bucket, FollowUpShown[]>;
  return { ...lists, settled: lists.settled ?? [], counts, total };
}

/** How many stand in each list, without reading one of them. */
export async function followUpCounts(
  diary: Diary,
  filter: FollowUpFilter,
): Promise<{ counts: Record<Bucket, number>; total: number }> {
  await followUpsOfToday(diary);
  const counts = await countsOf(diary, filter);
  return { counts, total: BUCKETS.reduce((sum, bucket) => sum + counts[bucket], 0) };
}

export interface FollowUpPage {
  items: FollowUpShown[];
  /** Where the next page begins, or null. */
  more: string | null;
}

/** One list from a cursor on: `2031-07-14/<id>`, as an earlier page gave it. */
export async function followUpPage(
  diary: Diary,
  bucket: Bucket,
  filter: FollowUpFilter,
  after: string | undefined,
  most: number,
): Promise<FollowUpPage> {
  await followUpsOfToday(diary);
  const today = await localToday(diary);
  const [, day, id] = /^(\d{4}-\d{2}-\d{2})?\/(.+)$/.exec(after ?? '') ?? [];
  let query = rowsOf(diary, bucket, filter);
  if (id) query = query.where(sql<boolean>`(coalesce(due_to, ''), id) > (${day ?? ''}, ${id})`);
  const rows = await query.limit(most + 1).execute();
  const shown = rows.slice(0, most);
  return {
    items: shown.map((row) => showFollowUp(row, today)),
    more: rows.length > most ? cursorAfter(shown.at(-1)!) : null,
  };
}

/** Where a list goes on after an item of it. */
export const cursorAfter = ({ due_to, id }: { due_to: string | null; id: string }): string =>
  `${due_to ?? ''}/${id}`;

/** Every item that the filter lets through, list by list, for files. */
export async function everyFollowUp(
  diary: Diary,
  filter: FollowUpFilter,
): Promise<{ list: Bucket; item: FollowUpShown }[]> {
  await followUpsOfToday(diary);
  const today = await localToday(diary);
  const all: { list: Bucket; item: FollowUpShown }[] = [];
  for (const list of filter.settled ? [...BUCKETS, 'settled' as const] : BUCKETS)
    for (const row of await rowsOf(diary, list, filter).execute())
      all.push({ list, item: showFollowUp(row, today) });
  return all;
}

/** Everybody to whom something open is given. */
export async function peopleWithWork({ db }: Diary): Promise<string[]> {
  const rows = await db
    .selectFrom('follow_ups')
    .select('who')
    .distinct()
    .where('who', 'is not', null)
    .where('bucket', '!=', 'settled')
    .orderBy('who')
    .execute();
  return rows.map(({ who }) => who!);
}

/** What stands open on a plot, most pressing first. */
export async function openOnPlot(diary: Diary, plot: string): Promise<FollowUpShown[]> {
  const lists = await followUpLists(diary, { plot });
  return [
    ...lists.late,
    ...lists.today,
    ...lists.to_look_again,
    ...lists.soon,
    ...lists.waiting,
    ...lists.to_decide,
    ...lists.later,
  ];
}

/** By its id, or by one that it had before it was taken up into another. */
export async function followUpById(diary: Diary, id: string): Promise<FollowUpShown | null> {
  await followUpsOfToday(diary);
  const row =
    (await diary.db.selectFrom('follow_ups').selectAll().where('id', '=', id).executeTakeFirst()) ??
    (await takenUp(diary, id));
  return row ? showFollowUp(row, await localToday(diary)) : null;
}

async function takenUp({ db }: Diary, id: string): Promise<FollowUpRow | undefined> {
  const rows = await db
    .selectFrom('follow_ups')
    .selectAll()
    .where(sql<boolean>`instr(item, ${JSON.stringify(id)}) > 0`)
    .execute();
  return rows.find(({ item }) => (JSON.parse(item) as FollowUp).alsoKnownAs.includes(id));
}

const rowsOf = ({ db }: Diary, bucket: Bucket, filter: FollowUpFilter) =>
  narrowed(db.selectFrom('follow_ups').selectAll(), filter)
    .where('bucket', '=', bucket)
    .orderBy('due_to')
    .orderBy('id');

async function countsOf({ db }: Diary, filter: FollowUpFilter): Promise<Record<Bucket, number>> {
  const rows = await narrowed(db.selectFrom('follow_ups'), filter)
    .select(['bucket', (eb) => eb.fn.countAll<number>().as('count')])
    .groupBy('bucket')
    .execute();
  const none = Object.fromEntries([...BUCKETS, 'settled'].map((bucket) => [bucket, 0]));
  return { ...none, ...Object.fromEntries(rows.map((row) => [row.bucket, Number(row.count)])) } as Record<
    Bucket,
    number
  >;
}

function narrowed<O>(
  query: SelectQueryBuilder<Tables, 'follow_ups', O>,
  { plot, kind, who, dueBy }: FollowUpFilter,
): SelectQueryBuilder<Tables, 'follow_ups', O> {
  let narrow = query;
  if (plot) narrow = narrow.where('plot', '=', plot);
  if (kind) narrow = narrow.where('kind', '=', kind);
  if (who) narrow = narrow.where('who', '=', who);
  if (dueBy) narrow = narrow.where('due_to', '<=', dueBy);
  return narrow;
}

export function showFollowUp(row: FollowUpRow, today: string): FollowUpShown {
  const item = JSON.parse(row.item) as FollowUp;
  const opening = item.steps[0];
  return {
    id: item.id,
    plot: item.plot,
    kind: item.kind,
    title: titleOf(item),
    due: dueSentence(item, today),
    stands: stateSentence(item),
    state: item.state,
    bucket: item.bucket,
    who: item.who ?? null,
    words: opening?.words ?? '',
    noteId: opening?.noteId ?? null,
    lookAt: item.lookAt ?? null,
    cautions: item.cautions,
    keepOut: item.keepOut ? item.keepOut.because : null,
    dose: item.dose ? sayDose(item.dose) : null,
    openedAt: item.openedAt,
    doneOn: item.doneOn ?? null,
    dueTo: item.due?.to ?? null,
    steps: item.steps.map((step) => ({
      id: step.id,
      at: step.at,
      by: step.by,
      what: step.what,
      says: step.reason,
      words: step.words,
      found: step.found ?? null,
      noteId: step.noteId ?? null,
      undone: step.undone !== undefined,
      undoneBy: step.undone?.by ?? '',
    })),
    question: item.unsure ?? null,
  };
}
