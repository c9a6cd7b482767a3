/** Handing a day's sheet to a crew: a link that needs no account, tells nothing but the sheet, and expires. */
import { randomBytes } from 'node:crypto';
import { type CrewSheet, crewSheet } from './crew-sheet.ts';
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
  if (!row) return { refused: 'This link is not known here. Ask for a new one.', status: 404 };
  if (row.expires_at <= diary.now().toString())
    return { refused: 'This link has expired. Ask for a new one.', status: 410 };
  return { ...(await crewSheet(diary, row.day, row.who)), expiresAt: row.expires_at };
}

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
  const jobs = [...sheet.plots.flatMap(({ jobs }) => jobs), ...sheet.elsewhere];
  if (!jobs.some((job) => job.itemId === tick.itemId))
    return { refused: 'That work is not on this sheet any more.', status: 409 };
  return takeStep(diary, {
    id: tick.id,
    itemId: tick.itemId,
    kind: 'report_done',
    by: name,
    words: 'ticked as done on the crew sheet',
  });
}
