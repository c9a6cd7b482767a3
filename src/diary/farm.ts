/** The farm as set up: what a page or a verb needs to know of plots, crops and crews. */
import { Temporal } from 'temporal-polyfill';
import type { CropRow, PlotRow } from '../storage/tables.ts';
import type { Diary } from './diary.ts';

export interface Farm {
  name: string;
  /** IANA name. */
  timeZone: string;
  latitude: number | null;
  longitude: number | null;
  /** The day on which a season that is over is looked at (the sample); null: the real day. */
  asOf: string | null;
}

export interface Crop {
  id: string;
  season: string | null;
  variety: string | null;
  /** Days from sowing to maturity. */
  daysToMaturity: number | null;
  establishment: string | null;
  sownOn: string | null;
  plantedOn: string | null;
  rowCm: number | null;
  hillCm: number | null;
  /** What the protocol wants: `zero nitrogen: meant to be yellow`. */
  protocol: string[];
}

export interface Plot {
  code: string;
  names: string[];
  field: string | null;
  /** Factor -> level. */
  treatment: Record<string, string>;
  replicate: number | null;
  /** Place in the walking order, from 1. */
  walk: number | null;
  widthM: number | null;
  lengthM: number | null;
  /** [longitude, latitude][], not closed. */
  boundary: [number, number][] | null;
  /** The crop that was sown or planted last, or null. */
  crop: Crop | null;
}

export interface Crew {
  id: string;
  name: string;
  leader: string | null;
  people: number | null;
}
export interface Field {
  code: string;
  name: string;
}
export interface Season {
  id: string;
  name: string;
  startsOn: string;
  endsOn: string;
}

export async function readFarm({ db }: Diary): Promise<Farm | null> {
  const row = await db.selectFrom('farm').selectAll().executeTakeFirst();
  return row
    ? {
        name: row.name,
        timeZone: row.time_zone,
        latitude: row.latitude,
        longitude: row.longitude,
        asOf: row.as_of,
      }
    : null;
}

/** Local date and time at the farm, `YYYY-MM-DDTHH:MM`; before a farm is set up, UTC. */
export async function localNow(diary: Diary): Promise<string> {
  const farm = await readFarm(diary);
  const there = diary
    .now()
    .toZonedDateTimeISO(farm?.timeZone ?? 'UTC')
    .toPlainDateTime()
    .toString({ smallestUnit: 'minute' });
  return farm?.asOf ? `${farm.asOf}${there.slice(10)}` : there;
}

/** An instant, UTC, as the farm's own date and time, `YYYY-MM-DDTHH:MM`. */
export async function localMoment(diary: Diary, instant: string): Promise<string> {
  const farm = await readFarm(diary);
  return Temporal.Instant.from(instant)
    .toZonedDateTimeISO(farm?.timeZone ?? 'UTC')
    .toPlainDateTime()
    .toString({ smallestUnit: 'minute' });
}

export const localToday = async (diary: Diary): Promise<string> => (await localNow(diary)).slice(0, 10);

/** All plots in walking order, those without a place last, each with its latest crop. */
export async function readPlots({ db }: Diary): Promise<Plot[]> {
  const rows = await db.selectFrom('plots').selectAll().execute();
  const crops = await db.selectFrom('crops').selectAll().orderBy('planted_on').orderBy('sown_on').execute();
  const latest = new Map(crops.map((crop) => [crop.plot, crop]));
  return rows.map((row) => toPlot(row, latest.get(row.code))).sort(byWalk);
}

export async function readPlot(diary: Diary, code: string): Promise<Plot | null> {
  return (await readPlots(diary)).find((plot) => plot.code === code) ?? null;
}

export async function readCrews({ db }: Diary): Promise<Crew[]> {
  return db.selectFrom('crews').selectAll().orderBy('name').execute();
}

export interface Person {
  name: string;
  role: string | null;
}

export const readPeople = ({ db }: Diary): Promise<Person[]> =>
  db.selectFrom('people').selectAll().orderBy('name').execute();

export async function readVarieties({
  db,
}: Diary): Promise<{ name: string; daysToMaturity: number | null }[]> {
  const rows = await db.selectFrom('varieties').selectAll().orderBy('name').execute();
  return rows.map((row) => ({ name: row.name, daysToMaturity: row.days_to_maturity }));
}

export async function readFields({ db }: Diary): Promise<Field[]> {
  return db.selectFrom('fields').selectAll().orderBy('code').execute();
}

export async function readSeasons({ db }: Diary): Promise<Season[]> {
  const rows = await db.selectFrom('seasons').selectAll().orderBy('starts_on', 'desc').execute();
  return rows.map((row) => ({ id: row.id, name: row.name, startsOn: row.starts_on, endsOn: row.ends_on }));
}

function toPlot(row: PlotRow, crop: CropRow | undefined): Plot {
  return {
    code: row.code,
    names: JSON.parse(row.names),
    field: row.field,
    treatment: JSON.parse(row.treatment),
    replicate: row.replicate,
    walk: row.walk,
    widthM: row.width_m,
    lengthM: row.length_m,
    boundary: row.boundary ? JSON.parse(row.boundary) : null,
    crop: crop ? toCrop(crop) : null,
  };
}

const toCrop = (row: CropRow): Crop => ({
  id: row.id,
  season: row.season,
  variety: row.variety,
  daysToMaturity: row.days_to_maturity,
  establishment: row.establishment,
  sownOn: row.sown_on,
  plantedOn: row.planted_on,
  rowCm: row.row_cm,
  hillCm: row.hill_cm,
  protocol: JSON.parse(row.protocol),
});

const byWalk = (a: Plot, b: Plot): number =>
  (a.walk ?? Number.MAX_SAFE_INTEGER) - (b.walk ?? Number.MAX_SAFE_INTEGER) ||
  a.code.localeCompare(b.code, 'en', { numeric: true });
