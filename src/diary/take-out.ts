/**
 * Takes everything out in plain open formats: tables as CSV, plots and photos as GeoJSON, the season file, the original
 * photos, and one JSON from which a diary can be restored.
 */
import { existsSync } from 'node:fs';
import { copyFile, mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import Papa from 'papaparse';
import { LIST_NAMES } from '../reading/record.ts';
import { originalPath } from '../storage/media.ts';
import type { Tables } from '../storage/tables.ts';
import type { Diary } from './diary.ts';
import { readPlots } from './farm.ts';
import { followUpsOfToday } from './file-follow-ups.ts';
import { seasonFileText } from './season-file.ts';
import { factOf } from './shown.ts';

/** Tables that hold what people gave; everything else is worked out from them. Parents before children. */
export const SOURCE_TABLES = [
  'farm',
  'people',
  'varieties',
  'seasons',
  'crews',
  'fields',
  'plots',
  'crops',
  'notes',
  'photos',
  'note_photos',
  'corrections',
  'farm_words',
  'steps',
  'look_after',
] as const satisfies readonly (keyof Tables)[];

export interface WholeDiary {
  format: 'bundwalk diary';
  version: 1;
  takenOutAt: string;
  tables: Record<(typeof SOURCE_TABLES)[number], Record<string, unknown>[]>;
}

/** Everything but the media, as one value; restoring it makes the same diary. */
export async function wholeDiary(diary: Diary): Promise<WholeDiary> {
  const tables = {} as WholeDiary['tables'];
  for (const table of SOURCE_TABLES) tables[table] = await diary.db.selectFrom(table).selectAll().execute();
  return { format: 'bundwalk diary', version: 1, takenOutAt: diary.now().toString(), tables };
}

/** Each table that a person may want in a spreadsheet: name -> CSV text. */
export async function csvTables(diary: Diary): Promise<Map<string, string>> {
  await followUpsOfToday(diary);
  const { db } = diary;
  const tables = new Map<string, string>();
  const notes = await db.selectFrom('notes').selectAll().orderBy('observed_at').execute();
  tables.set('notes', csv(notes));
  tables.set(
    'plots',
    csv(
      await db
        .selectFrom('plots')
        .leftJoin('crops', 'crops.plot', 'plots.code')
        .selectAll('plots')
        .select(['variety', 'days_to_maturity', 'establishment', 'sown_on', 'planted_on', 'protocol'])
        .execute(),
    ),
  );
  tables.set(
    'photos',
    csv(
      await db
        .selectFrom('photos')
        .leftJoin('note_photos', 'note_photos.photo_id', 'photos.id')
        .select([
          'photos.id',
          'name',
          'kind',
          'bytes',
          'note_id',
          'plot',
          'placed_by',
          'taken_wall',
          'clock_shift_min',
          'taken_offset',
          'taken_utc',
          'latitude',
          'longitude',
          'accuracy_m',
          'cover_percent',
        ])
        .execute(),
    ),
  );
  const facts = await db
    .selectFrom('facts')
    .selectAll()
    .orderBy('observed_at')
    .orderBy('note_id')
    .orderBy('place')
    .execute();
  for (const list of LIST_NAMES) {
    const rows = facts.filter((row) => row.list === list);
    tables.set(
      list,
      csv(
        rows.map((row) => ({
          fact_id: row.id,
          note_id: row.note_id,
          observed_at: row.observed_at,
          origin: row.origin,
          words: row.words,
          ...flat(factOf(row).fact),
        })),
      ),
    );
  }
  const followUps = await db.selectFrom('follow_ups').selectAll().orderBy('due_to').execute();
  tables.set(
    'follow-ups',
    csv(followUps.map(({ item, ...row }) => ({ ...row, words: JSON.parse(item).steps?.[0]?.words ?? '' }))),
  );
  tables.set('corrections', csv(await db.selectFrom('corrections').selectAll().orderBy('at').execute()));
  return tables;
}

/** A formula in a cell would run in a spreadsheet; a leading quote keeps it text. */
const csv = (rows: object[]): string => Papa.unparse(rows, { escapeFormulae: true, newline: '\n' });

/** `when.from`, `dose.value`: nested parts become columns of their own. */
function flat(value: object, prefix = ''): Record<string, unknown> {
  return Object.fromEntries(
    Object.entries(value).flatMap(([key, inner]): [string, unknown][] =>
      inner !== null && typeof inner === 'object'
        ? Object.entries(flat(inner, `${prefix}${key}_`))
        : [[`${prefix}${key}`, inner]],
    ),
  );
}

/** Plots as polygons and photos with a position as points (RFC 7946). */
export async function geoJson(diary: Diary): Promise<object> {
  const plots = (await readPlots(diary)).filter((plot) => plot.boundary);
  const photos = await diary.db.selectFrom('photos').selectAll().where('latitude', 'is not', null).execute();
  return {
    type: 'FeatureCollection',
    features: [
      ...plots.map(({ boundary, crop, ...plot }) => ({
        type: 'Feature',
        geometry: { type: 'Polygon', coordinates: [counterclockwise([...boundary!, boundary![0]!])] },
        properties: { what: 'plot', ...plot, variety: crop?.variety ?? null },
      })),
      ...photos.map((photo) => ({
        type: 'Feature',
        geometry: { type: 'Point', coordinates: [photo.longitude, photo.latitude] },
        properties: {
          what: 'photo',
          id: photo.id,
          name: photo.name,
          plot: photo.plot,
          takenAt: photo.taken_wall,
          accuracyM: photo.accuracy_m,
        },
      })),
    ],
  };
}

/** RFC 7946: the outer ring runs counterclockwise. */
function counterclockwise(ring: [number, number][]): [number, number][] {
  const twiceArea = ring.slice(1).reduce((sum, [x, y], at) => sum + ring[at]![0] * y - x * ring[at]![1], 0);
  return twiceArea < 0 ? [...ring].reverse() : ring;
}

export interface TakenOut {
  notes: number;
  photos: number;
  files: number;
}

/** Writes all of it into a folder, which is made where it is missing; files of the same name are replaced. */
export async function takeOut(
  diary: Diary,
  folder: string,
  progress: (done: number, of: number) => void = () => {},
): Promise<TakenOut> {
  await mkdir(join(folder, 'photos'), { recursive: true });
  const whole = await wholeDiary(diary);
  const texts = new Map<string, string>([
    ['diary.json', JSON.stringify(whole, null, 1)],
    ['plots.geojson', JSON.stringify(await geoJson(diary), null, 1)],
    ['season.yaml', await seasonFileText(diary)],
    ...[...(await csvTables(diary))].map(([name, text]): [string, string] => [`${name}.csv`, text]),
  ]);
  for (const [name, text] of texts) await writeFile(join(folder, name), text);
  const photos = whole.tables.photos as { id: string; kind: string }[];
  let done = 0;
  for (const { id, kind } of photos) {
    const from = originalPath(diary.mediaFolder, id);
    const to = join(folder, 'photos', `${id}.${kind}`);
    if (existsSync(from) && !existsSync(to)) await copyFile(from, to);
    progress(++done, photos.length);
  }
  return { notes: whole.tables.notes.length, photos: photos.length, files: texts.size + photos.length };
}
