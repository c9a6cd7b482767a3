import type { RequestHandler } from 'express';
import type { Diary } from '../../diary/diary.ts';
import { plotPhotos } from '../../diary/plot-photos.ts';
import { showRefusal } from '../errors.ts';
import { asked } from '../form.ts';
import { showPage } from '../show-page.ts';

/** `?first=2031-07-10&second=2031-08-11` holds two days against one another. */
export const plotPhotosPage =
  (diary: Diary): RequestHandler<{ code: string }> =>
  async (req, res) => {
    const { code } = req.params;
    const page = await plotPhotos(diary, code, { first: asked(req, 'first'), second: asked(req, 'second') });
    if (!page)
      return showRefusal(req, res, {
        refused: `No plot is called ${code.slice(0, 40)}. See Plots for those that are set up.`,
        status: 404,
      });
    await showPage(req, res, 'plot-photos', { title: `Photos of ${code}`, place: 'Plots', ...page });
  };
