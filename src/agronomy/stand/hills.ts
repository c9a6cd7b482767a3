/** Hills from their spacing, and what is missing of them. */
import { above0, between, wholeCount } from '../check-number.ts';
import { type Fault, fault, firstFault, isFault } from '../fault.ts';

export interface Spacing {
  rowCm: number;
  hillCm: number;
}

/** 10 000 cm2 over the space of one hill. */
export function hillsPerM2({ rowCm, hillCm }: Spacing): number | Fault {
  const wrong = firstFault(
    above0(rowCm, 'row spacing in cm'),
    between(rowCm, 5, 200, 'row spacing in cm'),
    above0(hillCm, 'spacing in the row in cm'),
    between(hillCm, 3, 200, 'spacing in the row in cm'),
  );
  return wrong ?? 10_000 / (rowCm * hillCm);
}

/** Hills that a full stand has, whole. */
export function expectedHills(areaM2: number, spacing: Spacing): number | Fault {
  const perM2 = hillsPerM2(spacing);
  if (isFault(perM2)) return perM2;
  return above0(areaM2, 'area in m2') ?? Math.round(areaM2 * perM2);
}

/** Share of the expected hills that is not there, %. Common practice. More than expected is a miscount. */
export function missingHillsPercent(expected: number, present: number): number | Fault {
  const wrong = firstFault(
    above0(expected, 'expected hills'),
    wholeCount(expected, 'expected hills'),
    wholeCount(present, 'hills counted'),
  );
  if (wrong) return wrong;
  if (present > expected)
    return fault(`${present} hills were counted where ${expected} were expected: check spacing or area`);
  return (100 * (expected - present)) / expected;
}

/** `2 in 10 hills` and its like, %. */
export function shareOfHillsPercent(affected: number, looked: number): number | Fault {
  const wrong = firstFault(wholeCount(affected, 'hills affected'), above0(looked, 'hills looked at'));
  if (wrong) return wrong;
  return affected > looked
    ? fault(`${affected} of ${looked} hills is more than all of them`)
    : (100 * affected) / looked;
}
