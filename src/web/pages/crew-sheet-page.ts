import type { Request, RequestHandler, Response } from 'express';
import { crewSheet } from '../../diary/crew-sheet.ts';
import type { Diary, Refusal } from '../../diary/diary.ts';
import { localMoment, localToday } from '../../diary/farm.ts';
import { standingHandOns } from '../../diary/hand-on.ts';
import { isDay } from '../../diary/season-entry.ts';
import { addDays } from '../../followups/days.ts';
import { sayDay } from '../../reading/say-fact.ts';
import { statusOf } from '../errors.ts';
import { asked } from '../form.ts';
import { showPage } from '../show-page.ts';
import { sayMoment, withQuery } from '../words.ts';

/** `?day=2031-09-12&who=Celso`; without a day, today's; without a name, everybody's. */
export const crewSheetPage =
  (diary: Diary): RequestHandler =>
  async (req, res) => {
    const day = asked(req, 'day');
    const refusal = day && !isDay(day) ? { refused: 'Write the day as 2031-07-14.', field: 'day' } : null;
    await showCrewSheet(diary, req, res, refusal ? '' : day, asked(req, 'who'), refusal);
  };

export async function showCrewSheet(
  diary: Diary,
  req: Request,
  res: Response,
  askedDay: string,
  who: string,
  refusal: Refusal | null,
): Promise<void> {
  const today = await localToday(diary);
  const day = askedDay || today;
  const sheet = await crewSheet(diary, day, who || null);
  const links = await standingHandOns(diary, day, who || null);
  await showPage(
    req,
    res,
    'crew-sheet',
    {
      title: `Crew sheet for ${sayDay(day)}`,
      place: 'Follow-ups',
      sheet,
      jobs: sheet.plots.reduce((sum, { jobs }) => sum + jobs.length, sheet.elsewhere.length),
      today,
      refusal,
      here: sheetHref(day, who || null),
      nearDays: [today, addDays(today, 1)].map((near) => ({
        href: sheetHref(near, who || null),
        words: near === today ? 'Today' : 'Tomorrow',
        chosen: near === day,
      })),
      links: await Promise.all(
        links.map(async ({ token, expiresAt }) => ({
          token,
          address: `${req.protocol}://${req.get('host')}/handed-on/${token}`,
          until: sayMoment(await localMoment(diary, expiresAt)),
        })),
      ),
      onlyHere: /^(localhost|127\.|\[::1\])/.test(req.get('host') ?? ''),
    },
    refusal ? statusOf(refusal) : 200,
  );
}

export const sheetHref = (day: string, who: string | null): string => withQuery('/crew-sheet', { day, who });
