import { readFile } from 'node:fs/promises';
import type { RequestHandler } from 'express';
import { z } from 'zod';
import { keepBoundaries } from '../../diary/boundaries.ts';
import type { Diary } from '../../diary/diary.ts';
import { boundariesFromGeoJson, faultOf } from '../../plots/boundaries-from-geojson.ts';
import { isRefusal, showRefusal } from '../errors.ts';
import { formOf } from '../form.ts';
import { gridOf } from '../grid-form.ts';
import { showBoundaries } from '../pages/boundaries-page.ts';
import { tell } from '../told.ts';
import { letGo, type Receive } from '../uploads.ts';
import { whoWrites } from '../who.ts';
import { several } from '../words.ts';

const LARGEST_CHARACTERS = 5_000_000;

/** A GeoJSON file: shows what it would change. */
export const readBoundaryFile =
  (diary: Diary, receive: Receive): RequestHandler =>
  async (req, res) => {
    const files = await receive(req, res);
    if (!Array.isArray(files))
      return showBoundaries(diary, req, res, { refusal: { ...files, field: 'file' } });
    try {
      const text = files[0] ? await readFile(files[0].path, 'utf8') : '';
      const found =
        text === '' || text.length > LARGEST_CHARACTERS
          ? { refused: 'No file was chosen, or it is empty or larger than 5 MB.' }
          : boundariesFromGeoJson(text);
      if ('refused' in found)
        return await showBoundaries(diary, req, res, { refusal: { refused: found.refused, field: 'file' } });
      await showBoundaries(diary, req, res, { found: found.boundaries, problems: found.problems });
    } finally {
      await letGo(files);
    }
  };

/** A grid: shows what it would change. */
export const readBoundaryGrid =
  (diary: Diary): RequestHandler =>
  async (req, res) => {
    const form = formOf(req);
    const found = gridOf(form);
    await showBoundaries(diary, req, res, Array.isArray(found) ? { found, form } : { refusal: found, form });
  };

const kept = z.array(
  z.object({
    name: z.string().max(60),
    boundary: z
      .array(z.tuple([z.number(), z.number()]))
      .max(5000)
      .refine((boundary) => faultOf(boundary) === null),
  }),
);

/** Keeps what the preview showed. */
export const keepBoundariesForm =
  (diary: Diary): RequestHandler =>
  async (req, res) => {
    const found = kept.safeParse(parsed(formOf(req).boundaries));
    if (!found.success)
      return showRefusal(req, res, {
        refused: 'The outlines did not come whole, so nothing was changed. Send the file again.',
      });
    const done = await keepBoundaries(diary, found.data, whoWrites(req));
    if (isRefusal(done)) {
      tell(res, { words: done.refused, bad: true });
      return res.redirect(303, '/season/boundaries');
    }
    tell(res, {
      words: `The outlines of ${several(done.plots, 'plot')} are kept.`,
      undo: { action: `/changes/${done.change}/undo`, fields: { back: '/season/boundaries' } },
    });
    res.redirect(303, '/plots');
  };

function parsed(text: string | undefined): unknown {
  try {
    return JSON.parse(text ?? '');
  } catch {
    return null;
  }
}
