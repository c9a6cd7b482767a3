import { readFileSync } from 'node:fs';
import { parse } from 'yaml';

/** A plot as season.yaml has it. Dates are `YYYY-MM-DD`; corners are [longitude, latitude]. */
export interface SamplePlot {
  code: string;
  names?: string[];
  field: string;
  treatment?: Record<string, string>;
  replicate?: number;
  walk: number;
  size: { widthM: number; lengthM: number };
  corner: { latitude: number; longitude: number; bearingDeg: number };
  boundary: [number, number][];
  crop: {
    variety: string;
    daysToMaturity: number;
    establishment: string;
    sown: string;
    planted?: string;
    spacing: { rowCm: number; hillCm?: number };
  };
  protocol?: string[];
}

export interface SampleSeason {
  farm: { name: string; timeZone: string; latitude: number; longitude: number };
  season: { name: string; from: string; to: string; today: string };
  people: { name: string; role: string }[];
  crews: { name: string; leader: string; people: number }[];
  varieties: { name: string; daysToMaturity: number }[];
  fields: { code: string; name: string }[];
  plots: SamplePlot[];
}

export const readSeason = (): SampleSeason =>
  parse(readFileSync(new URL('./season.yaml', import.meta.url), 'utf8')) as SampleSeason;
