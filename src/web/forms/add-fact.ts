import type { RequestHandler } from 'express';
import { addFact } from '../../diary/correct.ts';
import type { Diary } from '../../diary/diary.ts';
import { isRefusal } from '../errors.ts';
import { readFactForm } from '../fact-form.ts';
import { formOf } from '../form.ts';
import { showFactForm } from '../pages/fact-page.ts';
import { whoWrites } from '../who.ts';
import { answerCorrected, refuseWithoutForm } from './corrected.ts';

export const addFactForm =
  (diary: Diary): RequestHandler<{ id: string }> =>
  async (req, res) => {
    const { id } = req.params;
    const form = formOf(req);
    const done = await addFact(diary, id, readFactForm(form), whoWrites(req), form.id || undefined);
    if (!isRefusal(done)) return answerCorrected(req, res, id, done, 'Added.');
    if (await refuseWithoutForm(req, res, done)) return;
    await showFactForm(diary, req, res, id, form, done);
  };
