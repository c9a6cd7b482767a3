import { between } from '../check-number.ts';
import { type Fault, fault } from '../fault.ts';
import type { Sourced } from '../source.ts';

export interface ValidityRule extends Sourced {
  test: string;
  /** What the susceptible check must reach for the scores of the others to mean anything. */
  least: number;
  /** Whether `least` itself is enough. */
  orEqual: boolean;
  unit: string;
}

const DICTIONARY = 'IRRI SES in the rice trait dictionary CO_320';

/** Planthopper rows stand on the delphacid entry. */
export const VALIDITY_RULES: readonly ValidityRule[] = [
  { test: 'dead heart', least: 20, orEqual: false, unit: '% of tillers', source: DICTIONARY },
  { test: 'leaffolder', least: 40, orEqual: true, unit: '% of plants', source: DICTIONARY },
  { test: 'planthopper, 10-15 DAT', least: 10, orEqual: true, unit: 'a hill', source: DICTIONARY },
  { test: 'planthopper, maximum tillering', least: 25, orEqual: true, unit: 'a hill', source: DICTIONARY },
  { test: 'planthopper, early boot', least: 100, orEqual: true, unit: 'a hill', source: DICTIONARY },
];

export function testIsValid(test: string, susceptibleCheck: number): boolean | Fault {
  const rule = VALIDITY_RULES.find((one) => one.test === test);
  if (!rule) return fault(`no rule of validity is known for ${test}`);
  const { least, orEqual, unit } = rule;
  const wrong = between(susceptibleCheck, 0, unit.startsWith('%') ? 100 : 1e6, `susceptible check, ${unit},`);
  return wrong ?? (orEqual ? susceptibleCheck >= least : susceptibleCheck > least);
}
