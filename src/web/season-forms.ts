/** The forms of the season: what each asks, and how flat answers become the entries that the set-up verbs check. */
import type { Crop, Plot } from '../diary/farm.ts';
import type { Form } from './form.ts';

export const ENTRIES = ['farm', 'season', 'crews', 'fields', 'plots'] as const;
export type EntryName = (typeof ENTRIES)[number];

export interface Asked {
  /** Path inside the entry: `crop.sown`. */
  name: string;
  label: string;
  hint?: string;
  as?: 'words' | 'figure' | 'day' | 'lines' | 'choice';
  choices?: string[];
}

const FARM: Asked[] = [
  { name: 'name', label: 'Name of the farm' },
  { name: 'timeZone', label: 'Time zone', hint: 'Such as Asia/Manila. Days and times of notes count in it.' },
  { name: 'latitude', label: 'Latitude', hint: 'In degrees, north positive.', as: 'figure' },
  { name: 'longitude', label: 'Longitude', hint: 'In degrees, east positive.', as: 'figure' },
];
const SEASON: Asked[] = [
  { name: 'name', label: 'Name of the season' },
  { name: 'from', label: 'First day', as: 'day' },
  { name: 'to', label: 'Last day', as: 'day' },
];
const CREWS: Asked[] = [
  { name: 'name', label: 'Name of the crew' },
  { name: 'leader', label: 'Leader' },
  { name: 'people', label: 'People', as: 'figure' },
];
const FIELDS: Asked[] = [
  { name: 'code', label: 'Code of the field' },
  { name: 'name', label: 'Name of the field' },
];
const PLOT: Asked[] = [
  { name: 'code', label: 'Code', hint: 'What stands on the peg.' },
  { name: 'field', label: 'Field', hint: 'Its code.' },
  { name: 'names', label: 'Spoken names', hint: 'What people call it, one a line.', as: 'lines' },
  { name: 'treatment', label: 'Treatment', hint: 'One factor a line, such as nitrogen: 90N', as: 'lines' },
  { name: 'replicate', label: 'Replicate', as: 'figure' },
  { name: 'walk', label: 'Place in the walk', hint: 'From 1.', as: 'figure' },
  { name: 'size.widthM', label: 'Width, m', as: 'figure' },
  { name: 'size.lengthM', label: 'Length, m', as: 'figure' },
  { name: 'boundary', label: 'Boundary', hint: 'One corner a line: latitude, longitude', as: 'lines' },
];
const CROP: Asked[] = [
  { name: 'crop.variety', label: 'Variety' },
  { name: 'crop.daysToMaturity', label: 'Days from sowing to maturity', as: 'figure' },
  {
    name: 'crop.establishment',
    label: 'How it was established',
    as: 'choice',
    choices: ['transplanted', 'wet seeded', 'dry seeded'],
  },
  { name: 'crop.sown', label: 'Sown on', as: 'day' },
  { name: 'crop.planted', label: 'Planted on', as: 'day' },
  { name: 'crop.spacing.rowCm', label: 'Row spacing, cm', as: 'figure' },
  { name: 'crop.spacing.hillCm', label: 'Hill spacing, cm', as: 'figure' },
  {
    name: 'protocol',
    label: 'Protocol',
    hint: 'What the plot is meant to be, one remark a line.',
    as: 'lines',
  },
];

export const ASKED: Record<EntryName, Asked[]> = {
  farm: FARM,
  season: SEASON,
  crews: CREWS,
  fields: FIELDS,
  plots: PLOT,
};
export const ASKED_OF_CROP = CROP;

/** The entry as the season file would hold it; empty answers are left out, so that what is compulsory is asked for. */
export function readSeasonForm(entry: EntryName, form: Form): Record<string, unknown> {
  const asked = entry === 'plots' ? [...PLOT, ...CROP] : ASKED[entry];
  const written: Record<string, unknown> = {};
  for (const { name, as } of asked) {
    const value = (form[name] ?? '').trim();
    if (value === '') continue;
    put(written, name.split('.'), as === 'lines' ? linesOf(name, value) : value);
  }
  return written;
}

function put(into: Record<string, unknown>, [first, ...rest]: string[], value: unknown): void {
  if (rest.length === 0) into[first!] = value;
  else {
    into[first!] ??= {};
    put(into[first!] as Record<string, unknown>, rest, value);
  }
}

function linesOf(name: string, value: string): unknown {
  const lines = value
    .split(/\r?\n/)
    .map((line) => line.trim())
    .filter(Boolean);
  if (name === 'treatment') {
    return Object.fromEntries(
      lines.map((line) => {
        const [factor = '', ...level] = line.split(':');
        return level.length > 0 ? [factor.trim(), level.join(':').trim()] : ['treatment', line];
      }),
    );
  }
  if (name === 'boundary') {
    return lines.map((line) => {
      const [latitude, longitude] = line.split(/[,;\s]+/).map(Number);
      return [longitude, latitude];
    });
  }
  return lines;
}

/** The same field of the form, whatever inside it was refused: `names.2` is `names`. */
export function fieldOf(entry: EntryName, path: string | undefined): string | undefined {
  const asked = entry === 'plots' ? [...PLOT, ...CROP] : ASKED[entry];
  if (path === undefined) return undefined;
  return asked.find(({ name }) => path === name || path.startsWith(`${name}.`) || name.startsWith(`${path}.`))
    ?.name;
}

export function formOfPlot(plot: Plot): Form {
  const { crop } = plot;
  return filled({
    code: plot.code,
    field: plot.field,
    names: plot.names.join('\n'),
    treatment: Object.entries(plot.treatment)
      .map(([factor, level]) => `${factor}: ${level}`)
      .join('\n'),
    replicate: plot.replicate,
    walk: plot.walk,
    'size.widthM': plot.widthM,
    'size.lengthM': plot.lengthM,
    boundary: plot.boundary?.map(([longitude, latitude]) => `${latitude}, ${longitude}`).join('\n'),
    ...(crop && formOfCrop(crop)),
  });
}

const formOfCrop = (crop: Crop) => ({
  'crop.variety': crop.variety,
  'crop.daysToMaturity': crop.daysToMaturity,
  'crop.establishment': crop.establishment,
  'crop.sown': crop.sownOn,
  'crop.planted': crop.plantedOn,
  'crop.spacing.rowCm': crop.rowCm,
  'crop.spacing.hillCm': crop.hillCm,
  protocol: crop.protocol.join('\n'),
});

export const filled = (values: Record<string, unknown>): Form =>
  Object.fromEntries(
    Object.entries(values)
      .filter(([, value]) => value !== null && value !== undefined)
      .map(([name, value]) => [name, String(value)]),
  );
