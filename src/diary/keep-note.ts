/** Keeps a note: on the disk before the answer comes, once however often it is sent, then read and filed. */
import { findNote, insertNote } from '../storage/note-rows.ts';
import type { NoteRow } from '../storage/tables.ts';
import type { Diary, Refusal } from './diary.ts';
import { localNow } from './farm.ts';
import { readFarmSeen } from './farm-seen.ts';
import { keepPhotos, type PhotoKept, type PhotoReceived } from './keep-photos.ts';
import { type NoteInput, noteInput } from './note-input.ts';
import { readAndFile } from './read-again.ts';

export interface NoteKept {
  note: NoteRow;
  /** The same note had been kept before; nothing was added but new photos. */
  twice: boolean;
  photos: PhotoKept[];
}

export async function keepNote(
  diary: Diary,
  written: NoteInput & { photos?: PhotoReceived[] },
): Promise<NoteKept | Refusal> {
  const checked = noteInput.safeParse(written);
  if (!checked.success) {
    const issue = checked.error.issues[0]!;
    const tooLong = issue.code === 'too_big' && issue.path[0] === 'text';
    return { refused: issue.message, field: String(issue.path[0] ?? ''), status: tooLong ? 413 : 400 };
  }
  const { photos = [] } = written;
  const input = checked.data;
  if (input.text.trim() === '' && photos.length === 0) {
    return { refused: 'The note is empty: write or speak a few words, or add a photo.', field: 'text' };
  }
  const farm = await readFarmSeen(diary);
  const plot = input.plot
    ? farm.plots.find(({ code }) => code.toLowerCase() === input.plot!.toLowerCase())
    : null;
  if (plot === undefined) {
    return {
      refused: `No plot is called ${input.plot}: choose one of ${someOf(farm.plots.map(({ code }) => code))}, or leave it open.`,
      field: 'plot',
    };
  }
  const note: NoteRow = {
    id: input.id,
    observed_at: input.observedAt ?? (await localNow(diary)),
    received_at: diary.now().toString(),
    author: input.author ?? '',
    plot: plot?.code ?? null,
    channel: input.channel ?? 'typed',
    text: input.text,
    position: input.position ? JSON.stringify(input.position) : null,
  };
  const earlier = await findNote(diary.db, note.id);
  if (earlier) return again(diary, earlier, note, photos);

  const fresh = await diary.db.transaction().execute(async (db) => {
    const inserted = await insertNote(db, note);
    if (inserted) await readAndFile(db, note, farm, note.received_at);
    return inserted;
  });
  if (!fresh) return again(diary, (await findNote(diary.db, note.id))!, note, photos);
  return { note, twice: false, photos: await keepPhotos(diary, note, photos) };
}

/** The same id once more: the same words are the same note; other words are refused, so that neither is lost. */
async function again(
  diary: Diary,
  earlier: NoteRow,
  note: NoteRow,
  photos: PhotoReceived[],
): Promise<NoteKept | Refusal> {
  if (earlier.text !== note.text) {
    return {
      refused:
        'A note with this id but other words is kept already. Your words are still here: keep them as a new note.',
      field: 'id',
      status: 409,
    };
  }
  return { note: earlier, twice: true, photos: await keepPhotos(diary, earlier, photos) };
}

const someOf = (codes: string[]): string =>
  (codes.length > 12 ? `${codes.slice(0, 12).join(', ')} …` : codes.join(', ')) ||
  'none yet (set up the season first)';
