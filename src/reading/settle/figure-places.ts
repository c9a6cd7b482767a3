/** The place that a figure holds for: that of the problem which it sizes, else one that stands nearer to it than to any problem. */
import type { Passage } from '../engine/passage.ts';
import { wallBetween } from '../engine/passage.ts';
import { within } from '../engine/within.ts';
import type { MeasurementFound } from '../measurements/find-measurements.ts';
import type { FindingKind, Quantity } from '../record.ts';
import { samePlots, wordsBetween } from './draft.ts';
import type { Settled } from './entries.ts';
import { type FindingDraft, placeOf } from './findings.ts';

/** Which problems a quantity sizes; the others are states of the crop, the field or the weather. */
const SIZES: Partial<Record<Quantity, readonly FindingKind[]>> = {
  gap_width: ['gap'],
  missing_hills_pct: ['gap', 'poor_anchorage'],
  rodent_hills_pct: ['rodents'],
  rodent_tillers_pct: ['rodents'],
  burrows: ['rodents'],
  weed_density: ['weeds'],
  weed_cover_pct: ['weeds'],
  weed_height: ['weeds'],
  lodged_area_pct: ['lodging'],
  affected_area_pct: [
    'disease',
    'insects',
    'nutrient',
    'spray_injury',
    'weather_damage',
    'flooded',
    'dry',
    'lodging',
  ],
  affected_area: [
    'disease',
    'insects',
    'nutrient',
    'spray_injury',
    'weather_damage',
    'flooded',
    'dry',
    'lodging',
  ],
  affected_hills_pct: ['disease', 'insects', 'nutrient', 'off_types'],
  insects_per_hill: ['insects'],
  dead_hearts_pct: ['insects'],
  white_heads_pct: ['insects'],
  snails_per_m2: ['snails'],
  water_depth: ['flooded'],
};
const REACH = 24;

export function whereOfFigure(
  passage: Passage,
  figures: readonly MeasurementFound[],
  index: number,
  settled: Settled,
): string | undefined {
  const figure = figures[index]!;
  const near = within(settled.findings, figure.first - 60, figure.last + REACH);
  const sized = near.filter((finding) => sizes(passage, figure, finding));
  const others = near.filter((finding) => !sized.includes(finding));
  const row = figures.slice(Math.max(0, index - 4), index + 5);
  const around = [...row, ...others].sort((a, b) => a.first - b.first);
  const place = placeOf(passage, around, around.indexOf(figure), settled.places);
  const own = place ? wordsBetween(passage, place.first, place.last) : undefined;
  if (!own)
    return sized.find(
      ({ rest, first }) =>
        rest.where &&
        wallBetween(passage, Math.min(first, figure.first), Math.max(first, figure.first)) < 3 &&
        !isShared(figures, index),
    )?.rest.where;
  for (const finding of sized)
    if (!finding.rest.where && finding.rest.status === 'present') finding.rest.where = own;
  return own;
}

/** `8 a hill there, 2 in the middle`: the problem's place is that of one of them only. */
const isShared = (figures: readonly MeasurementFound[], index: number): boolean =>
  figures.some(
    (other, at) => at !== index && Math.abs(at - index) < 2 && other.quantity === figures[index]!.quantity,
  );

function sizes(passage: Passage, figure: MeasurementFound, { rest, first, last }: FindingDraft): boolean {
  if (!SIZES[figure.quantity]?.includes(rest.kind) || rest.status === 'absent') return false;
  const sentences = Math.abs(passage.wallsTo.sentence[first]! - passage.wallsTo.sentence[figure.first]!);
  return sentences <= 1 && figure.first - last < REACH && samePlots(passage, first, figure.first);
}
