/** A person's step on a follow-up: decided, reported done, looked at, put off, dropped, taken back. Kept for good. */
import { z } from 'zod';
import { type FollowUp, type PersonStep, snapshotOf } from '../followups/item.ts';
import type { Diary, Refusal } from './diary.ts';
import { localNow } from './farm.ts';
import { markStale } from './file-follow-ups.ts';
import { type FollowUpShown, followUpById } from './follow-up-lists.ts';
import { isDay } from './season-entry.ts';

const day = z.string().refine(isDay, 'Write the day as 2031-07-14.');
const words = z.string().trim().max(2000, 'That is too long: 2,000 letters at the most.').default('');

const stepInput = z
  .object({
    /** Made by the client, so that sending twice keeps one. */
    id: z
      .string()
      .regex(
        /^[A-Za-z0-9][A-Za-z0-9_-]{5,63}$/,
        'Reload the page and try again: the step came without its id.',
      ),
    itemId: z.string().min(1),
    kind: z.enum(
      [
        'decide',
        'report_done',
        'look',
        'put_off',
        'drop',
        'rule_out',
        'reopen',
        'remark',
        'match',
        'apart',
        'undo',
      ],
      {
        error: 'Choose what to do with it.',
      },
    ),
    by: z.string().trim().max(60).default(''),
    words,
    found: z
      .enum(['fixed', 'partly', 'not_fixed', 'seen'], {
        error: 'Say what was found: fixed, partly, or not fixed.',
      })
      .optional(),
    on: day.optional(),
    until: day.optional(),
    factId: z.string().optional(),
    undoes: z.string().optional(),
  })
  .refine((step) => step.kind !== 'look' || step.found, {
    error: 'Say what was found: fixed, partly, or not fixed.',
    path: ['found'],
  })
  .refine((step) => step.kind !== 'put_off' || step.until, { error: 'Say until which day.', path: ['until'] })
  .refine((step) => step.kind !== 'drop' || step.words !== '', {
    error: 'Say why it is dropped, in a word or two.',
    path: ['words'],
  })
  .refine((step) => step.kind !== 'undo' || step.undoes, {
    error: 'Say which step to take back.',
    path: ['undoes'],
  });
export type StepInput = z.input<typeof stepInput>;

/** Answers with the item as it stands after the step. */
export async function takeStep(diary: Diary, written: StepInput): Promise<FollowUpShown | Refusal> {
  const checked = stepInput.safeParse(written);
  if (!checked.success) {
    const issue = checked.error.issues[0]!;
    return { refused: issue.message, field: String(issue.path[0] ?? '') };
  }
  const row = await diary.db
    .selectFrom('follow_ups')
    .selectAll()
    .where('id', '=', checked.data.itemId)
    .executeTakeFirst();
  if (!row) return { refused: 'That follow-up is not known any more: reload the list.', status: 404 };
  const item = JSON.parse(row.item) as FollowUp;
  const step = toStep(checked.data, item, await localNow(diary));
  await diary.db.transaction().execute(async (db) => {
    await db
      .insertInto('steps')
      .values({
        id: step.id,
        item_id: item.id,
        at: step.at,
        by_whom: step.by,
        kind: step.kind,
        plot: item.plot,
        step: JSON.stringify(step),
      })
      .onConflict((clash) => clash.column('id').doNothing())
      .execute();
    await markStale(db);
  });
  return (
    (await followUpById(diary, item.id)) ?? {
      refused: 'The step is kept, but the follow-up moved: reload the list.',
      status: 409,
    }
  );
}

function toStep(input: z.output<typeof stepInput>, item: FollowUp, at: string): PersonStep {
  const { until, ...rest } = input;
  return {
    ...rest,
    at,
    snapshot: snapshotOf(item),
    ...(until && { when: { from: until, to: until } }),
  };
}
