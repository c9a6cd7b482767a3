/** The look afterwards as a table that the farm edits: after which work, how many days, at what, by whose word. */
import { z } from 'zod';
import type { LookAfterRow } from '../followups/item.ts';
import { LOOK_AFTER } from '../followups/look-after.ts';
import { ACTION_KINDS } from '../reading/record.ts';
import type { Diary, Refusal } from './diary.ts';
import { lookAfterRows, markStale } from './file-follow-ups.ts';

export interface LookAfterShown extends LookAfterRow {
  /** True where the farm changed this row. */
  own: boolean;
  /** What every farm starts with in its place. */
  first: Pick<LookAfterRow, 'days' | 'spanDays' | 'source'> | null;
}

/** In the order in which every farm starts, whatever was changed since. */
export async function lookAfterTable(diary: Diary): Promise<LookAfterShown[]> {
  const place = (row: LookAfterRow): number =>
    LOOK_AFTER.findIndex(({ action, lookAt }) => action === row.action && lookAt === row.lookAt);
  return (await lookAfterRows(diary.db))
    .map((row) => ({ ...row, first: LOOK_AFTER[place(row)] ?? null }))
    .map((row) => ({ ...row, own: !row.first || !sameFigures(row, row.first) }))
    .sort((a, b) => place(a) - place(b));
}

type Figures = Pick<LookAfterRow, 'days' | 'spanDays' | 'source'>;
const sameFigures = (a: Figures, b: Figures): boolean =>
  a.days === b.days && a.spanDays === b.spanDays && a.source === b.source;

const whole = (what: string, most: number) =>
  z.coerce
    .number({ error: `${what} is no number.` })
    .int(`${what} is a whole number.`)
    .min(0, `${what} cannot be below zero.`)
    .max(most, `${what} is at most ${most}.`);

const entry = z.object({
  action: z.enum(ACTION_KINDS, { error: 'Choose the work from the list.' }),
  lookAt: z.string().trim().min(1, 'Write what to look at.').max(200),
  days: whole('The number of days', 120),
  spanDays: whole('The number of days more', 60),
  source: z.string().trim().min(1, 'Write the source, or “our own practice”.').max(300),
});

/** Changes the days, the span and the source of a row; the rest of the action's rows become the farm's own with it. */
export async function changeLookAfter(diary: Diary, written: unknown): Promise<LookAfterShown[] | Refusal> {
  const checked = entry.safeParse(written);
  if (!checked.success) {
    const issue = checked.error.issues[0]!;
    return { refused: issue.message, field: String(issue.path[0] ?? '') };
  }
  const { action, lookAt, days, spanDays, source } = checked.data;
  const rows = (await lookAfterRows(diary.db)).filter((row) => row.action === action);
  if (!rows.some((row) => row.lookAt === lookAt))
    return { refused: 'There is no such row for this work.', field: 'lookAt', status: 404 };
  const changed = rows.map((row) => (row.lookAt === lookAt ? { ...row, days, spanDays, source } : row));
  await diary.db.transaction().execute(async (db) => {
    for (const row of changed) {
      const stored = {
        action,
        look_at: row.lookAt,
        row: JSON.stringify(row),
        changed_at: diary.now().toString(),
      };
      await db
        .insertInto('look_after')
        .values(stored)
        .onConflict((clash) => clash.columns(['action', 'look_at']).doUpdateSet(stored))
        .execute();
    }
    await markStale(db);
  });
  return lookAfterTable(diary);
}

/** Back to what every farm starts with, for one kind of work. */
export async function resetLookAfter(diary: Diary, action: string): Promise<void> {
  await diary.db.transaction().execute(async (db) => {
    await db.deleteFrom('look_after').where('action', '=', action).execute();
    await markStale(db);
  });
}
