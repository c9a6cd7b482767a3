/** Outlines from a file or a grid, held against the plots that are set up: a preview first, then kept, with a way back. */
import type { NamedBoundary } from '../plots/boundaries-from-geojson.ts';
import { distanceM } from '../plots/distance.ts';
import { outlineInMetres } from '../plots/outline-in-metres.ts';
import { plotAreaM2 } from '../plots/plot-area.ts';
import { makeChange } from './changes.ts';
import type { Diary, Refusal } from './diary.ts';
import { type Plot, readFarm, readPlots } from './farm.ts';
import { type FieldPlan, fieldPlan } from './field-plan.ts';

export interface BoundaryRow {
  code: string;
  boundary: [number, number][];
  /** On the ellipsoid, from the outline. */
  areaM2: number;
  /** Of the outline that stands now, or null where there is none. */
  areaNowM2: number | null;
  /** From width and length, or null. */
  sizeM2: number | null;
  what: 'new' | 'changed' | 'same';
}

export interface BoundaryPreview {
  rows: BoundaryRow[];
  /** Names that no plot has. */
  unmatched: string[];
  /** Plots that were named more than once: none of their outlines is taken. */
  twice: string[];
  /** Plots that are not in the file; they stay as they are. */
  untouched: string[];
  /** The plan as it would lie. */
  plan: FieldPlan;
  /** How far the first outline lies from the farm's own position, where that is further than a farm reaches; else null. */
  farKm: number | null;
}

/** Common practice: plots lie nearer to the farm than this, or degrees were mixed up. */
const FARTHEST_KM = 50;

/** Codes and spoken names are matched whatever their case, spaces and dashes. Nothing is set. */
export async function previewBoundaries(diary: Diary, found: NamedBoundary[]): Promise<BoundaryPreview> {
  const plots = await readPlots(diary);
  const named = found.map(({ name, boundary }) => ({ name, boundary, plot: plotCalled(plots, name) }));
  const codes = named.flatMap(({ plot }) => plot?.code ?? []);
  const twice = [...new Set(codes.filter((code, at) => codes.indexOf(code) !== at))];
  const rows = named.flatMap(({ plot, boundary }) =>
    plot && !twice.includes(plot.code) ? [rowOf(plot, boundary)] : [],
  );
  const taken = new Set(rows.map(({ code }) => code));
  return {
    rows,
    unmatched: named.filter(({ plot }) => !plot).map(({ name }) => name),
    twice,
    untouched: plots.filter(({ code }) => !taken.has(code)).map(({ code }) => code),
    plan: await planWith(diary, rows),
    farKm: await farFrom(diary, rows[0]),
  };
}

const plain = (name: string): string =>
  name
    .toLowerCase()
    .replace(/^(the )?plot\b/, '')
    .replace(/[\s_-]+/g, '');
const plotCalled = (plots: Plot[], name: string): Plot | undefined =>
  plots.find(({ code }) => plain(code) === plain(name)) ??
  plots.find(({ names }) => names.some((one) => plain(one) === plain(name)));

function rowOf({ code, boundary: now, widthM, lengthM }: Plot, boundary: [number, number][]): BoundaryRow {
  const areaOf = (shape: [number, number][] | null) =>
    plotAreaM2({ boundary: shape, widthM: null, lengthM: null });
  const same = JSON.stringify(now) === JSON.stringify(boundary);
  return {
    code,
    boundary,
    areaM2: areaOf(boundary) ?? 0,
    areaNowM2: areaOf(now),
    sizeM2: plotAreaM2({ boundary: null, widthM, lengthM }),
    what: same ? 'same' : now ? 'changed' : 'new',
  };
}

async function farFrom(diary: Diary, row: BoundaryRow | undefined): Promise<number | null> {
  const farm = await readFarm(diary);
  if (!row || !farm || farm.latitude === null || farm.longitude === null) return null;
  const [longitude, latitude] = row.boundary[0]!;
  const km =
    distanceM({ latitude, longitude }, { latitude: farm.latitude, longitude: farm.longitude }) / 1000;
  return km > FARTHEST_KM ? Math.round(km) : null;
}

async function planWith(diary: Diary, rows: BoundaryRow[]): Promise<FieldPlan> {
  const plan = await fieldPlan(diary);
  const given = new Map(rows.map(({ code, boundary }) => [code, boundary]));
  const outline = outlineInMetres(
    plan.plots.map(({ plot: { code, boundary, widthM, lengthM } }) => ({
      code,
      boundary: given.get(code) ?? boundary,
      widthM,
      lengthM,
    })),
  );
  return {
    plots: plan.plots.map((one) => ({ ...one, shape: outline.shapes.get(one.plot.code) ?? [] })),
    widthM: outline.widthM,
    heightM: outline.heightM,
    true: outline.known,
    points: [],
  };
}

/** Keeps the outlines of a preview; width and length stay as they were written. */
export async function keepBoundaries(
  diary: Diary,
  found: NamedBoundary[],
  by: string,
): Promise<{ change: string; plots: number } | Refusal> {
  const { rows } = await previewBoundaries(diary, found);
  const wanted = rows.filter(({ what }) => what !== 'same');
  if (wanted.length === 0)
    return { refused: 'No outline would change: every one stands already, or no plot has its name.' };
  const plots = await readPlots(diary);
  const text = (boundary: [number, number][] | null) => (boundary ? JSON.stringify(boundary) : null);
  const change = await makeChange(diary, {
    by,
    words: `The outlines of ${wanted.length === 1 ? 'one plot' : `${wanted.length} plots`} were set.`,
    was: {
      plots: wanted.map(({ code }) => ({
        code,
        boundary: text(plots.find((plot) => plot.code === code)!.boundary),
      })),
    },
    became: { plots: wanted.map(({ code, boundary }) => ({ code, boundary: text(boundary) })) },
  });
  return { change, plots: wanted.length };
}
