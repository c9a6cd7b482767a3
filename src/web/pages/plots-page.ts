import type { RequestHandler } from 'express';
import type { Diary } from '../../diary/diary.ts';
import { readFields } from '../../diary/farm.ts';
import { fieldPlan, type PlanPlot } from '../../diary/field-plan.ts';
import { trayCount } from '../../diary/place-photos.ts';
import { planPlaces } from '../../diary/plan-places.ts';
import { fieldPlanSvg, pointWords } from '../field-plan-svg.ts';
import { asked } from '../form.ts';
import { showPage } from '../show-page.ts';

/** `?with=places&day=2031-07-14` shows that day’s photos and notes where they were taken. */
export const plotsPage =
  (diary: Diary): RequestHandler =>
  async (req, res) => {
    const places = asked(req, 'with') === 'places' ? await planPlaces(diary, asked(req, 'day')) : null;
    const [plan, fields, unplaced] = await Promise.all([
      fieldPlan(diary, places?.points),
      readFields(diary),
      trayCount(diary),
    ]);
    const names = new Map(fields.map(({ code, name }) => [code, name]));
    await showPage(req, res, 'plots', {
      title: 'Plots',
      place: 'Plots',
      plan,
      unplaced,
      withPlaces: asked(req, 'with') === 'places',
      places,
      pointWords,
      groups: byField(plan.plots, names),
      svg: plan.plots.some(({ shape }) => shape.length > 2) ? fieldPlanSvg(plan) : null,
    });
  };

/** In walking order; a new heading wherever the field changes. */
function byField(plots: PlanPlot[], names: Map<string, string>): { name: string; plots: PlanPlot[] }[] {
  const groups: { name: string; plots: PlanPlot[] }[] = [];
  for (const one of plots) {
    const code = one.plot.field;
    const name = code ? (names.get(code) ?? code) : 'No field';
    const last = groups.at(-1);
    if (last?.name === name) last.plots.push(one);
    else groups.push({ name, plots: [one] });
  }
  return groups;
}
