/** Follow-ups as lists: late, today, soon, waiting, to be looked at again, to be decided, later. */
import type { Bucket, FollowUp } from '../followups/item.ts';
import { dueSentence, stateSentence, titleOf } from '../followups/sentences.ts';
import type { FollowUpRow } from '../storage/tables.ts';
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
  steps: {
    id: string;
    at: string;
    by: string;
    says: string;
    words: string;
    noteId: string | null;
    undone: boolean;
  }[];
  question: FollowUp['unsure'] | null;
}

export interface FollowUpFilter {
  plot?: string | undefined;
  kind?: string | undefined;
  who?: string | undefined;
  /** Also those that are closed, dropped or ruled out. */
  settled?: boolean | undefined;
}

export type FollowUpLists = Record<Exclude<Bucket, 'settled'>, FollowUpShown[]> & {
  settled: FollowUpShown[];
  total: number;
};

const MOST_A_LIST = 200;

/** Each list by due day; at most 200 a list, `total` counts all that stand open. */
export async function followUpLists(diary: Diary, filter: FollowUpFilter = {}): Promise<FollowUpLists> {
  await followUpsOfToday(diary);
  const today = await localToday(diary);
  const buckets: Bucket[] = ['late', 'today', 'soon', 'waiting', 'to_look_again', 'to_decide', 'later'];
  if (filter.settled) buckets.push('settled');
  const lists = Object.fromEntries(
    await Promise.all(
      buckets.map(
        async (bucket) =>
          [bucket, (await rowsOf(diary, bucket, filter)).map((row) => show(row, today))] as const,
      ),
    ),
  ) as Record<Bucket, FollowUpShown[]>;
  return { ...lists, settled: lists.settled ?? [], total: await countOpen(diary, filter) };
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

export async function followUpById(diary: Diary, id: string): Promise<FollowUpShown | null> {
  await followUpsOfToday(diary);
  const row = await diary.db.selectFrom('follow_ups').selectAll().where('id', '=', id).executeTakeFirst();
  return row ? show(row, await localToday(diary)) : null;
}

function rowsOf({ db }: Diary, bucket: Bucket, filter: FollowUpFilter): Promise<FollowUpRow[]> {
  let query = db.selectFrom('follow_ups').selectAll().where('bucket', '=', bucket);
  if (filter.plot) query = query.where('plot', '=', filter.plot);
  if (filter.kind) query = query.where('kind', '=', filter.kind);
  if (filter.who) query = query.where('who', '=', filter.who);
  return query.orderBy('due_to').orderBy('id').limit(MOST_A_LIST).execute();
}

async function countOpen({ db }: Diary, filter: FollowUpFilter): Promise<number> {
  let query = db
    .selectFrom('follow_ups')
    .select((eb) => eb.fn.countAll<number>().as('open'))
    .where('bucket', '!=', 'settled');
  if (filter.plot) query = query.where('plot', '=', filter.plot);
  if (filter.kind) query = query.where('kind', '=', filter.kind);
  if (filter.who) query = query.where('who', '=', filter.who);
  return Number((await query.executeTakeFirstOrThrow()).open);
}

function show(row: FollowUpRow, today: string): FollowUpShown {
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
    steps: item.steps.map((step) => ({
      id: step.id,
      at: step.at,
      by: step.by,
      says: step.reason,
      words: step.words,
      noteId: step.noteId ?? null,
      undone: step.undone !== undefined,
    })),
    question: item.unsure ?? null,
  };
}
