import type { RequestHandler } from 'express';
import type { Diary } from '../../diary/diary.ts';
import { type StepInput, takeStep } from '../../diary/take-step.ts';
import { sayDay } from '../../reading/say-fact.ts';
import { isRefusal, showRefusal, wantsJson } from '../errors.ts';
import { backTo, type Form, formOf } from '../form.ts';
import { freshId } from '../fresh-id.ts';
import { tell } from '../told.ts';
import { whoWrites } from '../who.ts';

export const takeStepForm =
  (diary: Diary): RequestHandler =>
  async (req, res) => {
    const form = formOf(req);
    const input = stepOf(form, whoWrites(req));
    const done = await takeStep(diary, input);
    const back = backTo(req, '/follow-ups');
    if (isRefusal(done)) {
      if (wantsJson(req) || done.status === 404) return showRefusal(req, res, done);
      tell(res, { words: `${done.refused} Nothing was changed.`, bad: true });
      return res.redirect(303, back);
    }
    if (wantsJson(req)) return void res.json(done);
    tell(res, {
      words: `${done.title}: ${whatHappened(input)}`,
      ...(input.kind !== 'undo' && { undo: undoOf(input, back) }),
    });
    res.redirect(303, back);
  };

/**
 * A button says kind and finding in one: `look:fixed`; `not_needed` drops with words of its own; `candidate` says which item
 * a note is about.
 */
function stepOf(form: Form, by: string): StepInput {
  const [said, found] = (form.act ?? form.kind ?? '').split(':');
  const kind = form.candidate ? 'match' : said === 'not_needed' ? 'drop' : said;
  const filled = { found, until: form.until, on: form.on, undoes: form.undoes, factId: form.factId };
  return {
    id: form.id ?? '',
    itemId: form.candidate || (form.item ?? ''),
    kind: kind as StepInput['kind'],
    by,
    words: said === 'not_needed' ? 'no longer needed' : (form.words ?? ''),
    ...Object.fromEntries(Object.entries(filled).filter(([, value]) => !!value)),
  };
}

const undoOf = ({ id, itemId }: StepInput, back: string) => ({
  action: '/follow-ups/steps',
  fields: { id: freshId(), item: itemId, kind: 'undo', undoes: id, back },
});

const FOUND = { fixed: 'fixed', partly: 'partly fixed', not_fixed: 'not fixed', seen: 'done and seen' };

function whatHappened({ kind, found, until }: StepInput): string {
  switch (kind) {
    case 'look':
      return `${found ? FOUND[found] : 'looked at'}.`;
    case 'report_done':
      return 'said to be done; it comes back for a look at the result.';
    case 'put_off':
      return `put off until ${until ? sayDay(until) : 'later'}.`;
    case 'drop':
      return 'dropped.';
    case 'decide':
      return 'decided, it is to be done.';
    case 'rule_out':
      return 'decided against.';
    case 'reopen':
      return 'open again.';
    case 'match':
      return 'the note is about this one.';
    case 'apart':
      return 'the note is about other work.';
    case 'undo':
      return 'taken back, it stands as before.';
    default:
      return 'written down.';
  }
}
