import { Temporal } from 'temporal-polyfill';
import type { PhotoRow } from '../storage/tables.ts';

/**
 * Local wall time of a photo, `2031-07-14T06:55:10`: what its file says, put right where a person said that the phone's
 * clock was wrong. Null where the file says nothing.
 */
export function takenAt({
  taken_wall,
  clock_shift_min,
}: Pick<PhotoRow, 'taken_wall' | 'clock_shift_min'>): string | null {
  if (!taken_wall || !clock_shift_min) return taken_wall;
  return Temporal.PlainDateTime.from(taken_wall).add({ minutes: clock_shift_min }).toString();
}
