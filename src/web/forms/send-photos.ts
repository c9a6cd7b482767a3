import type { RequestHandler } from 'express';
import type { Diary } from '../../diary/diary.ts';
import { developWaiting, keepLoosePhoto, type PhotoKept } from '../../diary/keep-photos.ts';
import { showRefusal, wantsJson } from '../errors.ts';
import { MOST_PHOTOS_AT_ONCE } from '../pages/send-photos-page.ts';
import { tell } from '../told.ts';
import { letGo, type Receive } from '../uploads.ts';
import { several } from '../words.ts';

/** Photos without a note, one or many. They are kept before the answer and opened afterwards, in the darkroom. */
export const sendPhotos =
  (diary: Diary, receive: Receive): RequestHandler =>
  async (req, res) => {
    const files = await receive(req, res);
    if (!Array.isArray(files)) {
      const refused =
        files.status === 413
          ? `A photo was too large, or more than ${MOST_PHOTOS_AT_ONCE} came at once. None of this lot was kept; send them in smaller lots.`
          : 'Sending broke off or could not be read, so none of this lot was kept. Send it again: what is here already stays one photo.';
      return showRefusal(req, res, { ...files, refused });
    }
    try {
      const kept: PhotoKept[] = [];
      for (const { path, name } of files) kept.push(await keepLoosePhoto(diary, { path, name }));
      void developWaiting(diary);
      if (wantsJson(req)) return void res.json({ photos: kept });
      tell(res, { words: sentences(kept), bad: kept.length === 0 || kept.some(({ refused }) => refused) });
      res.redirect(303, '/photos/send');
    } finally {
      await letGo(files);
    }
  };

function sentences(kept: PhotoKept[]): string {
  if (kept.length === 0) return 'No photo was chosen, so nothing was sent.';
  const added = kept.filter(({ id, known }) => id && !known).length;
  const known = kept.filter((photo) => photo.known).length;
  const refused = kept.flatMap((photo) => photo.refused ?? []);
  return [
    `${several(added, 'photo')} kept.`,
    known ? `${several(known, 'photo was', 'photos were')} here already; each stands once.` : '',
    ...refused,
  ]
    .filter(Boolean)
    .join(' ');
}
