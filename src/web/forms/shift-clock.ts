import type { RequestHandler } from 'express';
import type { Diary } from '../../diary/diary.ts';
import { shiftClock } from '../../diary/shift-clock.ts';
import { isRefusal, showRefusal, wantsJson } from '../errors.ts';
import { allOf, formOf } from '../form.ts';
import { shiftOf } from '../pages/photo-clock-page.ts';
import { tell } from '../told.ts';
import { whoWrites } from '../who.ts';
import { several, withQuery } from '../words.ts';

export const shiftClockForm =
  (diary: Diary): RequestHandler =>
  async (req, res) => {
    const { day = '', minutes = '', way = '' } = formOf(req);
    const shifted = await shiftClock(diary, day, shiftOf(minutes, way), allOf(req, 'photo'), whoWrites(req));
    const back = withQuery('/photos/clock', { day });
    if (isRefusal(shifted)) {
      if (wantsJson(req)) return showRefusal(req, res, shifted);
      tell(res, { words: `${shifted.refused} Nothing was changed.`, bad: true });
      return res.redirect(303, withQuery('/photos/clock', { day, minutes, way }));
    }
    if (wantsJson(req)) return void res.json(shifted);
    tell(res, {
      words: `The times of ${several(shifted.photos, 'photo')} are put right; what the files say is kept beside.`,
      undo: { action: `/changes/${shifted.change}/undo`, fields: { back } },
    });
    res.redirect(303, back);
  };
