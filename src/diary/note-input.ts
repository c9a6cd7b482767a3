/** What may come in as a note, checked at the edge, with words for everything that cannot be taken. */
import { Temporal } from 'temporal-polyfill';
import { z } from 'zod';
import { isDay } from './season-entry.ts';

/** More than three hours of steady talk; a longer text is cut by the sender, not by us. */
export const MOST_CHARACTERS = 200_000;

const position = z.object({
  latitude: z.number().min(-90).max(90),
  longitude: z.number().min(-180).max(180),
  accuracyM: z.number().nonnegative().nullable(),
});

const blankToNull = (value: unknown) => (typeof value === 'string' && value.trim() === '' ? null : value);

export const noteInput = z.object({
  id: z
    .string({ error: 'The note came without its id: reload the page and send it again.' })
    .regex(
      /^[A-Za-z0-9][A-Za-z0-9_-]{5,63}$/,
      'The id of the note is not of the right form: reload the page and send it again.',
    ),
  text: z
    .string({ error: 'The note has no words: write or speak a few, or add a photo.' })
    .max(
      MOST_CHARACTERS,
      `The note is longer than ${MOST_CHARACTERS.toLocaleString('en')} characters: send it in parts.`,
    )
    .refine(
      (text) => !text.includes('\u0000'),
      'The note holds a character that is no text: remove it and send again.',
    ),
  observedAt: z.preprocess(
    blankToNull,
    z
      .string()
      .transform((value) => value.replace(' ', 'T').slice(0, 16))
      .refine(isLocalTime, 'The time of the note is no date and time: write it as 2031-07-14 06:55.')
      .nullish(),
  ),
  author: z.preprocess(
    blankToNull,
    z.string().trim().max(60, 'The name is too long: 60 letters at the most.').nullish(),
  ),
  plot: z.preprocess(blankToNull, z.string().trim().nullish()),
  channel: z.preprocess(blankToNull, z.enum(['typed', 'dictated']).nullish()),
  position: position.nullish(),
});
export type NoteInput = z.input<typeof noteInput>;

export function isLocalTime(value: string): boolean {
  if (!/^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}$/.test(value) || !isDay(value.slice(0, 10))) return false;
  try {
    Temporal.PlainDateTime.from(value, { overflow: 'reject' });
    return true;
  } catch {
    return false;
  }
}
