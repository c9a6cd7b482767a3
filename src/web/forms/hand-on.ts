import type { RequestHandler } from 'express';
import type { Diary } from '../../diary/diary.ts';
import { endHandOn, makeHandOn } from '../../diary/hand-on.ts';
import { isRefusal, showRefusal, statusOf, wantsJson } from '../errors.ts';
import { formOf } from '../form.ts';
import { sheetHref, showCrewSheet } from '../pages/crew-sheet-page.ts';
import { tell } from '../told.ts';

/** Makes a link to the sheet of a day; it stands on the sheet's page with its expiry. */
export const handOnForm =
  (diary: Diary): RequestHandler =>
  async (req, res) => {
    const { day = '', who = '' } = formOf(req);
    const link = await makeHandOn(diary, day, who || null);
    if (isRefusal(link)) {
      if (wantsJson(req)) return void res.status(statusOf(link)).json(link);
      return showCrewSheet(diary, req, res, '', who, link);
    }
    if (wantsJson(req)) return void res.status(201).json(link);
    tell(res, { words: 'The link is made; it stands below.' });
    res.redirect(303, `${sheetHref(link.day, link.who)}#links`);
  };

/** Ends a link before its time. */
export const endHandOnForm =
  (diary: Diary): RequestHandler<{ token: string }> =>
  async (req, res) => {
    const link = await endHandOn(diary, req.params.token);
    if (isRefusal(link)) return showRefusal(req, res, link);
    if (wantsJson(req)) return void res.json(link);
    tell(res, { words: 'The link is ended: nobody can read the sheet through it any more.' });
    res.redirect(303, `${sheetHref(link.day, link.who)}#links`);
  };
