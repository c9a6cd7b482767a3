import type { Request, RequestHandler, Response } from 'express';
import type { Diary, Refusal } from '../../diary/diary.ts';
import { readPlots } from '../../diary/farm.ts';
import { notePage } from '../../diary/note-page.ts';
import type { Fact } from '../../reading/record.ts';
import { showRefusal, statusOf } from '../errors.ts';
import { answersOf, isList, LIST_WORDS, QUESTIONS } from '../fact-form.ts';
import { asked, type Form } from '../form.ts';
import { freshId } from '../fresh-id.ts';
import { showPage } from '../show-page.ts';
import { noteHref } from '../words.ts';

/** `?change=<fact>` changes one; `?list=findings` adds one; without either, asks of which kind it is. */
export const factPage =
  (diary: Diary): RequestHandler<{ id: string }> =>
  async (req, res) => {
    const change = asked(req, 'change');
    const page = await notePage(diary, req.params.id);
    const fact = page?.facts.find(({ id }) => id === change);
    if (!page) return showRefusal(req, res, { refused: 'There is no note at this address.', status: 404 });
    if (change && !fact) {
      return showRefusal(req, res, {
        refused:
          'That fact stands no more on this note: go back and reload the page to see how it is read now.',
        status: 404,
      });
    }
    const form: Form = fact
      ? { ...answersOf({ list: fact.list, fact: fact.fact } as Fact), change }
      : { list: asked(req, 'list'), plot: page.note.plot ?? '' };
    await showFactForm(diary, req, res, req.params.id, form);
  };

export async function showFactForm(
  diary: Diary,
  req: Request,
  res: Response,
  noteId: string,
  form: Form,
  refusal?: Refusal,
): Promise<void> {
  const list = isList(form.list ?? '') ? form.list : '';
  await showPage(
    req,
    res,
    'fact',
    {
      title: form.change ? 'Change a fact' : 'Add a fact',
      place: 'Notes',
      note: noteHref(noteId),
      list,
      lists: LIST_WORDS,
      questions: list && isList(list) ? QUESTIONS[list] : [],
      plots: await readPlots(diary),
      form: { ...form, id: form.id || freshId() },
      refusal: refusal ?? null,
    },
    refusal ? statusOf(refusal) : 200,
  );
}
