/** The field plan: plots as they lie, from their boundaries, or in rows of the walk where none is known. */
import { outlineInMetres } from '../plots/outline-in-metres.ts';
import type { Diary } from './diary.ts';
import { type Plot, readPlots } from './farm.ts';
import { followUpsOfToday } from './file-follow-ups.ts';

export interface PlanPlot {
  plot: Plot;
  /** Corners in metres, x to the east, y to the south (as a screen counts), from the plan's north-west corner. */
  shape: [number, number][];
  open: number;
  late: number;
}

export interface FieldPlan {
  plots: PlanPlot[];
  widthM: number;
  heightM: number;
  /** False where plots stand in a plain grid because no boundary is known. */
  true: boolean;
  /** Dots on it: what was asked to be shown, in its order. */
  points: PlanPoint[];
}

/** A photo or a note with a position. */
export interface PlacedPoint {
  what: 'photo' | 'note';
  href: string;
  /** Local, `2031-07-14T06:55`. */
  at: string;
  plot: string | null;
  words: string;
  latitude: number;
  longitude: number;
}

export interface PlanPoint extends PlacedPoint {
  /** Metres as in `shape`; null where it lies outside the plan. */
  x: number | null;
  y: number | null;
}

export async function fieldPlan(diary: Diary, points: PlacedPoint[] = []): Promise<FieldPlan> {
  await followUpsOfToday(diary);
  const plots = await readPlots(diary);
  const open = await openCounts(diary);
  const { shapes, widthM, heightM, known, at } = outlineInMetres(
    plots.map(({ code, boundary, widthM, lengthM }) => ({ code, boundary, widthM, lengthM })),
  );
  return {
    plots: plots.map((plot) => ({
      plot,
      shape: shapes.get(plot.code) ?? [],
      open: open.get(plot.code)?.open ?? 0,
      late: open.get(plot.code)?.late ?? 0,
    })),
    widthM,
    heightM,
    true: known,
    points: points.map((point) => {
      const [x, y] = at(point.longitude, point.latitude) ?? [null, null];
      return { ...point, x, y };
    }),
  };
}

async function openCounts({ db }: Diary): Promise<Map<string, { open: number; late: number }>> {
  const rows = await db
    .selectFrom('follow_ups')
    .select(['plot', 'bucket', (eb) => eb.fn.countAll<number>().as('count')])
    .where('bucket', '!=', 'settled')
    .where('plot', 'is not', null)
    .groupBy(['plot', 'bucket'])
    .execute();
  const counts = new Map<string, { open: number; late: number }>();
  for (const { plot, bucket, count } of rows) {
    const of = counts.get(plot!) ?? { open: 0, late: 0 };
    counts.set(plot!, {
      open: of.open + Number(count),
      late: of.late + (bucket === 'late' ? Number(count) : 0),
    });
  }
  return counts;
}
