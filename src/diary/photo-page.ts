/** All that is known of one photo: when, where, how its plot was settled, its notes, and its cover where it was measured. */
import { open } from 'node:fs/promises';
import type { LikelyPlot } from '../plots/likely-plots.ts';
import { maskPath } from '../storage/media.ts';
import { findPhoto } from '../storage/photo-rows.ts';
import type { PhotoRow } from '../storage/tables.ts';
import type { CoverReading } from './canopy.ts';
import type { Diary } from './diary.ts';
import { likelyPlotsOf } from './place-photos.ts';
import { type PhotoShown, showPhoto } from './shown.ts';
import { takenAt } from './taken-at.ts';

export interface PhotoPage {
  photo: PhotoShown;
  /** False while it waits to be opened. */
  opened: boolean;
  taken: PhotoTaken | null;
  /** Degrees and metres, or null with the reason in `noPosition`. */
  position: { latitude: number; longitude: number; accuracyM: number | null } | null;
  noPosition: string | null;
  /** How its plot was settled, a sentence; null where none is. */
  settled: string | null;
  likely: LikelyPlot[];
  notes: { id: string; observedAt: string; author: string; text: string }[];
  cover: CoverReading | null;
  /** The drawing of what was measured as green, upright pixels; null where there is none. */
  mask: { href: string; width: number; height: number } | null;
  /** Why no cover could be measured, or null. */
  coverFault: string | null;
  bytes: number;
  pixels: { width: number; height: number } | null;
}

export interface PhotoTaken {
  /** Local wall time, `2031-07-14T06:55`, put right by `shiftMin`. */
  at: string;
  fileSays: string;
  shiftMin: number;
  offset: string | null;
  /** Where the offset came from, a sentence. */
  offsetWords: string;
}

export async function photoPage(diary: Diary, id: string): Promise<PhotoPage | null> {
  const row = await findPhoto(diary.db, id);
  if (!row) return null;
  const notes = await notesOf(diary, id);
  const cover = row.cover ? (JSON.parse(row.cover) as CoverReading | { fault: string }) : null;
  return {
    photo: showPhoto(row, notes[0]?.text ?? ''),
    opened: row.developed_at !== null,
    taken: takenOf(row),
    position:
      row.latitude !== null && row.longitude !== null
        ? { latitude: row.latitude, longitude: row.longitude, accuracyM: row.accuracy_m }
        : null,
    noPosition: NO_POSITION[row.position_status] ?? null,
    settled: row.placed_by ? (SETTLED[row.placed_by] ?? null) : null,
    likely: await likelyPlotsOf(diary, row),
    notes,
    cover: cover && 'coverPercent' in cover ? cover : null,
    mask: cover && 'coverPercent' in cover ? await maskOf(diary, id) : null,
    coverFault: cover && 'fault' in cover ? cover.fault : null,
    bytes: row.bytes,
    pixels: row.width && row.height ? { width: row.width, height: row.height } : null,
  };
}

/** Width and height stand in bytes 16 to 23 of a PNG (ISO/IEC 15948, 11.2.2). */
async function maskOf({ mediaFolder }: Diary, id: string): Promise<PhotoPage['mask']> {
  const file = await open(maskPath(mediaFolder, id), 'r').catch(() => null);
  if (!file) return null;
  const head = Buffer.alloc(24);
  const { bytesRead } = await file.read(head, 0, 24, 0);
  await file.close();
  return bytesRead < 24
    ? null
    : { href: `/media/${id}/mask`, width: head.readUInt32BE(16), height: head.readUInt32BE(20) };
}

function takenOf(row: PhotoRow): PhotoTaken | null {
  const at = takenAt(row);
  if (!at || !row.taken_wall) return null;
  return {
    at: at.slice(0, 16),
    fileSays: row.taken_wall.slice(0, 16),
    shiftMin: row.clock_shift_min,
    offset: row.taken_offset,
    offsetWords: offsetWords(row.taken_offset, row.taken_offset_source),
  };
}

function offsetWords(offset: string | null, source: string | null): string {
  if (!offset) return 'Offset not known, taken as the farm’s.';
  if (source === 'inferred from GPS UTC')
    return `Offset ${offset}, worked out from the satellites’ time in the file.`;
  return source?.endsWith('(inline)')
    ? `Offset ${offset}, written with the time in the file.`
    : `Offset ${offset}, written by the phone in the file.`;
}

const NO_POSITION: Record<string, string> = {
  absent: 'The file gives no position.',
  removed: 'The position was taken out of the file before it came here, by the phone or by what sent it.',
  'null-island': 'The file says 0, 0: the phone had no fix.',
  'ambiguous-no-ref':
    'The file gives a position without north or south, east or west: four places would fit, so none is taken.',
  invalid: 'The file gives a position that is none: half of it is missing or out of range.',
  unread: 'The photo waits to be opened; its place is read then.',
};

const SETTLED: Record<string, string> = {
  note: 'Its note was written in this plot.',
  words: 'Its note speaks of this plot and of no other.',
  order: 'The notes just before and just after it are both of this plot.',
  position: 'Its position lies in this plot, and the plot is wider than the position’s error.',
  person: 'A person said so.',
};

const notesOf = async ({ db }: Diary, id: string): Promise<PhotoPage['notes']> => {
  const rows = await db
    .selectFrom('notes')
    .innerJoin('note_photos', 'note_photos.note_id', 'notes.id')
    .select(['notes.id', 'notes.observed_at', 'notes.author', 'notes.text'])
    .where('note_photos.photo_id', '=', id)
    .orderBy('notes.observed_at')
    .execute();
  return rows.map(({ observed_at, ...note }) => ({ ...note, observedAt: observed_at }));
};
