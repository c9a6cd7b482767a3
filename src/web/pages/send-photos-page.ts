import type { RequestHandler } from 'express';
import type { Diary } from '../../diary/diary.ts';
import { photosKnown, photosOpened } from '../../diary/photos-opened.ts';
import { trayCount } from '../../diary/place-photos.ts';
import { showPage } from '../show-page.ts';

export const MOST_PHOTOS_AT_ONCE = 500;

/** The form that takes a folder of photos, and how far the opening of those that came before is. */
export const sendPhotosPage =
  (diary: Diary): RequestHandler =>
  async (req, res) => {
    const [opened, unplaced] = await Promise.all([photosOpened(diary), trayCount(diary)]);
    await showPage(req, res, 'send-photos', {
      title: 'Send many photos',
      place: 'Notes',
      opened,
      unplaced,
      most: MOST_PHOTOS_AT_ONCE,
    });
  };

/** For the script: `?known=<hash>,<hash>` says which of these are kept already. */
export const photosProgress =
  (diary: Diary): RequestHandler =>
  async (req, res) => {
    const { known } = req.query;
    const hashes = (typeof known === 'string' ? known.split(',') : []).filter((hash) =>
      /^[0-9a-f]{64}$/.test(hash),
    );
    const [opened, kept] = await Promise.all([photosOpened(diary), photosKnown(diary, hashes)]);
    res.json({ ...opened, known: kept });
  };
