import type { Request } from 'express';
import { addDays } from '../followups/days.ts';
import { sayDay } from '../reading/say-fact.ts';
import { freshId } from './fresh-id.ts';

/** What the view of a follow-up needs beside the item: days to put it off to, fresh ids, the page to come back to. */
export const jobLocals = (req: Request, today: string) => ({
  today,
  freshId,
  back: req.originalUrl,
  putOffDays: [1, 3, 7].map((days) => {
    const day = addDays(today, days);
    return {
      day,
      words: days === 1 ? 'Tomorrow' : days === 7 ? 'A week' : `${days} days`,
      date: sayDay(day),
    };
  }),
});
