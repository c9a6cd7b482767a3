import type { RequestHandler } from 'express';
import { undoCorrection } from '../../diary/correct.ts';
import type { Diary } from '../../diary/diary.ts';
import { isRefusal, showRefusal, wantsJson } from '../errors.ts';
import { backTo } from '../form.ts';
import { tell } from '../told.ts';

export const undoCorrectionForm =
  (diary: Diary): RequestHandler<{ id: string }> =>
  async (req, res) => {
    const done = await undoCorrection(diary, req.params.id);
    if (isRefusal(done)) return showRefusal(req, res, done);
    if (wantsJson(req)) return void res.json(done);
    tell(res, { words: 'Taken back: it stands as it was before.' });
    res.redirect(303, backTo(req, '/notes'));
  };
