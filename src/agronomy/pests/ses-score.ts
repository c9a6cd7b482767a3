import { between } from '../check-number.ts';
import { type Fault, fault } from '../fault.ts';
import type { Sourced } from '../source.ts';
import { inBand } from './printed-band.ts';
import { SES_TRAITS, type SesTrait } from './ses-traits.ts';

export interface SesScore extends Sourced {
  trait: string;
  score: number;
  /** The band as printed. */
  band: string;
  /** What was scored after rounding. */
  scoredAs: number;
  rounding: string;
  byEye?: string;
}

/** Common practice, for the source does not say: the bands leave gaps between whole numbers. */
export const SES_ROUNDING =
  'rounded to a whole number, halves up; more than 0 but under 1 stays as it is where a band is "<1", else counts as 1';

/** Score of a measured value. A value that the printed bands miss, or hold twice, is a fault and not a guess. */
export function sesScore(traitName: string, value: number): SesScore | Fault {
  const trait = SES_TRAITS.find(({ name }) => name === traitName);
  if (!trait) return fault(`no SES trait is called ${traitName}`);
  const wrong = between(value, 0, trait.most, `${trait.name}, ${trait.measure},`);
  if (wrong) return wrong;
  const scoredAs = rounded(value, trait);
  const bands = trait.bands.filter((band) => inBand(scoredAs, band));
  const { name, source, byEye } = trait;
  if (bands.length === 0) return fault(`${scoredAs} lies in no printed band of ${name} (${source})`);
  if (bands.length > 1)
    return fault(
      `${scoredAs} lies in two printed bands of ${name}, ${bands.map((band) => band.printed).join(' and ')}`,
    );
  const { score, printed } = bands[0]!;
  return {
    trait: name,
    score,
    band: printed,
    scoredAs,
    rounding: SES_ROUNDING,
    byEye,
    source,
    unconfirmed: scoredAs === value ? undefined : true,
  };
}

function rounded(value: number, trait: SesTrait): number {
  if (value === 0 || value >= 1) return Math.round(value);
  return trait.bands.some(({ printed }) => printed === '<1') ? value : 1;
}
