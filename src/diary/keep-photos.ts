/**
 * Keeps photos: the original byte for byte under its content hash before anything else; then, at leisure and where
 * it can be stopped, what the file says of itself and two smaller copies.
 */
import { open, rm } from 'node:fs/promises';
import { refusalWords } from '../photos/ingest.ts';
import { kindOf } from '../photos/kind.ts';
import { copyPath, keepOriginal, originalPath } from '../storage/media.ts';
import { findPhoto, insertPhoto, linkPhoto } from '../storage/photo-rows.ts';
import type { NoteRow, PhotoRow } from '../storage/tables.ts';
import { measureCover } from './canopy.ts';
import type { Diary } from './diary.ts';
import { placeByWalkOrPosition } from './place-photos.ts';

/** A file that has arrived and lies under a temporary name. */
export interface PhotoReceived {
  path: string;
  name: string;
}

export interface PhotoKept {
  name: string;
  id?: string;
  /** Kept before; nothing was added. */
  known?: boolean;
  refused?: string;
}

/** Photos of a note, in order. One that is no photo is named in words; the others and the note stand. */
export async function keepPhotos(diary: Diary, note: NoteRow, photos: PhotoReceived[]): Promise<PhotoKept[]> {
  const kept: PhotoKept[] = [];
  for (const [place, photo] of photos.entries()) {
    const answer = await keepLoosePhoto(diary, photo);
    if (answer.id) {
      await linkPhoto(diary.db, note.id, answer.id, place);
      await placeByNote(diary, answer.id, note);
    }
    kept.push(answer);
  }
  if (kept.some(({ id, known }) => id && !known)) void developWaiting(diary);
  return kept;
}

/** A photo without a note. */
export async function keepLoosePhoto(diary: Diary, { path, name }: PhotoReceived): Promise<PhotoKept> {
  const { kind, bytes } = await firstBytes(path);
  if (!kind) {
    await rm(path, { force: true });
    return { name, refused: notAPhoto(name, bytes) };
  }
  const id = await keepOriginal(diary.mediaFolder, path);
  if (await findPhoto(diary.db, id)) return { name, id, known: true };
  await insertPhoto(diary.db, { ...UNREAD, id, bytes, kind, name, received_at: diary.now().toString() });
  return { name, id };
}

const notAPhoto = (name: string, bytes: number): string =>
  bytes === 0
    ? `${name} is empty: take or choose the photo again.`
    : `${name} is no photo that can be kept here. JPEG, PNG, WebP, AVIF, TIFF and HEIC can; the note is kept without it.`;

const UNREAD: Omit<PhotoRow, 'id' | 'bytes' | 'kind' | 'name' | 'received_at'> = {
  width: null,
  height: null,
  taken_wall: null,
  taken_offset: null,
  taken_offset_source: null,
  taken_utc: null,
  position_status: 'unread',
  latitude: null,
  longitude: null,
  accuracy_m: null,
  metadata: '{}',
  plot: null,
  placed_by: null,
  straight_down: 0,
  cover_percent: null,
  cover: null,
  developed_at: null,
  fault: null,
  clock_shift_min: 0,
};

async function firstBytes(path: string): Promise<{ kind: ReturnType<typeof kindOf>; bytes: number }> {
  const file = await open(path, 'r');
  const head = new Uint8Array(64);
  const { bytesRead } = await file.read(head, 0, 64, 0);
  const { size } = await file.stat();
  await file.close();
  return { kind: kindOf(head.subarray(0, bytesRead)), bytes: size };
}

/** The note's own plot, or the one plot that its words speak of; a person's word stays. */
async function placeByNote({ db }: Diary, id: string, note: NoteRow): Promise<void> {
  const named = await db
    .selectFrom('facts')
    .select('plot')
    .distinct()
    .where('note_id', '=', note.id)
    .where('plot', 'is not', null)
    .execute();
  const plot = note.plot ?? (named.length === 1 ? named[0]!.plot : null);
  if (!plot) return;
  await db
    .updateTable('photos')
    .set({ plot, placed_by: note.plot ? 'note' : 'words' })
    .where('id', '=', id)
    .where((eb) => eb.or([eb('placed_by', 'is', null), eb('placed_by', '!=', 'person')]))
    .execute();
}

/** One run at a time for each diary, however often it is asked for. */
const running = new WeakMap<Diary, Promise<void>>();

/** Opens every photo that waits: after new ones came, and at each start for those that a stop left behind. */
export function developWaiting(diary: Diary): Promise<void> {
  const before = running.get(diary) ?? Promise.resolve();
  const run = before.then(() => developAll(diary));
  running.set(diary, run);
  return run;
}

async function developAll(diary: Diary): Promise<void> {
  for (;;) {
    const waiting = await diary.db
      .selectFrom('photos')
      .select('id')
      .where('developed_at', 'is', null)
      .limit(20)
      .execute();
    const unmeasured = await diary.db
      .selectFrom('photos')
      .select('id')
      .where('straight_down', '=', 1)
      .where('cover', 'is', null)
      .where('fault', 'is', null)
      .where('developed_at', 'is not', null)
      .limit(20)
      .execute();
    if (waiting.length + unmeasured.length === 0 || diary.darkroom.isClosed()) return;
    await Promise.all([
      ...waiting.map(({ id }) => develop(diary, id)),
      ...unmeasured.map(({ id }) => measureCover(diary, id)),
    ]);
  }
}

async function develop(diary: Diary, id: string): Promise<void> {
  const path = originalPath(diary.mediaFolder, id);
  const examined = await diary.darkroom.examine(path);
  const fault =
    examined.ingest.decision === 'accept'
      ? (
          await diary.darkroom.develop(path, {
            small: copyPath(diary.mediaFolder, id, 'small'),
            large: copyPath(diary.mediaFolder, id, 'large'),
          })
        ).fault
      : `${refusalWords[examined.ingest.reason]} The original is kept.`;
  // An answer given while the darkroom closes says nothing of the file: it waits for the next start.
  if (diary.darkroom.isClosed()) return;
  const { position, time } = examined;
  await diary.db
    .updateTable('photos')
    .set({
      width: examined.width,
      height: examined.height,
      taken_wall: time.wall,
      taken_offset: time.offset,
      taken_offset_source: time.offset_source,
      taken_utc: time.utc,
      position_status: position.status,
      latitude: position.status === 'valid' ? position.latitude : null,
      longitude: position.status === 'valid' ? position.longitude : null,
      accuracy_m: position.accuracy_m,
      metadata: JSON.stringify({ position, time, ingest: examined.ingest }),
      developed_at: diary.now().toString(),
      fault,
    })
    .where('id', '=', id)
    .execute();
  await placeByWalkOrPosition(diary, id);
}
