/**
 * What a farm, field, plot, crop or crew may hold: one set of checks for the season file and for the forms.
 * Every message says what to write instead.
 */
import { Temporal } from 'temporal-polyfill';
import { z } from 'zod';

const text = (what: string) =>
  z
    .string({ error: `${what} is missing: write a word or two` })
    .trim()
    .min(1, `${what} is empty: write a word or two`);
const number = (what: string, low: number, high: number) =>
  z.coerce
    .number({ error: `${what} is no number` })
    .min(low, `${what} must be at least ${low}`)
    .max(high, `${what} must be at most ${high}`);
const whole = (what: string, low: number, high: number) =>
  number(what, low, high).int(`${what} must be a whole number`);

/** A calendar day that exists, `2031-07-05`. */
export const day = (what: string) =>
  z.preprocess(
    (value) => (value instanceof Date ? value.toISOString().slice(0, 10) : value),
    z
      .string({ error: `${what} is missing: write it as 2031-07-05` })
      .refine(isDay, `${what} is no date: write it as 2031-07-05`),
  );

export function isDay(value: string): boolean {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(value)) return false;
  try {
    Temporal.PlainDate.from(value, { overflow: 'reject' });
    return true;
  } catch {
    return false;
  }
}

const isTimeZone = (value: string): boolean => {
  try {
    Temporal.Now.zonedDateTimeISO(value);
    return true;
  } catch {
    return false;
  }
};

const code = z
  .union([z.string(), z.number()], { error: 'the code is missing: write what stands on the peg, such as B2' })
  .transform((value) => String(value).trim())
  .refine(
    (value) => /^[\p{L}\d][\p{L}\d .\-/]{0,15}$/u.test(value),
    'the code may hold letters, figures, dots, dashes and strokes, 16 at the most',
  );

const latitude = number('latitude', -90, 90);
const longitude = number('longitude', -180, 180);

export const farmEntry = z.strictObject({
  name: text('the name of the farm'),
  timeZone: text('the time zone').refine(
    isTimeZone,
    'unknown time zone: write its IANA name, such as Asia/Manila',
  ),
  latitude: latitude.nullish(),
  longitude: longitude.nullish(),
});

export const seasonEntry = z
  .strictObject({
    name: text('the name of the season'),
    from: day('the first day'),
    to: day('the last day'),
    /** Set only in a season that is over and is looked at as of a day in it. */
    today: day('the day to look from').nullish(),
  })
  .refine((season) => season.from <= season.to, { error: 'the season ends before it begins', path: ['to'] });

export const crewEntry = z.strictObject({
  name: text('the name of the crew'),
  leader: text('the leader').nullish(),
  people: whole('the number of people', 1, 1000).nullish(),
});

export const personEntry = z.strictObject({
  name: text('the name of the person'),
  role: text('the role').nullish(),
});

export const varietyEntry = z.strictObject({
  name: text('the name of the variety'),
  daysToMaturity: whole('days to maturity', 60, 260).nullish(),
});

export const fieldEntry = z.strictObject({ code, name: text('the name of the field') });

export const cropEntry = z
  .strictObject({
    variety: text('the variety').nullish(),
    daysToMaturity: whole('days to maturity', 60, 260).nullish(),
    establishment: z
      .enum(['transplanted', 'wet seeded', 'dry seeded', 'water seeded', 'direct-seeded'], {
        error: 'write transplanted, wet seeded, dry seeded, water seeded or direct-seeded',
      })
      .nullish(),
    sown: day('the sowing date').nullish(),
    planted: day('the planting date').nullish(),
    spacing: z
      .strictObject({
        rowCm: number('row spacing', 5, 100),
        hillCm: number('hill spacing', 2, 100).nullish(),
      })
      .nullish(),
    protocol: z.array(text('the remark')).nullish(),
  })
  .refine((crop) => !crop.sown || !crop.planted || crop.sown <= crop.planted, {
    error: 'planted before it was sown: check both dates',
    path: ['planted'],
  });

const point = z.tuple([longitude, latitude], { error: 'a corner is written as [longitude, latitude]' });

export const plotEntry = z.strictObject({
  code,
  names: z.array(text('the spoken name')).nullish(),
  field: code.nullish(),
  treatment: z.record(z.string(), z.union([z.string(), z.number()]).transform(String)).nullish(),
  replicate: whole('the replicate', 1, 100).nullish(),
  walk: whole('the place in the walk', 1, 10_000).nullish(),
  size: z
    .strictObject({ widthM: number('width', 0.2, 5000), lengthM: number('length', 0.2, 5000) })
    .nullish(),
  /** The near left corner and the direction of the length; the width runs to the right of it. */
  corner: z.strictObject({ latitude, longitude, bearingDeg: number('the bearing', 0, 360) }).nullish(),
  boundary: z.array(point).min(3, 'a boundary needs at least three corners').nullish(),
  crop: cropEntry.nullish(),
  protocol: z.array(text('the remark')).nullish(),
});

export const seasonFile = z.strictObject({
  farm: farmEntry,
  season: seasonEntry.nullish(),
  people: z.array(personEntry).nullish(),
  crews: z.array(crewEntry).nullish(),
  varieties: z.array(varietyEntry).nullish(),
  fields: z.array(fieldEntry).nullish(),
  plots: z.array(plotEntry).min(1, 'name at least one plot'),
});

export type FarmEntry = z.infer<typeof farmEntry>;
export type SeasonEntry = z.infer<typeof seasonEntry>;
export type CrewEntry = z.infer<typeof crewEntry>;
export type PersonEntry = z.infer<typeof personEntry>;
export type VarietyEntry = z.infer<typeof varietyEntry>;
export type FieldEntry = z.infer<typeof fieldEntry>;
export type CropEntry = z.infer<typeof cropEntry>;
export type PlotEntry = z.infer<typeof plotEntry>;
export type SeasonFile = z.infer<typeof seasonFile>;
