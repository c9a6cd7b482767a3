import type { Request, RequestHandler, Response } from 'express';
import type { Diary, Refusal } from '../../diary/diary.ts';
import { localMoment } from '../../diary/farm.ts';
import { readHandOn } from '../../diary/hand-on.ts';
import { sayDay } from '../../reading/say-fact.ts';
import { isRefusal, statusOf, wantsJson } from '../errors.ts';
import { freshId } from '../fresh-id.ts';
import { showPage } from '../show-page.ts';
import { whoWrites } from '../who.ts';
import { sayMoment } from '../words.ts';

/** The sheet for whoever holds its link: no account, no way to the rest. */
export const handedOnPage =
  (diary: Diary): RequestHandler<{ token: string }> =>
  (req, res) =>
    showHandedOn(diary, req, res);

export interface TickTrouble {
  refusal: Refusal;
  name: string;
}

export async function showHandedOn(
  diary: Diary,
  req: Request<{ token: string }>,
  res: Response,
  trouble?: TickTrouble,
): Promise<void> {
  const sheet = await readHandOn(diary, req.params.token);
  res.set('Cache-Control', 'no-store');
  if (isRefusal(sheet)) return showEnded(req, res, sheet);
  await showPage(
    req,
    res,
    'handed-on',
    {
      title: `Work for ${sayDay(sheet.day)}`,
      place: null,
      alone: true,
      sheet,
      action: `/handed-on/${encodeURIComponent(req.params.token)}`,
      until: sayMoment(await localMoment(diary, sheet.expiresAt)),
      name: trouble?.name ?? whoWrites(req),
      formId: freshId(),
      refusal: trouble?.refusal ?? null,
    },
    trouble ? statusOf(trouble.refusal) : 200,
  );
}

/** A link that cannot be read any more, in words. */
async function showEnded(req: Request, res: Response, refusal: Refusal): Promise<void> {
  if (wantsJson(req)) {
    res.status(statusOf(refusal)).json(refusal);
    return;
  }
  const locals = { title: 'This sheet cannot be read', place: null, alone: true };
  const words = { words: refusal.refused, expired: refusal.status === 410 };
  await showPage(req, res, 'handed-on-ended', { ...locals, ...words }, statusOf(refusal));
}
