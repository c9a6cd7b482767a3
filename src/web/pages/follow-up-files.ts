import type { RequestHandler } from 'express';
import type { Diary } from '../../diary/diary.ts';
import { followUpCalendar, followUpCsv } from '../../diary/follow-up-files.ts';
import { filterOf } from './follow-ups-page.ts';

/** All that stands open and has a day, for a calendar program to subscribe to. */
export const followUpCalendarFile =
  (diary: Diary): RequestHandler =>
  async (_req, res) => {
    res.type('text/calendar; charset=utf-8').send(await followUpCalendar(diary));
  };

/** The list as a table, with the filter of the page's address. */
export const followUpCsvFile =
  (diary: Diary): RequestHandler =>
  async (req, res) => {
    res
      .attachment('follow-ups.csv')
      .type('text/csv; charset=utf-8')
      .send(await followUpCsv(diary, filterOf(req)));
  };
