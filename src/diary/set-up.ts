/**
 * Setting up the farm, one entry at a time: the pages' forms and the season file end here.
 * Each takes what a person wrote, checks it, and answers with the saved entry or with words beside a field.
 */
import type { z } from 'zod';
import { plotFromCorner } from '../plots/plot-from-corner.ts';
import type { Db } from '../storage/open-store.ts';
import {
  saveCrewRow,
  saveCropRow,
  saveFarmRow,
  saveFieldRow,
  savePersonRow,
  savePlotRow,
  saveSeasonRow,
  saveVarietyRow,
} from '../storage/season-rows.ts';
import type { Diary, Refusal } from './diary.ts';
import {
  type CrewEntry,
  type CropEntry,
  crewEntry,
  type FarmEntry,
  type FieldEntry,
  farmEntry,
  fieldEntry,
  isDay,
  type PersonEntry,
  type PlotEntry,
  plotEntry,
  type SeasonEntry,
  seasonEntry,
  type VarietyEntry,
} from './season-entry.ts';

/** The day on which a season that is over is looked at stays as it is; `useRealDate` clears it. */
export const saveFarm = (diary: Diary, written: unknown) =>
  checked(farmEntry, written, async (farm) => {
    const known = await diary.db.selectFrom('farm').select('as_of').executeTakeFirst();
    await storeFarm(diary.db, farm, known?.as_of ?? null, stamp(diary));
  });

/** Days count from the real day again; answers with the day that stood there, or null. */
export async function useRealDate(diary: Diary): Promise<{ was: string | null }> {
  const known = await diary.db.selectFrom('farm').select('as_of').executeTakeFirst();
  await diary.db
    .updateTable('farm')
    .set({ as_of: null, updated_at: stamp(diary) })
    .execute();
  return { was: known?.as_of ?? null };
}

/** Looks at the season as of a day; the way back from `useRealDate`. */
export async function lookAsOf(diary: Diary, day: string): Promise<{ asOf: string } | Refusal> {
  if (!isDay(day)) return { refused: 'Write the day as 2031-07-14.', field: 'asOf' };
  await diary.db
    .updateTable('farm')
    .set({ as_of: day, updated_at: stamp(diary) })
    .execute();
  return { asOf: day };
}

export const saveSeason = (diary: Diary, written: unknown) =>
  checked(seasonEntry, written, (season) => storeSeason(diary.db, season));
export const saveCrew = (diary: Diary, written: unknown) =>
  checked(crewEntry, written, (crew) => storeCrew(diary.db, crew));
export const saveField = (diary: Diary, written: unknown) =>
  checked(fieldEntry, written, (field) => storeField(diary.db, field));

/** A plot with its crop; the field that it names is made when it is new. */
export const savePlot = (diary: Diary, written: unknown) =>
  checked(plotEntry, written, async (plot) => {
    if (plot.field) await storeField(diary.db, { code: plot.field, name: plot.field }, 'keep');
    const season = await diary.db
      .selectFrom('seasons')
      .selectAll()
      .orderBy('starts_on', 'desc')
      .executeTakeFirst();
    await storePlot(diary.db, plot, season?.id ?? null, stamp(diary));
  });

const stamp = (diary: Diary): string => diary.now().toString();

async function checked<T>(
  shape: z.ZodType<T>,
  written: unknown,
  store: (entry: T) => Promise<unknown>,
): Promise<T | Refusal> {
  const answer = shape.safeParse(written);
  if (!answer.success) {
    const issue = answer.error.issues[0]!;
    return { refused: sentence(issue.message), field: issue.path.join('.') };
  }
  await store(answer.data);
  return answer.data;
}

const sentence = (words: string): string => `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;

/** `asOf`: the day on which a season that is over is looked at, or null for the real day. */
export const storeFarm = (db: Db, farm: FarmEntry, asOf: string | null, at: string) =>
  saveFarmRow(db, {
    id: 'farm',
    name: farm.name,
    time_zone: farm.timeZone,
    latitude: farm.latitude ?? null,
    longitude: farm.longitude ?? null,
    as_of: asOf,
    updated_at: at,
  });

export const storeSeason = (db: Db, season: SeasonEntry) =>
  saveSeasonRow(db, { id: slug(season.name), name: season.name, starts_on: season.from, ends_on: season.to });

export const storeCrew = (db: Db, crew: CrewEntry) =>
  saveCrewRow(db, {
    id: slug(crew.name),
    name: crew.name,
    leader: crew.leader ?? null,
    people: crew.people ?? null,
  });

export const storePerson = (db: Db, person: PersonEntry) =>
  savePersonRow(db, { name: person.name, role: person.role ?? null });

export const storeVariety = (db: Db, variety: VarietyEntry) =>
  saveVarietyRow(db, { name: variety.name, days_to_maturity: variety.daysToMaturity ?? null });

export async function storeField(
  db: Db,
  field: FieldEntry,
  where: 'overwrite' | 'keep' = 'overwrite',
): Promise<void> {
  const known = await db
    .selectFrom('fields')
    .select('code')
    .where('code', '=', field.code)
    .executeTakeFirst();
  if (!known || where === 'overwrite') await saveFieldRow(db, field);
}

/** Stores the plot and, where it names one, its crop: one crop a plot and season. */
export async function storePlot(db: Db, plot: PlotEntry, season: string | null, at: string): Promise<void> {
  await savePlotRow(db, {
    code: plot.code,
    names: JSON.stringify(plot.names ?? []),
    field: plot.field ?? null,
    treatment: JSON.stringify(plot.treatment ?? {}),
    replicate: plot.replicate ?? null,
    walk: plot.walk ?? null,
    width_m: plot.size?.widthM ?? null,
    length_m: plot.size?.lengthM ?? null,
    boundary: boundaryOf(plot),
    updated_at: at,
  });
  if (plot.crop || plot.protocol?.length) await storeCrop(db, plot, plot.crop ?? {}, season, at);
}

/** As drawn; else, from one corner, the bearing and the size. */
function boundaryOf({ boundary, corner, size }: PlotEntry): string | null {
  if (boundary) return JSON.stringify(boundary);
  return corner && size ? JSON.stringify(plotFromCorner(corner, size)) : null;
}

const storeCrop = (db: Db, plot: PlotEntry, crop: CropEntry, season: string | null, at: string) =>
  saveCropRow(db, {
    id: `${plot.code}/${season ?? 'season'}`,
    plot: plot.code,
    season,
    variety: crop.variety ?? null,
    days_to_maturity: crop.daysToMaturity ?? null,
    establishment: crop.establishment ?? null,
    sown_on: crop.sown ?? null,
    planted_on: crop.planted ?? null,
    row_cm: crop.spacing?.rowCm ?? null,
    hill_cm: crop.spacing?.hillCm ?? null,
    protocol: JSON.stringify([...(crop.protocol ?? []), ...(plot.protocol ?? [])]),
    updated_at: at,
  });

const slug = (name: string): string =>
  name
    .toLowerCase()
    .replace(/[^\p{L}\d]+/gu, '-')
    .replace(/^-|-$/g, '');
