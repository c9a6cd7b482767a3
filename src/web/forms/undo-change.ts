import type { RequestHandler } from 'express';
import { undoChange } from '../../diary/changes.ts';
import type { Diary } from '../../diary/diary.ts';
import { isRefusal, showRefusal, wantsJson } from '../errors.ts';
import { backTo } from '../form.ts';
import { tell } from '../told.ts';
import { several } from '../words.ts';

export const undoChangeForm =
  (diary: Diary): RequestHandler<{ id: string }> =>
  async (req, res) => {
    const done = await undoChange(diary, req.params.id);
    if (isRefusal(done)) return showRefusal(req, res, done);
    if (wantsJson(req)) return void res.json(done);
    const left = done.left
      ? ` ${several(done.left, 'of them was', 'of them were')} changed anew since then and stays as it is.`
      : '';
    tell(res, { words: `Taken back: ${done.words}${left}` });
    res.redirect(303, backTo(req, '/plots'));
  };
