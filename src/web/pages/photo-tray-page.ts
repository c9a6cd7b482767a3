import type { RequestHandler } from 'express';
import type { Diary } from '../../diary/diary.ts';
import { readPlots } from '../../diary/farm.ts';
import { photoTray, trayCount } from '../../diary/place-photos.ts';
import { showPage } from '../show-page.ts';

/** A screen or two at a time: the next come as these go. */
const MOST_SHOWN = 12;

export const photoTrayPage =
  (diary: Diary): RequestHandler =>
  async (req, res) => {
    const [waiting, count, plots] = await Promise.all([
      photoTray(diary, MOST_SHOWN),
      trayCount(diary),
      readPlots(diary),
    ]);
    await showPage(req, res, 'photo-tray', {
      title: 'Photos without a plot',
      place: 'Plots',
      waiting,
      count,
      plots,
    });
  };
