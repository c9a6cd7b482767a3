import type { Dose } from '../record.ts';

/** `first` and `last` are token indexes, both included; they take in the material where it touches the figure. */
export interface DoseFound {
  first: number;
  last: number;
  dose: Dose;
  rule: string;
}
