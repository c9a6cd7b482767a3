/** A plot's green cover over time, with its sister plots of the same treatment beside it. */
import { type CoverPoint, coverOverTime } from './canopy.ts';
import type { Diary } from './diary.ts';
import { type Plot, readPlots } from './farm.ts';

export interface CoverBeside {
  code: string;
  points: CoverPoint[];
  sisters: { code: string; points: CoverPoint[] }[];
}

/** Null where no cover was measured in the plot itself. */
export async function coverBeside(diary: Diary, code: string): Promise<CoverBeside | null> {
  const points = await coverOverTime(diary, code);
  if (points.length === 0) return null;
  const plots = await readPlots(diary);
  const own = plots.find((plot) => plot.code === code);
  const alike = own ? plots.filter((plot) => isSister(plot, own)) : [];
  const sisters = await Promise.all(
    alike.map(async (sister) => ({
      code: sister.code,
      points: await coverOverTime(diary, sister.code),
    })),
  );
  return { code, points, sisters: sisters.filter((sister) => sister.points.length > 0) };
}

/** Same treatment in every factor, same variety; a plot without a treatment has none. */
const isSister = (plot: Plot, own: Plot): boolean =>
  plot.code !== own.code &&
  Object.keys(own.treatment).length > 0 &&
  treatmentKey(plot) === treatmentKey(own) &&
  plot.crop?.variety === own.crop?.variety;

const treatmentKey = ({ treatment }: Plot): string =>
  JSON.stringify(Object.entries(treatment).sort(([a], [b]) => (a < b ? -1 : 1)));
