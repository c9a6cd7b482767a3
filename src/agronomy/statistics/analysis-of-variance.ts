/** Pieces that the analyses of variance share. Gomez & Gomez 1984, Statistical Procedures for Agricultural Research, 2nd ed. */
import { type Fault, fault, sure } from '../fault.ts';
import { fUpperP, tCritical } from './distributions.ts';

export interface VarianceLine {
  df: number;
  ss: number;
  ms: number;
}

export interface TestedLine extends VarianceLine {
  f: number;
  p: number;
}

export interface TreatmentMean {
  treatment: string;
  n: number;
  mean: number;
}

export const line = (ss: number, df: number): VarianceLine => ({ df, ss, ms: ss / df });

export function tested({ df, ss, ms }: VarianceLine, error: VarianceLine): TestedLine {
  const f = ms / error.ms;
  return { df, ss, ms, f, p: sure(fUpperP(f, df, error.df)) };
}

/** Where nothing is left over to test against: values typed in alike, or as sums of block and treatment. */
export function errorFault(errorSs: number, totalSs: number): Fault | null {
  return errorSs > 1e-12 * totalSs
    ? null
    : fault('the values leave no error to test against: were they measured, or filled in?');
}

export interface MeanSpread {
  seMean: number;
  /** Of a difference of two means. */
  sed: number;
  lsd5: number;
  lsd1: number;
}

/** For means of `n` plots each. */
export function meanSpread(error: VarianceLine, n: number): MeanSpread {
  const seMean = Math.sqrt(error.ms / n);
  const sed = Math.sqrt((2 * error.ms) / n);
  return {
    seMean,
    sed,
    lsd5: sure(tCritical(0.05, error.df)) * sed,
    lsd1: sure(tCritical(0.01, error.df)) * sed,
  };
}

/** Error over the mean, %; null where the mean is not above 0, as after a transformation. */
export const cvPercent = (error: VarianceLine, mean: number): number | null =>
  mean > 1e-9 ? (100 * Math.sqrt(error.ms)) / mean : null;

export const significanceWords = (p: number): string =>
  p < 0.05
    ? `treatments differ (F test, p = ${p.toFixed(3)})`
    : `treatments do not differ at 5 % (F test, p = ${p.toFixed(3)}): the LSD must not be used to pick out pairs`;

export const distinct = (names: readonly string[]): string[] => [...new Set(names)];
