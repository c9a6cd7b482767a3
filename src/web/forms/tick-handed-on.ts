import { createHash } from 'node:crypto';
import type { Request, RequestHandler, Response } from 'express';
import type { Diary } from '../../diary/diary.ts';
import { tickHandedOn, untickHandedOn } from '../../diary/hand-on.ts';
import { isRefusal, statusOf, wantsJson } from '../errors.ts';
import { formOf } from '../form.ts';
import { freshId } from '../fresh-id.ts';
import { showHandedOn } from '../pages/handed-on-page.ts';
import { tell } from '../told.ts';
import { rememberWho } from '../who.ts';

/** `Done` by the crew's leader: a report under the name that was written above. */
export const tickHandedOnForm =
  (diary: Diary): RequestHandler<{ token: string }> =>
  async (req, res) => {
    const { id = '', item = '', name = '' } = formOf(req);
    if (!item) return keepName(req, res, name);
    const stepId = idOf(id, item);
    const done = await tickHandedOn(diary, req.params.token, { id: stepId, itemId: item, name });
    if (isRefusal(done)) {
      if (wantsJson(req)) return void res.status(statusOf(done)).json(done);
      return showHandedOn(diary, req, res, { refusal: done, name });
    }
    rememberWho(res, name);
    if (wantsJson(req)) return void res.json({ title: done.title, stands: done.stands });
    const sheet = `/handed-on/${encodeURIComponent(req.params.token)}`;
    tell(res, {
      words: `${done.title}: said to be done by ${name.trim()}. Somebody from the farm still comes to look at it.`,
      undo: { action: `${sheet}/undo`, fields: { id: freshId(), item, undoes: stepId, name } },
    });
    res.redirect(303, sheet);
  };

/** Enter in the field of the name is no `Done`. */
function keepName(req: Request<{ token: string }>, res: Response, name: string): void {
  rememberWho(res, name);
  if (name.trim()) tell(res, { words: `${name.trim()}: now press Done at each job that is done.` });
  res.redirect(303, `/handed-on/${encodeURIComponent(req.params.token)}`);
}

/** A wet false tap is taken back. */
export const untickHandedOnForm =
  (diary: Diary): RequestHandler<{ token: string }> =>
  async (req, res) => {
    const { id = '', item = '', undoes = '', name = '' } = formOf(req);
    const done = await untickHandedOn(diary, req.params.token, { id, itemId: item, undoes, name });
    if (isRefusal(done)) {
      if (wantsJson(req)) return void res.status(statusOf(done)).json(done);
      return showHandedOn(diary, req, res, { refusal: done, name });
    }
    if (wantsJson(req)) return void res.json({ title: done.title, stands: done.stands });
    tell(res, { words: `${done.title}: taken back, it stands as before.` });
    res.redirect(303, `/handed-on/${encodeURIComponent(req.params.token)}`);
  };

/** One form holds all jobs: its hidden id and the job make the id of the step, so that a second press ticks once. */
const idOf = (formId: string, itemId: string): string =>
  formId ? createHash('sha256').update(`${formId}\n${itemId}`).digest('hex').slice(0, 40) : '';
