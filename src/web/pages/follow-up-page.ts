import type { RequestHandler } from 'express';
import type { Diary } from '../../diary/diary.ts';
import { localToday } from '../../diary/farm.ts';
import { followUpById } from '../../diary/follow-up-lists.ts';
import { thenAndNow } from '../../diary/then-and-now.ts';
import { FOUND_WORDS } from '../../followups/sentences.ts';
import { showRefusal } from '../errors.ts';
import { jobLocals } from '../job-locals.ts';
import { showPage } from '../show-page.ts';
import { followUpHref, isChemical } from '../words.ts';

/** One item: its life step by step, what it waits for, how it was and how it is. */
export const followUpItemPage =
  (diary: Diary): RequestHandler<{ id: string }> =>
  async (req, res) => {
    const item = await followUpById(diary, req.params.id);
    if (!item) {
      return showRefusal(req, res, {
        refused:
          'There is no follow-up at this address: its note may be read otherwise now, or it was taken up into another. See the list.',
        status: 404,
      });
    }
    if (item.id !== req.params.id) return res.redirect(302, followUpHref(item.id));
    await showPage(req, res, 'follow-up', {
      title: item.title,
      place: 'Follow-ups',
      item,
      foundWords: FOUND_WORDS,
      chemicals: isChemical(item),
      pairs: await thenAndNow(diary, [item]),
      ...jobLocals(req, await localToday(diary)),
    });
  };
