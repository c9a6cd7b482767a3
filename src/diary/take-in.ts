/** Takes a folder in: a season file, notes as text files, photos. Running it again adds nothing twice. */
import { createHash } from 'node:crypto';
import { existsSync } from 'node:fs';
import { copyFile, mkdir, readdir, readFile } from 'node:fs/promises';
import { basename, dirname, extname, join, relative } from 'node:path';
import { z } from 'zod';
import type { Diary } from './diary.ts';
import { isRefusal } from './diary.ts';
import { keepNote } from './keep-note.ts';
import { developWaiting, keepLoosePhoto, type PhotoReceived } from './keep-photos.ts';
import { parseNoteFile } from './note-file.ts';
import { loadSeasonFile } from './season-file.ts';

export interface TakenIn {
  notes: number;
  /** Notes and photos that the diary had already. */
  known: number;
  photos: number;
  problems: { file: string; words: string }[];
}

const PHOTO = /\.(jpe?g|png|webp|avif|tiff?|heic|heif)$/i;
const SEASON = /^season\.ya?ml$/i;

/** `progress` is told after each file. Files that cannot be taken are named with the reason; the rest goes on. */
export async function takeIn(
  diary: Diary,
  folder: string,
  progress: (done: number, of: number, file: string) => void = () => {},
): Promise<TakenIn> {
  const files = await filesBelow(folder);
  const taken: TakenIn = { notes: 0, known: 0, photos: 0, problems: [] };
  const seasonFile = files.find((file) => SEASON.test(basename(file)));
  if (seasonFile) await takeSeason(diary, folder, seasonFile, taken);
  const notes = files.filter((file) => extname(file).toLowerCase() === '.txt').sort();
  const photos = files.filter((file) => PHOTO.test(file)).sort();
  const named = new Set<string>();
  const straightDown = await photosStraightDown(folder, files);
  const steps = notes.length + photos.length;
  let done = 0;
  for (const file of notes) {
    await takeNote(diary, folder, file, photos, named, taken);
    progress(++done, steps, file);
  }
  for (const file of photos) {
    if (!named.has(file)) await takePhoto(diary, folder, file, taken);
    progress(++done, steps, file);
  }
  await markStraightDown(diary, straightDown);
  return taken;
}

async function takeSeason(diary: Diary, folder: string, file: string, taken: TakenIn): Promise<void> {
  const answer = await loadSeasonFile(diary, await readFile(join(folder, file), 'utf8'));
  if ('problems' in answer) {
    for (const { line, words } of answer.problems)
      taken.problems.push({ file, words: `line ${line}: ${words}` });
  }
}

/** `photos.json` may say which photos were taken straight down: `[{"file": "b1.jpg", "straightDown": true}]`. */
async function photosStraightDown(folder: string, files: string[]): Promise<string[]> {
  const list = files.find((file) => basename(file) === 'photos.json');
  if (!list) return [];
  const said = z
    .array(z.object({ file: z.string(), straightDown: z.boolean() }))
    .safeParse(JSON.parse(await readFile(join(folder, list), 'utf8')));
  return said.success
    ? said.data.filter((photo) => photo.straightDown).map((photo) => basename(photo.file))
    : [];
}

/** What a person said of a photo stays. */
async function markStraightDown(diary: Diary, names: string[]): Promise<void> {
  for (const name of names) {
    await diary.db
      .updateTable('photos')
      .set({ straight_down: 1 })
      .where('name', '=', name)
      .where('cover', 'is', null)
      .execute();
  }
  if (names.length > 0) void developWaiting(diary);
}

async function takeNote(
  diary: Diary,
  folder: string,
  file: string,
  photos: string[],
  named: Set<string>,
  taken: TakenIn,
): Promise<void> {
  const note = parseNoteFile(await readFile(join(folder, file), 'utf8'));
  if ('problem' in note) {
    taken.problems.push({ file, words: note.problem });
    return;
  }
  const received: PhotoReceived[] = [];
  for (const name of note.photos) {
    const path = photos.find((photo) => basename(photo) === name);
    if (!path)
      taken.problems.push({
        file,
        words: `the photo ${name} is not in the folder; the note is kept without it.`,
      });
    else {
      named.add(path);
      received.push({ path: await incomingCopy(diary, join(folder, path)), name });
    }
  }
  const { observedAt, author, plot, channel, text } = note;
  const answer = await keepNote(diary, {
    id: idOf(file, observedAt),
    text,
    observedAt,
    author,
    plot,
    channel,
    photos: received,
  });
  if (isRefusal(answer)) {
    const words =
      answer.status === 409
        ? 'this file was taken in before with other words; the earlier words stand. Rename the file to keep both.'
        : answer.refused;
    taken.problems.push({ file, words });
    return;
  }
  if (answer.twice) taken.known++;
  else taken.notes++;
  countPhotos(taken, file, answer.photos);
}

async function takePhoto(diary: Diary, folder: string, file: string, taken: TakenIn): Promise<void> {
  const path = await incomingCopy(diary, join(folder, file));
  countPhotos(taken, file, [await keepLoosePhoto(diary, { path, name: basename(file) })]);
}

function countPhotos(
  taken: TakenIn,
  file: string,
  photos: { name: string; refused?: string; known?: boolean }[],
): void {
  for (const { name, refused, known } of photos) {
    if (refused)
      taken.problems.push({ file: file.endsWith(name) ? file : `${file}, ${name}`, words: refused });
    else if (known) taken.known++;
    else taken.photos++;
  }
}

/** Same file name, same moment: the same note, however often the folder is taken in. */
const idOf = (file: string, observedAt: string): string =>
  `file-${createHash('sha256')
    .update(`${basename(file)}\n${observedAt}`)
    .digest('hex')
    .slice(0, 24)}`;

async function incomingCopy({ mediaFolder }: Diary, path: string): Promise<string> {
  const incoming = join(mediaFolder, 'incoming');
  if (!existsSync(incoming)) await mkdir(incoming, { recursive: true });
  const copy = join(incoming, `${process.pid}-${Math.random().toString(36).slice(2)}`);
  await copyFile(path, copy);
  return copy;
}

/** Paths relative to the folder, hidden files and folders left out. */
async function filesBelow(folder: string): Promise<string[]> {
  const entries = await readdir(folder, { withFileTypes: true, recursive: true });
  return entries
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath ?? dirname(entry.name), entry.name)))
    .filter((path) => !path.split(/[\\/]/).some((part) => part.startsWith('.') || part === 'node_modules'));
}
