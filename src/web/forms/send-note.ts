import type { Request, RequestHandler, Response } from 'express';
import { Temporal } from 'temporal-polyfill';
import { strikeFact } from '../../diary/correct.ts';
import type { Diary, Refusal } from '../../diary/diary.ts';
import { readFarm } from '../../diary/farm.ts';
import { keepNote, type NoteKept } from '../../diary/keep-note.ts';
import { notePage } from '../../diary/note-page.ts';
import { isRefusal, statusOf, wantsJson } from '../errors.ts';
import { allOf, type Form, formOf } from '../form.ts';
import { freshId } from '../fresh-id.ts';
import { showCapture } from '../pages/capture-page.ts';
import { tell } from '../told.ts';
import { letGo, type Receive } from '../uploads.ts';
import { rememberWho, whoWrites } from '../who.ts';
import { noteHref, several } from '../words.ts';

export const sendNote =
  (diary: Diary, receive: Receive): RequestHandler =>
  async (req, res) => {
    const files = await receive(req, res);
    if (!Array.isArray(files)) return refuse(diary, req, res, files);
    try {
      const form = formOf(req);
      const author = form.author?.trim() || whoWrites(req);
      const kept = await keepNote(diary, {
        id: form.id ?? '',
        text: (form.text ?? '').replaceAll('\r\n', '\n'),
        observedAt: form.observedAt || (await localTimeOf(diary, form.begunAt)),
        author,
        plot: form.plot || undefined,
        channel: form.channel === 'dictated' ? 'dictated' : 'typed',
        position: positionOf(form.position),
        photos: files.map(({ path, name }) => ({ path, name })),
      });
      if (isRefusal(kept)) return await refuse(diary, req, res, kept);
      if (author) rememberWho(res, author);
      await strikeWhatWasDenied(diary, kept.note.id, allOf(req, 'notSo'), author);
      answer(req, res, kept);
    } finally {
      await letGo(files);
    }
  };

function answer(req: Request, res: Response, { note, twice, photos }: NoteKept): void {
  const refused = photos.filter((photo) => photo.refused);
  if (wantsJson(req)) {
    res.status(twice ? 200 : 201).json({ id: note.id, url: noteHref(note.id), twice, photos });
    return;
  }
  const sentences = [
    twice ? 'This note was kept already; it stands once.' : 'Kept.',
    ...(photos.length > refused.length ? [`With ${several(photos.length - refused.length, 'photo')}.`] : []),
    ...refused.map((photo) => `${photo.name} was not kept: ${photo.refused}`),
  ];
  tell(res, { words: sentences.join(' '), bad: refused.length > 0 });
  res.redirect(303, noteHref(note.id));
}

async function refuse(diary: Diary, req: Request, res: Response, refusal: Refusal): Promise<void> {
  if (req.destroyed && !req.complete) return;
  if (wantsJson(req)) {
    res.status(statusOf(refusal)).json({ refused: refusal.refused, field: refusal.field });
    return;
  }
  const form: Form = formOf(req);
  // Another note has this id, or none was sent: the words go on under a fresh one.
  const id = refusal.status === 409 || refusal.field === 'id' || !form.id ? freshId() : form.id;
  await showCapture(diary, req, res, { ...form, id }, refusal);
}

/** The instant at which the phone says writing began, as the farm's own time; a clock that is far off is not believed. */
async function localTimeOf(diary: Diary, begunAt: string | undefined): Promise<string | undefined> {
  const farm = await readFarm(diary);
  if (!begunAt || farm?.asOf) return undefined;
  try {
    const begun = Temporal.Instant.from(begunAt);
    const hoursAgo = begun.until(diary.now()).total('hours');
    if (hoursAgo < -0.2 || hoursAgo > 24 * 30) return undefined;
    return begun
      .toZonedDateTimeISO(farm?.timeZone ?? 'UTC')
      .toPlainDateTime()
      .toString({ smallestUnit: 'minute' });
  } catch {
    return undefined;
  }
}

function positionOf(written: string | undefined) {
  try {
    return written ? JSON.parse(written) : null;
  } catch {
    return null;
  }
}

/** Facts to which the writer said `no, it's not` before the note was sent, as `{list, fact}` in JSON. */
async function strikeWhatWasDenied(
  diary: Diary,
  noteId: string,
  denied: string[],
  by: string,
): Promise<void> {
  if (denied.length === 0) return;
  const page = await notePage(diary, noteId);
  const said = new Set(denied);
  for (const { id, list, fact } of page?.facts ?? []) {
    if (said.has(JSON.stringify({ list, fact }))) await strikeFact(diary, noteId, id, by);
  }
}
