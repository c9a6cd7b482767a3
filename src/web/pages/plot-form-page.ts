import type { Request, RequestHandler, Response } from 'express';
import type { Diary, Refusal } from '../../diary/diary.ts';
import { readPlot, readPlots } from '../../diary/farm.ts';
import { showRefusal, statusOf } from '../errors.ts';
import { asked, type Form } from '../form.ts';
import { ASKED, ASKED_OF_CROP, formOfPlot } from '../season-forms.ts';
import { showPage } from '../show-page.ts';

/** `?code=E1` changes a plot; without it, a new one. */
export const plotFormPage =
  (diary: Diary): RequestHandler =>
  async (req, res) => {
    const code = asked(req, 'code');
    const plot = code ? await readPlot(diary, code) : null;
    if (code && !plot) return showRefusal(req, res, { refused: `No plot is called ${code}.`, status: 404 });
    const next = { walk: String(Math.max(0, ...(await readPlots(diary)).map(({ walk }) => walk ?? 0)) + 1) };
    await showPlotForm(req, res, plot ? formOfPlot(plot) : next, plot !== null);
  };

export async function showPlotForm(
  req: Request,
  res: Response,
  form: Form,
  known: boolean,
  refusal?: Refusal,
): Promise<void> {
  await showPage(
    req,
    res,
    'plot-form',
    {
      title: known ? `Change plot ${form.code}` : 'Add a plot',
      place: 'Season',
      form,
      known,
      askedOfPlot: ASKED.plots,
      askedOfCrop: ASKED_OF_CROP,
      refusal: refusal ?? null,
    },
    refusal ? statusOf(refusal) : 200,
  );
}
