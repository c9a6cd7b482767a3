import type { RequestHandler } from 'express';
import type { Diary } from '../../diary/diary.ts';
import { readPlots } from '../../diary/farm.ts';
import { photoPage as readPhotoPage } from '../../diary/photo-page.ts';
import { showRefusal } from '../errors.ts';
import { asked } from '../form.ts';
import { showPage } from '../show-page.ts';
import { several } from '../words.ts';

/** `?mask=yes` lays what was measured as green over the picture. */
export const photoPage =
  (diary: Diary): RequestHandler<{ id: string }> =>
  async (req, res) => {
    const page = await readPhotoPage(diary, req.params.id);
    if (!page)
      return showRefusal(req, res, {
        refused: 'There is no photo at this address. See Plots and Notes for those that are kept.',
        status: 404,
      });
    await showPage(req, res, 'photo', {
      title: page.photo.plot ? `Photo of ${page.photo.plot}` : 'Photo',
      place: page.photo.plot ? 'Plots' : 'Notes',
      ...page,
      masked: page.mask !== null && asked(req, 'mask') === 'yes',
      plots: await readPlots(diary),
      clockWords: page.taken?.shiftMin ? shiftWords(page.taken.shiftMin) : null,
      size: sizeWords(page.bytes),
    });
  };

/** `The phone’s clock was 60 minutes fast`: what is added to its time is the other way round. */
const shiftWords = (shiftMin: number): string =>
  `the phone’s clock was ${several(Math.abs(shiftMin), 'minute')} ${shiftMin < 0 ? 'fast' : 'slow'}`;

const sizeWords = (bytes: number): string =>
  bytes < 1e6 ? `${Math.max(1, Math.round(bytes / 1e3))} kB` : `${(bytes / 1e6).toFixed(1)} MB`;
