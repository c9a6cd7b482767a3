import { eachOf, finite } from '../check-number.ts';
import { type Fault, fault } from '../fault.ts';
import {
  cvPercent,
  distinct,
  errorFault,
  line,
  type MeanSpread,
  meanSpread,
  significanceWords,
  type TestedLine,
  type TreatmentMean,
  tested,
  type VarianceLine,
} from './analysis-of-variance.ts';
import { meanOf, squaresAround } from './describe.ts';

export interface BlockPlot {
  treatment: string;
  block: string;
  value: number;
}

export interface BlockAnalysis extends MeanSpread {
  blocks: TestedLine;
  treatments: TestedLine;
  error: VarianceLine;
  total: { df: number; ss: number };
  grandMean: number;
  cvPercent: number | null;
  /** In the order in which treatments first come. */
  means: TreatmentMean[];
  /** Whether the LSD may be used, in words; goes with it wherever it is shown. */
  words: string;
}

/**
 * Randomised complete blocks: every treatment once in every block. A missing or doubled plot is a fault: the sums would be
 * wrong without it. Gomez & Gomez 1984, chapter 2.
 */
export function blockAnalysis(plots: readonly BlockPlot[]): BlockAnalysis | Fault {
  const treatments = distinct(plots.map(({ treatment }) => treatment));
  const blocks = distinct(plots.map(({ block }) => block));
  const values = plots.map(({ value }) => value);
  const wrong = eachOf(values, 4, 'plots', finite) ?? incomplete(plots, treatments, blocks);
  if (wrong) return wrong;
  const grandMean = meanOf(values);
  const totalSs = squaresAround(values, grandMean);
  const means = treatments.map((treatment) =>
    meanWhere(plots, (plot) => plot.treatment === treatment, treatment),
  );
  const blockMeans = blocks.map((block) => meanWhere(plots, (plot) => plot.block === block, block));
  const treatmentSs = sumOfSquares(means, grandMean);
  const blockSs = sumOfSquares(blockMeans, grandMean);
  const errorSs = totalSs - treatmentSs - blockSs;
  const noError = errorFault(errorSs, totalSs);
  if (noError) return noError;
  const error = line(errorSs, (treatments.length - 1) * (blocks.length - 1));
  const treatmentLine = tested(line(treatmentSs, treatments.length - 1), error);
  return {
    blocks: tested(line(blockSs, blocks.length - 1), error),
    treatments: treatmentLine,
    error,
    total: { df: values.length - 1, ss: totalSs },
    grandMean,
    cvPercent: cvPercent(error, grandMean),
    means,
    ...meanSpread(error, blocks.length),
    words: significanceWords(treatmentLine.p),
  };
}

function incomplete(
  plots: readonly BlockPlot[],
  treatments: readonly string[],
  blocks: readonly string[],
): Fault | null {
  if (treatments.length < 2) return fault('needs at least two treatments');
  if (blocks.length < 2) return fault('needs at least two blocks');
  const counts = new Map<string, number>();
  const key = (treatment: string, block: string): string => JSON.stringify([treatment, block]);
  for (const { treatment, block } of plots)
    counts.set(key(treatment, block), (counts.get(key(treatment, block)) ?? 0) + 1);
  for (const block of blocks)
    for (const treatment of treatments) {
      const times = counts.get(key(treatment, block)) ?? 0;
      if (times === 0)
        return fault(`${treatment} is missing in block ${block}: complete blocks need every plot`);
      if (times > 1) return fault(`${treatment} stands ${times} times in block ${block}`);
    }
  return null;
}

function meanWhere(
  plots: readonly BlockPlot[],
  belongs: (plot: BlockPlot) => boolean,
  treatment: string,
): TreatmentMean {
  const values = plots.filter(belongs).map(({ value }) => value);
  return { treatment, n: values.length, mean: meanOf(values) };
}

const sumOfSquares = (means: readonly TreatmentMean[], grandMean: number): number =>
  means.reduce((sum, { n, mean }) => sum + n * (mean - grandMean) ** 2, 0);
