/** What belongs to the record of one spraying, and words that stand beside every one. Common practice. */
export const APPLICATION_FACTS = [
  'product and registration number',
  'active ingredient',
  'dose',
  'volume',
  'area',
  'operator',
  'time',
  'wind',
  'end of re-entry interval',
  'earliest harvest date',
  'lot',
] as const;

export type ApplicationFact = (typeof APPLICATION_FACTS)[number];

/** What is still to be written down. */
export function missingFromApplication(known: ReadonlySet<ApplicationFact>): ApplicationFact[] {
  return APPLICATION_FACTS.filter((fact) => !known.has(fact));
}

export const PESTICIDE_WORDS =
  'Product, rate, protective clothing, re-entry, pre-harvest interval and disposal are set by the label and by national law. The diary records what was done; it does not allow a use.';

export const PROTECTION_WORDS =
  'At the least: long sleeves and trousers, chemical-resistant gloves, boots, eye protection when mixing, a respirator where the label asks for one. Wash before eating. Not against the wind.';
