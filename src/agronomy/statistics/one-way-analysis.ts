import { eachOf, finite } from '../check-number.ts';
import { type Fault, fault } from '../fault.ts';
import {
  cvPercent,
  distinct,
  errorFault,
  line,
  significanceWords,
  type TestedLine,
  type TreatmentMean,
  tested,
  type VarianceLine,
} from './analysis-of-variance.ts';
import { meanOf, squaresAround } from './describe.ts';

export interface OneWayAnalysis {
  treatments: TestedLine;
  error: VarianceLine;
  total: { df: number; ss: number };
  grandMean: number;
  cvPercent: number | null;
  means: TreatmentMean[];
  words: string;
}

/** Completely randomised plots, numbers unlike allowed. For a trial laid out in blocks it is the wrong analysis. */
export function oneWayAnalysis(
  plots: readonly { treatment: string; value: number }[],
): OneWayAnalysis | Fault {
  const values = plots.map(({ value }) => value);
  const names = distinct(plots.map(({ treatment }) => treatment));
  const wrong = eachOf(values, 3, 'plots', finite);
  if (wrong) return wrong;
  if (names.length < 2) return fault('needs at least two treatments');
  if (values.length === names.length) return fault('needs a treatment with more than one plot');
  const grandMean = meanOf(values);
  const groups = names.map((name) =>
    plots.filter(({ treatment }) => treatment === name).map(({ value }) => value),
  );
  const errorSs = groups.reduce((sum, group) => sum + squaresAround(group, meanOf(group)), 0);
  const betweenSs = groups.reduce((sum, group) => sum + group.length * (meanOf(group) - grandMean) ** 2, 0);
  const totalSs = squaresAround(values, grandMean);
  const noError = errorFault(errorSs, totalSs);
  if (noError) return noError;
  const error = line(errorSs, values.length - names.length);
  const treatments = tested(line(betweenSs, names.length - 1), error);
  return {
    treatments,
    error,
    total: { df: values.length - 1, ss: totalSs },
    grandMean,
    cvPercent: cvPercent(error, grandMean),
    means: groups.map((group, index) => ({ treatment: names[index]!, n: group.length, mean: meanOf(group) })),
    words: significanceWords(treatments.p),
  };
}
