import type { RequestHandler } from 'express';
import type { Diary } from '../../diary/diary.ts';
import { clockDays, previewClock } from '../../diary/shift-clock.ts';
import { isRefusal } from '../errors.ts';
import { asked } from '../form.ts';
import { showPage } from '../show-page.ts';

/** `?day=2031-07-14&minutes=58&way=fast` shows what would change; nothing is set. */
export const photoClockPage =
  (diary: Diary): RequestHandler =>
  async (req, res) => {
    const [day, minutes, way] = [asked(req, 'day'), asked(req, 'minutes').trim(), asked(req, 'way')];
    const answer = minutes ? await previewClock(diary, day, shiftOf(minutes, way)) : null;
    const refusal = answer && isRefusal(answer) ? answer : null;
    await showPage(
      req,
      res,
      'photo-clock',
      {
        title: 'A phone’s clock that was wrong',
        place: 'Notes',
        days: await clockDays(diary),
        day,
        minutes,
        way: way === 'slow' ? 'slow' : 'fast',
        preview: answer && !isRefusal(answer) ? answer : null,
        refusal,
      },
      refusal ? 400 : 200,
    );
  };

/** Minutes to add to the files' times: a fast clock is set back. */
export const shiftOf = (minutes: string, way: string): number => {
  const number = minutes === '' ? Number.NaN : Number(minutes);
  return number === 0 ? 0 : way === 'slow' ? number : -number;
};
