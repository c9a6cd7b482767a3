/** Handing a day's sheet to a crew: a link that needs no account, tells nothing but the sheet, and expires. */
import { randomBytes } from 'node:crypto';
import { type CrewSheet, crewSheet, type SheetJob } from './crew-sheet.ts';
import type { Diary, Refusal } from './diary.ts';
import type { FollowUpShown } from './follow-up-lists.ts';
import { isDay } from './season-entry.ts';
import { takeStep } from './take-step.ts';

/** Long enough for a job that slips by some days. */
const DAYS_OPEN = 7;

export interface HandedOn {
  token: string;
  day: string;
  who: string | null;
  /** Instant, UTC. */
  expiresAt: string;
}

export async function makeHandOn(diary: Diary, day: string, who: string | null): Promise<HandedOn | Refusal> {
  if (!isDay(day)) return { refused: 'Write the day as 2031-07-14.', field: 'day' };
  const made = diary.now();
  const link: HandedOn = {
    token: randomBytes(18).toString('base64url'),
    day,
    who,
    expiresAt: made.add({ hours: DAYS_OPEN * 24 }).toString(),
  };
  await diary.db
    .insertInto('handed_on')
    .values({ token: link.token, day, who, made_at: made.toString(), expires_at: link.expiresAt })
    .execute();
  return link;
}

/** The sheet behind a link, or why it cannot be read any more. */
export async function readHandOn(
  diary: Diary,
  token: string,
): Promise<(CrewSheet & { expiresAt: string }) | Refusal> {
  const row = await diary.db
    .selectFrom('handed_on')
    .selectAll()
    .where('token', '=', token)
    .executeTakeFirst();
  if (!row) return unknown;
  if (row.expires_at <= diary.now().toString())
    return { refused: 'This link has expired. Ask for a new one.', status: 410 };
  return { ...(await crewSheet(diary, row.day, row.who)), expiresAt: row.expires_at };
}

/** Links for this sheet that can still be read, the newest first. */
export async function standingHandOns(diary: Diary, day: string, who: string | null): Promise<HandedOn[]> {
  const rows = await diary.db
    .selectFrom('handed_on')
    .selectAll()
    .where('day', '=', day)
    .where('who', who === null ? 'is' : '=', who)
    .where('expires_at', '>', diary.now().toString())
    .orderBy('made_at', 'desc')
    .execute();
  return rows.map((row) => ({ token: row.token, day: row.day, who: row.who, expiresAt: row.expires_at }));
}

/** Ends a link at once. */
export async function endHandOn(diary: Diary, token: string): Promise<HandedOn | Refusal> {
  const row = await diary.db
    .selectFrom('handed_on')
    .selectAll()
    .where('token', '=', token)
    .executeTakeFirst();
  if (!row) return unknown;
  const expiresAt = diary.now().toString();
  await diary.db
    .updateTable('handed_on')
    .set({ expires_at: expiresAt })
    .where('token', '=', token)
    .where('expires_at', '>', expiresAt)
    .execute();
  return { token, day: row.day, who: row.who, expiresAt };
}

const unknown: Refusal = { refused: 'This link is not known here. Ask for a new one.', status: 404 };

const TICKED = 'ticked as done on the crew sheet';

/** The crew leader's `done`: a report, which somebody still has to look at. */
export async function tickHandedOn(
  diary: Diary,
  token: string,
  tick: { id: string; itemId: string; name: string },
): Promise<FollowUpShown | Refusal> {
  const sheet = await readHandOn(diary, token);
  if ('refused' in sheet) return sheet;
  const name = tick.name.trim();
  if (!name) return { refused: 'Write your name beside what is done.', field: 'name' };
  const job = jobsOf(sheet).find(({ itemId }) => itemId === tick.itemId);
  if (!job) return { refused: 'That work is not on this sheet any more.', status: 409 };
  return takeStep(diary, {
    id: tick.id,
    itemId: tick.itemId,
    kind: 'report_done',
    by: name,
    words: TICKED,
  });
}

/** Takes back a tick that was made on a crew sheet; nothing else can be taken back through a link. */
export async function untickHandedOn(
  diary: Diary,
  token: string,
  tick: { id: string; itemId: string; undoes: string; name: string },
): Promise<FollowUpShown | Refusal> {
  const sheet = await readHandOn(diary, token);
  if ('refused' in sheet) return sheet;
  const job = jobsOf(sheet).find(({ itemId }) => itemId === tick.itemId);
  const row = await diary.db
    .selectFrom('steps')
    .select('step')
    .where('id', '=', tick.undoes)
    .where('kind', '=', 'report_done')
    .executeTakeFirst();
  const ticked = row && (JSON.parse(row.step) as { words: string }).words === TICKED;
  if (!job || !ticked || job.reported?.stepId !== tick.undoes)
    return { refused: 'That was not ticked on this sheet, so nothing was taken back.', status: 409 };
  return takeStep(diary, {
    id: tick.id,
    itemId: tick.itemId,
    kind: 'undo',
    by: tick.name.trim(),
    undoes: tick.undoes,
  });
}

const jobsOf = ({ plots, elsewhere }: CrewSheet): SheetJob[] => [
  ...plots.flatMap(({ jobs }) => jobs),
  ...elsewhere,
];
