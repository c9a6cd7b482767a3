import type { NumberFound } from '../numbers/find-numbers.ts';
import type { Quantity } from '../record.ts';
import type { Shape } from './shapes.ts';
import type { Surroundings } from './surroundings.ts';

/** A figure read as one quantity; `value` is in the vocabulary's unit. */
export interface Read {
  quantity: Quantity;
  value: number;
  rule: string;
}

export type ReadFigure = (around: Surroundings, number: NumberFound, shape: Shape) => Read[];

export const read = (quantity: Quantity, value: number, rule: string): Read[] => [{ quantity, value, rule }];

/** What each quantity can be at all; a figure outside is about something else. Common practice, kept wide. */
export const PLAUSIBLE: Partial<Record<Quantity, readonly [least: number, most: number]>> = {
  row_spacing: [5, 100],
  hill_spacing: [5, 100],
  gap_width: [3, 3000],
  plant_height: [2, 220],
  hills_per_m2: [2, 200],
  tillers_per_hill: [0.5, 90],
  tillers_per_m2: [10, 2000],
  panicles_per_m2: [10, 1500],
  weed_height: [1, 300],
  water_depth: [0, 250],
  water_table_depth: [0, 150],
  leaf_colour: [1, 6],
  spad: [8, 65],
  grain_moisture_pct: [8, 45],
  grain_yield: [0.2, 20],
  rainfall: [0, 800],
  air_temperature: [-15, 55],
  insects_per_hill: [0, 2000],
};

export function isPlausible({ quantity, value }: Read): boolean {
  if (quantity.endsWith('_pct') && (value < 0 || value > 100)) return false;
  const [least, most] = PLAUSIBLE[quantity] ?? [0, 1e6];
  return value >= least && value <= most;
}
