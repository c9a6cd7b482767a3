import type { RequestHandler } from 'express';
import type { Diary, Refusal } from '../../diary/diary.ts';
import { saveCrew, saveFarm, saveField, savePlot, saveSeason } from '../../diary/set-up.ts';
import { isRefusal, showRefusal, statusOf, wantsJson } from '../errors.ts';
import { formOf } from '../form.ts';
import { showPlotForm } from '../pages/plot-form-page.ts';
import { showSeason } from '../pages/season-page.ts';
import { ENTRIES, type EntryName, fieldOf, readSeasonForm } from '../season-forms.ts';
import { tell } from '../told.ts';

type Save = (diary: Diary, written: unknown) => Promise<object | Refusal>;
const SAVE: Record<EntryName, Save> = {
  farm: saveFarm,
  season: saveSeason,
  crews: saveCrew,
  fields: saveField,
  plots: savePlot,
};
const KEPT: Record<EntryName, string> = {
  farm: 'The farm is kept.',
  season: 'The season is kept.',
  crews: 'The crew is kept.',
  fields: 'The field is kept.',
  plots: 'The plot is kept.',
};

export const saveSeasonEntry =
  (diary: Diary): RequestHandler<{ entry: string }> =>
  async (req, res, next) => {
    const entry = ENTRIES.find((name) => name === req.params.entry);
    if (!entry) return next();
    const form = formOf(req);
    const saved = await SAVE[entry](diary, readSeasonForm(entry, form));
    if (!isRefusal(saved)) {
      if (wantsJson(req)) return void res.json(saved);
      tell(res, { words: KEPT[entry] });
      return res.redirect(303, '/season');
    }
    const refusal = { ...saved, field: fieldOf(entry, saved.field) };
    if (wantsJson(req)) return void res.status(statusOf(refusal)).json(refusal);
    if (entry === 'plots') return showPlotForm(req, res, form, form.known === 'yes', refusal);
    if (refusal.status && refusal.status !== 400) return showRefusal(req, res, refusal);
    await showSeason(diary, req, res, { refused: { entry, form, refusal } });
  };
