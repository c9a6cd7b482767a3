import type { RequestHandler } from 'express';
import { setStraightDown } from '../../diary/canopy.ts';
import type { Diary } from '../../diary/diary.ts';
import { isRefusal, showRefusal, wantsJson } from '../errors.ts';
import { backTo, formOf } from '../form.ts';
import { tell } from '../told.ts';

/** `straightDown=yes` measures the green cover; anything else takes it away. */
export const setStraightDownForm =
  (diary: Diary): RequestHandler<{ id: string }> =>
  async (req, res) => {
    const wanted = formOf(req).straightDown === 'yes';
    const cover = await setStraightDown(diary, req.params.id, wanted);
    const back = backTo(req, `/photos/${req.params.id}`);
    const refusal = cover && isRefusal(cover) ? cover : null;
    if (refusal?.status === 404 || (refusal && wantsJson(req))) return showRefusal(req, res, refusal);
    if (wantsJson(req)) return void res.json({ cover });
    const undo = {
      action: `/photos/${req.params.id}/straight-down`,
      fields: { straightDown: wanted ? 'no' : 'yes', back },
    };
    if (refusal) tell(res, { words: `No cover could be measured. ${refusal.refused}`, bad: true, undo });
    else
      tell(res, {
        words:
          cover && 'coverPercent' in cover
            ? `Green cover measured: ${Math.round(cover.coverPercent)} %.`
            : 'Not taken straight down: its cover counts no more.',
        undo,
      });
    res.redirect(303, back);
  };
