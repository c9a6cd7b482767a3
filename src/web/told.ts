/** What was just done, carried over one redirect in a short cookie, with the way to undo it. */
import type { Request, Response } from 'express';
import { z } from 'zod';

const told = z.object({
  words: z.string(),
  bad: z.boolean().optional(),
  undo: z.object({ action: z.string().startsWith('/'), fields: z.record(z.string(), z.string()) }).optional(),
});
export type Told = z.infer<typeof told>;

const COOKIE = 'told';
const MOST_WORDS = 900;

export function tell(res: Response, what: Told): void {
  const short = what.words.length > MOST_WORDS ? `${what.words.slice(0, MOST_WORDS)} …` : what.words;
  res.cookie(COOKIE, JSON.stringify({ ...what, words: short }), {
    httpOnly: true,
    sameSite: 'lax',
    maxAge: 60_000,
    path: '/',
  });
}

/** Reads it once and lets it go. */
export function takeTold(req: Request, res: Response): Told | null {
  const value = readCookie(req, COOKIE);
  if (value === null) return null;
  res.clearCookie(COOKIE, { path: '/' });
  try {
    return told.parse(JSON.parse(value));
  } catch {
    return null;
  }
}

export function readCookie(req: Request, name: string): string | null {
  for (const part of (req.headers.cookie ?? '').split(';')) {
    const [key, ...rest] = part.trim().split('=');
    if (key !== name) continue;
    try {
      return decodeURIComponent(rest.join('='));
    } catch {
      return null;
    }
  }
  return null;
}
