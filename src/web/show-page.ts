import { fileURLToPath } from 'node:url';
import ejs from 'ejs';
import type { Request, Response } from 'express';
import type { Diary } from '../diary/diary.ts';
import { readFarm } from '../diary/farm.ts';
import type { Assets } from './assets.ts';
import { takeTold } from './told.ts';
import { WORDS_FOR_VIEWS } from './words.ts';

export type Place = 'Capture' | 'Walk' | 'Plots' | 'Follow-ups' | 'Notes' | 'Season' | 'Take out' | null;

const PLACES = [
  ['/capture', 'Capture', 'at-capture'],
  ['/walk', 'Walk', ''],
  ['/plots', 'Plots', ''],
  ['/follow-ups', 'Follow-ups', 'later'],
  ['/notes', 'Notes', 'later'],
  ['/season', 'Season', 'desk-only'],
  ['/take-out', 'Take out', 'desk-only'],
] as const;

export interface PageFrame {
  title: string;
  place: Place;
  /** Id of the note that this page shows as kept: the browser lets go of its draft. */
  kept?: string;
  /** No places, no way to the rest: for somebody who was given one page only. */
  alone?: boolean;
}

/** Renders `views/<view>.ejs` inside the frame that every page has. */
export async function showPage(
  req: Request,
  res: Response,
  view: string,
  locals: PageFrame & Record<string, unknown>,
  status = 200,
): Promise<void> {
  const assets: Assets = req.app.locals.assets;
  const diary: Diary = req.app.locals.diary;
  const shared = { ...WORDS_FOR_VIEWS, asset: assets.url, here: req.originalUrl };
  const body = await render(view, { ...shared, ...locals });
  const farm = await readFarm(diary).catch(() => null);
  const frame = {
    kept: null,
    ...locals,
    places: PLACES,
    farm,
    told: takeTold(req, res),
    body,
  };
  res
    .status(status)
    .type('html')
    .send(await render(locals.alone ? 'alone' : 'layout', { ...shared, ...frame }));
}

const viewPath = (view: string): string => fileURLToPath(new URL(`../../views/${view}.ejs`, import.meta.url));
const render = (view: string, data: object): Promise<string> =>
  ejs.renderFile(viewPath(view), data, { cache: true });
