import type { RequestHandler } from 'express';
import type { Diary } from '../../diary/diary.ts';
import { placePhoto } from '../../diary/place-photos.ts';
import { isRefusal, showRefusal, wantsJson } from '../errors.ts';
import { backTo, formOf } from '../form.ts';
import { tell } from '../told.ts';
import { whoWrites } from '../who.ts';

/** `plot` names it; `none=yes` says that the photo shows no plot. */
export const placePhotoForm =
  (diary: Diary): RequestHandler<{ id: string }> =>
  async (req, res) => {
    const form = formOf(req);
    const code = form.none === 'yes' ? null : (form.plot ?? '');
    const placed = await placePhoto(diary, req.params.id, code, whoWrites(req));
    const back = backTo(req, `/photos/${req.params.id}`);
    if (isRefusal(placed)) {
      if (wantsJson(req) || placed.status === 404) return showRefusal(req, res, placed);
      tell(res, { words: `${placed.refused} Nothing was changed.`, bad: true });
      return res.redirect(303, back);
    }
    if (wantsJson(req)) return void res.json(placed);
    tell(res, {
      words: placed.plot ? `The photo is in ${placed.plot} now.` : 'The photo shows no plot; it is kept.',
      undo: { action: `/changes/${placed.change}/undo`, fields: { back } },
    });
    res.redirect(303, back);
  };
