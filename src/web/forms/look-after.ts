import type { RequestHandler } from 'express';
import type { Diary } from '../../diary/diary.ts';
import { changeLookAfter, resetLookAfter } from '../../diary/look-after-table.ts';
import { ACTION_KINDS } from '../../reading/record.ts';
import { isRefusal, showRefusal, statusOf, wantsJson } from '../errors.ts';
import { formOf } from '../form.ts';
import { showLookAfter } from '../pages/look-after-page.ts';
import { tell } from '../told.ts';

export const changeLookAfterForm =
  (diary: Diary): RequestHandler =>
  async (req, res) => {
    const form = formOf(req);
    const rows = await changeLookAfter(diary, form);
    if (isRefusal(rows)) {
      if (wantsJson(req)) return void res.status(statusOf(rows)).json(rows);
      return showLookAfter(diary, req, res, { form, refusal: rows });
    }
    if (wantsJson(req)) return void res.json(rows);
    tell(res, { words: 'The row is kept as the farm’s own. Follow-ups go by it from now on.' });
    res.redirect(303, '/season/look-after');
  };

/** All rows of one kind of work, back to what every farm starts with. */
export const resetLookAfterForm =
  (diary: Diary): RequestHandler =>
  async (req, res) => {
    const action = formOf(req).action ?? '';
    if (!(ACTION_KINDS as readonly string[]).includes(action))
      return showRefusal(req, res, { refused: 'Choose the work from the table. Nothing was changed.' });
    await resetLookAfter(diary, action);
    if (wantsJson(req)) return void res.json({ reset: action });
    tell(res, { words: 'The row stands again as every farm starts.' });
    res.redirect(303, '/season/look-after');
  };
