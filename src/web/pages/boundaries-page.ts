import type { Request, RequestHandler, Response } from 'express';
import { type BoundaryPreview, previewBoundaries } from '../../diary/boundaries.ts';
import type { Diary, Refusal } from '../../diary/diary.ts';
import type { NamedBoundary } from '../../plots/boundaries-from-geojson.ts';
import { statusOf } from '../errors.ts';
import { fieldPlanSvg } from '../field-plan-svg.ts';
import type { Form } from '../form.ts';
import { GRID_FIELDS } from '../grid-form.ts';
import { showPage } from '../show-page.ts';

export interface BoundariesShown {
  /** What was found in the file or the grid. */
  found?: NamedBoundary[];
  /** What of it could not be taken. */
  problems?: string[];
  form?: Form;
  refusal?: Refusal;
}

export const boundariesPage =
  (diary: Diary): RequestHandler =>
  (req, res) =>
    showBoundaries(diary, req, res);

export async function showBoundaries(
  diary: Diary,
  req: Request,
  res: Response,
  { found, problems = [], form = {}, refusal }: BoundariesShown = {},
): Promise<void> {
  const preview: BoundaryPreview | null = found ? await previewBoundaries(diary, found) : null;
  const changes = preview?.rows.filter(({ what }) => what !== 'same') ?? [];
  await showPage(
    req,
    res,
    'boundaries',
    {
      title: 'Outlines of plots',
      place: 'Season',
      preview,
      problems,
      form,
      gridFields: GRID_FIELDS,
      refusal: refusal ?? null,
      toKeep: JSON.stringify(changes.map(({ code, boundary }) => ({ name: code, boundary }))),
      changes: changes.length,
      svg: preview && changes.length ? fieldPlanSvg(preview.plan) : null,
    },
    refusal ? statusOf(refusal) : 200,
  );
}
