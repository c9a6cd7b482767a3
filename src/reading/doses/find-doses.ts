import type { NumberFound } from '../numbers/find-numbers.ts';
import type { Dose } from '../record.ts';
import type { Token } from '../text.ts';

export interface DoseFound {
  first: number;
  last: number;
  dose: Dose;
  rule: string;
}

export function findDoses(_tokens: Token[], _numbers: NumberFound[]): DoseFound[] {
  return [];
}
