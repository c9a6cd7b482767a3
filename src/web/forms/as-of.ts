import type { RequestHandler } from 'express';
import { type Diary, isRefusal } from '../../diary/diary.ts';
import { lookAsOf, useRealDate } from '../../diary/set-up.ts';
import { sayDay } from '../../reading/say-fact.ts';
import { showRefusal, wantsJson } from '../errors.ts';
import { formOf } from '../form.ts';
import { tell } from '../told.ts';

/** Days count from the real day again, with the way back to the day that stood there. */
export const useRealDateForm =
  (diary: Diary): RequestHandler =>
  async (req, res) => {
    const { was } = await useRealDate(diary);
    if (wantsJson(req)) return void res.json({ was });
    tell(res, {
      words: was
        ? `Days count from today’s real date now; before, everything stood as of ${sayDay(was)} ${was.slice(0, 4)}.`
        : 'Days count from today’s real date, as before.',
      ...(was && { undo: { action: '/season/as-of', fields: { day: was } } }),
    });
    res.redirect(303, '/season');
  };

export const lookAsOfForm =
  (diary: Diary): RequestHandler =>
  async (req, res) => {
    const done = await lookAsOf(diary, formOf(req).day ?? '');
    if (isRefusal(done)) return showRefusal(req, res, done);
    if (wantsJson(req)) return void res.json(done);
    tell(res, { words: `Everything stands as of ${sayDay(done.asOf)} ${done.asOf.slice(0, 4)} again.` });
    res.redirect(303, '/season');
  };
