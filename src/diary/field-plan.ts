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
}

export async function fieldPlan(diary: Diary): Promise<FieldPlan> {
  await followUpsOfToday(diary);
  const plots = await readPlots(diary);
  const open = await openCounts(diary);
  const { shapes, widthM, heightM, known } = outlineInMetres(
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
