/** A season's nitrogen in parts. */
import { atLeast0, eachOf } from '../check-number.ts';
import { type Fault, fault, firstFault } from '../fault.ts';
import type { Sourced } from '../source.ts';

export interface SplitTime extends Sourced {
  when: string;
  /** Days after transplanting, where the source gives them. */
  fromDays?: number;
  toDays?: number;
}

export const SPLIT_TIMES: readonly SplitTime[] = [
  { when: 'basal or early', fromDays: 0, toDays: 14, source: 'common practice', unconfirmed: true },
  { when: 'active tillering', source: 'common practice', unconfirmed: true },
  { when: 'panicle initiation', source: 'common practice', unconfirmed: true },
  { when: 'heading, if at all', source: 'common practice', unconfirmed: true },
];

export interface Split {
  when: string;
  sharePercent: number;
  rateKgPerHa: number;
}

/** The shares must add up to 100. */
export function splitRate(
  totalKgPerHa: number,
  parts: readonly { when: string; sharePercent: number }[],
): Split[] | Fault {
  const shares = parts.map(({ sharePercent }) => sharePercent);
  const wrong = firstFault(
    atLeast0(totalKgPerHa, 'rate in kg/ha'),
    eachOf(shares, 1, 'shares in %', atLeast0),
  );
  if (wrong) return wrong;
  const sum = shares.reduce((all, share) => all + share, 0);
  if (Math.abs(sum - 100) > 0.05)
    return fault(`the shares add up to ${Number(sum.toFixed(2))} %, not to 100 %`);
  return parts.map((part) => ({ ...part, rateKgPerHa: (totalKgPerHa * part.sharePercent) / 100 }));
}
