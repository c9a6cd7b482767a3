/** What every correction answers with: back to the note, with the way to take it back. */
import type { Request, Response } from 'express';
import type { Corrected } from '../../diary/correct.ts';
import type { Refusal } from '../../diary/diary.ts';
import { showRefusal, wantsJson } from '../errors.ts';
import { tell } from '../told.ts';
import { noteHref } from '../words.ts';

export function answerCorrected(
  req: Request,
  res: Response,
  noteId: string,
  { correction }: Corrected,
  words: string,
): void {
  if (wantsJson(req)) {
    res.json({ correction });
    return;
  }
  const action = `/corrections/${encodeURIComponent(correction)}/undo`;
  tell(res, { words, undo: { action, fields: { back: noteHref(noteId) } } });
  res.redirect(303, noteHref(noteId));
}

/** A note or fact that is not there has no form to go back to; a script gets JSON. True where that was the answer. */
export async function refuseWithoutForm(req: Request, res: Response, refusal: Refusal): Promise<boolean> {
  if (!wantsJson(req) && (refusal.status ?? 400) === 400) return false;
  await showRefusal(req, res, refusal);
  return true;
}
