/**
 * Grain over all dry matter, both dry. Yoshida 1981 Table 1.6 comes out only when grain at 14 % is taken times 0.86; that his
 * grain is at 14 % is our inference. Grain as weighed over dry matter would give 0.50 where 0.43 is right.
 */
import { above0, atLeast0, wholeCount } from '../check-number.ts';
import { type Fault, fault, firstFault } from '../fault.ts';

const DRY_SHARE_AT_14 = 0.86;

export function harvestIndex(grainAt14TPerHa: number, dryMatterTPerHa: number): number | Fault {
  const wrong = firstFault(
    atLeast0(grainAt14TPerHa, 'grain at 14 % in t/ha'),
    above0(dryMatterTPerHa, 'dry matter above ground in t/ha'),
  );
  if (wrong) return wrong;
  const index = (grainAt14TPerHa * DRY_SHARE_AT_14) / dryMatterTPerHa;
  return index > 1 ? fault('the grain weighs more than the whole crop: one of the two is wrong') : index;
}

/** kg/ha a day in the main field: the days in the nursery do not hold the land. */
export function yieldPerDayKgPerHa(
  grainTPerHa: number,
  durationDays: number,
  nurseryDays: number,
): number | Fault {
  const wrong = firstFault(
    atLeast0(grainTPerHa, 'grain in t/ha'),
    wholeCount(durationDays, 'days to maturity'),
    wholeCount(nurseryDays, 'days in the nursery'),
    above0(durationDays - nurseryDays, 'days in the main field'),
  );
  return wrong ?? (1000 * grainTPerHa) / (durationDays - nurseryDays);
}
