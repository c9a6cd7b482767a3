/** Figures go to their plots and places: lists of figures to lists of plots, two figures of a comparison to its two plots. */
import { type Passage, wallBetween } from '../engine/passage.ts';
import type { MeasurementFound } from '../measurements/find-measurements.ts';
import { type PlotsOf, plotsOf } from '../plots/settle-plots.ts';
import type { Laid, Settled } from './entries.ts';
import { whereOfFigure } from './figure-places.ts';

export function placeMeasurements(passage: Passage, settled: Settled): Laid[] {
  const { measurements } = settled;
  const kept = measurements.filter(
    (one) => !settled.lessons.some(({ first, last }) => one.first >= first && one.last <= last),
  );
  const laid: Laid[] = [];
  for (let index = 0; index < kept.length; index++) {
    const row = rowFrom(kept, index, passage);
    const plots = plotsOfFigure(passage, kept[index]!, row.length === 1);
    const spread = spreadOver(settled, row, plots);
    for (const [at, one] of row.entries()) {
      const where = whereOfFigure(passage, kept, index + at, settled);
      laid.push(measured(one, spread?.[at] ?? plotsOfFigure(passage, one, row.length === 1), where));
    }
    index += row.length - 1;
  }
  return laid;
}

/** The plot that leads to the figure wins (`B1 4, B2 3.5`); one named in passing only to a single figure (`yields the control, which gave 4.9`). */
function plotsOfFigure(
  passage: Passage,
  { first, last, plotAt }: MeasurementFound,
  isAlone: boolean,
): PlotsOf {
  const leading = plotAt === undefined ? undefined : passage.plotOver[plotAt];
  return leading && (isAlone || leading.role === 'subject')
    ? { codes: leading.codes, how: 'leads to the figure', found: leading }
    : plotsOf(passage, first, last);
}

/** Figures of one quantity that follow each other with nothing but small words between. */
function rowFrom(all: readonly MeasurementFound[], index: number, passage: Passage): MeasurementFound[] {
  const row = [all[index]!];
  for (let at = index + 1; at < all.length; at++) {
    const one = all[at]!;
    const before = row.at(-1)!;
    if (
      one.quantity !== before.quantity ||
      one.first - before.last > 6 ||
      passage.plotOver.slice(before.last + 1, one.first).some(Boolean) ||
      wallBetween(passage, before.last, one.first) === 3
    )
      break;
    row.push(one);
  }
  return row;
}

function spreadOver(settled: Settled, row: readonly MeasurementFound[], plots: PlotsOf): PlotsOf[] | null {
  if (row.length < 2) return null;
  if (plots.codes.length === row.length)
    return plots.codes.map((code) => ({ codes: [code], how: 'in the order named', found: plots.found }));
  const compared = settled.comparisons.find(
    (one) => Math.abs(one.first - row[0]!.first) < 24 && one.more && one.less,
  );
  if (!compared || row.length !== 2 || plots.codes.length !== 1) return null;
  const other = plots.codes[0] === compared.more ? compared.less : compared.more;
  return [plots, { codes: [other], how: 'compared with', found: null }];
}

function measured(one: MeasurementFound, plots: PlotsOf, where: string | undefined): Laid {
  return {
    draft: { first: one.first, last: one.last, rule: one.rule, cues: [], beat: [], also: [], rest: null },
    plots,
    fact: (plot) => ({
      list: 'measurements',
      fact: { plot, quantity: one.quantity, value: one.value, ...(where && { where }) },
    }),
  };
}
