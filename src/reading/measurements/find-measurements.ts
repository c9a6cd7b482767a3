import type { NumberFound } from '../numbers/find-numbers.ts';
import type { Quantity } from '../record.ts';
import type { Token } from '../text.ts';

/** `value` is in the vocabulary's unit; `first` and `last` take in the number, its unit and a name that touches it. */
export interface MeasurementFound {
  first: number;
  last: number;
  quantity: Quantity;
  value: number;
  rule: string;
}

/** `isPlot` says whether a token belongs to the name of a plot; it keeps codes from being read as figures. */
export function findMeasurements(
  _tokens: Token[],
  _numbers: NumberFound[],
  _isPlot: (index: number) => boolean = () => false,
): MeasurementFound[] {
  return [];
}
