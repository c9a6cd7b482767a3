/** Who writes on this phone: a first name in a cookie, no login. It says who did something; it opens nothing. */
import type { Request, Response } from 'express';
import { readCookie } from './told.ts';

const YEAR_MS = 365 * 24 * 3600 * 1000;

export const whoWrites = (req: Request): string => (readCookie(req, 'who') ?? '').trim().slice(0, 60);

export function rememberWho(res: Response, name: string): void {
  res.cookie('who', name.trim().slice(0, 60), {
    httpOnly: true,
    sameSite: 'lax',
    maxAge: YEAR_MS,
    path: '/',
  });
}
