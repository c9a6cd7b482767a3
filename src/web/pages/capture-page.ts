import type { Request, RequestHandler, Response } from 'express';
import type { Diary, Refusal } from '../../diary/diary.ts';
import { localNow, readPlots } from '../../diary/farm.ts';
import { readFarmSeen } from '../../diary/farm-seen.ts';
import { statusOf } from '../errors.ts';
import { asked, type Form } from '../form.ts';
import { freshId } from '../fresh-id.ts';
import { showPage } from '../show-page.ts';
import { MOST_PHOTOS } from '../uploads.ts';
import { whoWrites } from '../who.ts';

export const capturePage =
  (diary: Diary): RequestHandler =>
  (req, res) =>
    showCapture(diary, req, res, { id: freshId(), plot: asked(req, 'plot'), author: whoWrites(req) });

/** The page with what was written still in it; a refusal stands beside its field. */
export async function showCapture(
  diary: Diary,
  req: Request,
  res: Response,
  form: Form,
  refusal?: Refusal,
): Promise<void> {
  const [plots, seen, now] = await Promise.all([readPlots(diary), readFarmSeen(diary), localNow(diary)]);
  await showPage(
    req,
    res,
    'capture',
    {
      title: 'Capture',
      place: 'Capture',
      form,
      refusal: refusal ?? null,
      plots,
      mostPhotos: MOST_PHOTOS,
      farmForReader: forScript({ plots: seen.plots, words: seen.words, now }),
    },
    refusal ? statusOf(refusal) : 200,
  );
}

/** JSON that can stand inside a script element: `<` would end it. */
const forScript = (value: unknown): string => JSON.stringify(value).replaceAll('<', '\\u003c');
