export type NumberForm = 'cardinal' | 'ordinal' | 'fraction' | 'percent' | 'range' | 'share';

/**
 * `first` and `last` are token indexes, both included. A range holds its middle in `value`; a percent is 0 to 100;
 * a fraction is 0 to 1; a share (`4 of 25 hills`) holds 4 in `value` and 25 in `of`.
 */
export interface NumberFound {
  first: number;
  last: number;
  value: number;
  low?: number;
  high?: number;
  form: NumberForm;
  of?: number;
  /** Of a range in percent, and of a share in ranges. */
  percent?: boolean;
  /** `a couple`, `almost half`: said loosely. */
  vague?: boolean;
}
