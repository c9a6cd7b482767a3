import type { RequestHandler } from 'express';
import type { Diary } from '../../diary/diary.ts';
import { localNow } from '../../diary/farm.ts';
import { walkSheet } from '../../diary/walk-sheet.ts';
import { showPage } from '../show-page.ts';
import { showsChemicals } from '../words.ts';

/** What is read standing in the field; the rest is one tap away. */
const MOST_A_STOP = 4;

export const walkPage =
  (diary: Diary): RequestHandler =>
  async (req, res) => {
    const [stops, now] = await Promise.all([walkSheet(diary), localNow(diary)]);
    await showPage(req, res, 'walk', {
      title: 'Walk',
      place: 'Walk',
      stops,
      mostAStop: MOST_A_STOP,
      today: now.slice(0, 10),
      openInAll: stops.reduce((sum, stop) => sum + stop.open.length, 0),
      chemicals: showsChemicals(stops.flatMap((stop) => stop.open)),
    });
  };
