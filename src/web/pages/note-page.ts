import type { RequestHandler } from 'express';
import type { Diary } from '../../diary/diary.ts';
import { notePage as readNotePage } from '../../diary/note-page.ts';
import { showRefusal } from '../errors.ts';
import { showPage } from '../show-page.ts';
import { isChemical } from '../words.ts';

export const notePage =
  (diary: Diary): RequestHandler<{ id: string }> =>
  async (req, res) => {
    const page = await readNotePage(diary, req.params.id);
    if (!page) {
      return showRefusal(req, res, {
        refused:
          'There is no note at this address. If you just wrote one, it is still in the form under Capture: keep it there.',
        status: 404,
      });
    }
    const chemicals = page.facts.some((fact) => fact.list === 'actions' && isChemical(fact));
    await showPage(req, res, 'note', {
      title: 'Note',
      place: 'Notes',
      kept: page.note.id,
      ...page,
      chemicals,
    });
  };
