import type { RequestHandler } from 'express';
import { strikeFact } from '../../diary/correct.ts';
import type { Diary } from '../../diary/diary.ts';
import { isRefusal, showRefusal } from '../errors.ts';
import { formOf } from '../form.ts';
import { whoWrites } from '../who.ts';
import { answerCorrected } from './corrected.ts';

export const strikeFactForm =
  (diary: Diary): RequestHandler<{ id: string }> =>
  async (req, res) => {
    const done = await strikeFact(diary, req.params.id, formOf(req).fact ?? '', whoWrites(req));
    if (isRefusal(done)) return showRefusal(req, res, done);
    answerCorrected(req, res, req.params.id, done, 'Taken away: it no longer counts anywhere.');
  };
