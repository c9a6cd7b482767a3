import type { ActionKind } from '../reading/record.ts';
import { addDays } from './days.ts';
import type { Due, LookAfterRow } from './item.ts';

const CP = 'common practice';

/** The table that a farm starts with. Several rows of one action: `passes` rows come first, the last one closes. */
export const LOOK_AFTER: readonly LookAfterRow[] = [
  row(
    'replant',
    10,
    4,
    'count the hills that took',
    5,
    3,
    'count about 10 days after planting: PalayCheck (PhilRice); for refilled hills common practice',
  ),
  row('hand_weed', 7, 2, 'regrowth and escapes', 3, 1, CP),
  row('irrigate', 1, 0, 'water standing, next morning', 1, 1, CP),
  row('mend_bund', 1, 0, 'the mended place, next morning', 1, 0, CP),
  {
    ...row(
      'fertilise',
      0,
      2,
      'let the water back within two days, if it was let off',
      0,
      1,
      'reflood in 2-3 days: common practice; within 2-3 days on loam: Rice Farming',
    ),
    passes: true,
  },
  row(
    'fertilise',
    7,
    3,
    'leaf colour',
    3,
    5,
    'colour read every 7-10 days: IRRI leaf colour chart page; the day after topdressing common practice',
  ),
  row(
    'spray',
    7,
    3,
    'whether it worked, and the crop for injury; the re-entry time on the label comes first',
    3,
    5,
    CP,
  ),
  row('control_rodents', 7, 2, 'recount burrows and fresh cuts', 3, 3, CP),
  row('control_snails', 3, 2, 'snails and fresh cut seedlings', 1, 2, CP),
  row('scare_birds', 2, 1, 'birds and fresh damage', 1, 1, CP),
  row('drain', 1, 1, 'whether the water is off, low spots', 0, 1, CP),
  row('rogue', 7, 3, 'off-types that were missed', 3, 1, CP),
  row('support', 1, 1, 'whether the plants still stand', 1, 1, CP),
  row(
    'plant',
    7,
    3,
    'floating and missing hills, while gaps can still be filled',
    3,
    3,
    'gaps filled within 7 days: PhilRice/PalayCheck; 7-10 days: TNAU',
  ),
  row('land_prep', 1, 2, 'level, leaks and weeds left', 1, 1, CP),
  row('harvest', 1, 6, 'yield and grain moisture written down', 0, 0, CP),
];

function row(
  action: ActionKind,
  days: number,
  spanDays: number,
  lookAt: string,
  goodFromDays: number,
  badFromDays: number,
  source: string,
): LookAfterRow {
  return { action, days, spanDays, lookAt, goodFromDays, badFromDays, source };
}

export const rowsFor = (rows: readonly LookAfterRow[], action: ActionKind): LookAfterRow[] =>
  rows.filter((r) => r.action === action).sort((a, b) => a.days - b.days || (a.lookAt < b.lookAt ? -1 : 1));

/** The row whose figures decide when a finding is the result: the last that does not pass. */
export const closingRow = (rows: readonly LookAfterRow[]): LookAfterRow | undefined =>
  rows.filter((r) => !r.passes).at(-1) ?? rows.at(-1);

/** The look that is next on `today`; rows that pass are skipped once their days are over, or once `settled`. */
export function nextLook(
  rows: readonly LookAfterRow[],
  doneOn: string,
  today: string,
  passingIsSettled: boolean,
): { due: Due; lookAt: string } | undefined {
  const next =
    rows.find((r) => r.passes && !passingIsSettled && addDays(doneOn, r.days + r.spanDays) >= today) ??
    rows.find((r) => !r.passes);
  if (!next) return undefined;
  const from = addDays(doneOn, next.days);
  const days = next.days === 0 ? 'from the day of the work' : `${next.days} days after the work`;
  const because = next.days === 1 ? 'the day after the work' : days;
  return { due: { from, to: addDays(from, next.spanDays), forecast: false, because }, lookAt: next.lookAt };
}

/** The longest default of US rules: 72 h (40 CFR 156.208; label training module of the US EPA). The label overrides. */
const LONGEST_DEFAULT_KEEP_OUT_DAYS = 3;

export function keepOutAfter(
  action: ActionKind,
  doneOn: string,
): { through: string; because: string } | undefined {
  if (action !== 'spray') return undefined;
  return {
    through: addDays(doneOn, LONGEST_DEFAULT_KEEP_OUT_DAYS),
    because:
      'Keep out until the re-entry time on the label is over. Where it is not known, three days: the longest default (12 to 72 h by hazard class) of 40 CFR 156.208. Label and local law rule.',
  };
}

const LABEL =
  'Product, rate, clothing, waiting times and disposal are set by the label and by local law; ask somebody licensed to advise.';
const MACHINES =
  'Keep people clear of running machines, stop the engine before clearing a blockage, and stay out of open fields in a thunderstorm. [common practice]';

/** Usual cautions for work that can hurt somebody; an empty list for the rest. */
export function cautionsFor(action: ActionKind): string[] {
  if (action === 'spray')
    return [
      LABEL,
      'Long sleeves and trousers, chemical-resistant gloves, boots, eye protection when mixing; not against the wind; wash before eating. [common practice]',
      'Nobody goes in before the re-entry time; no harvest before the pre-harvest time. The longer one rules. (Washington State University)',
    ];
  if (action === 'control_rodents')
    return [
      LABEL,
      'Baits: registered products only, in covered stations away from children, pets and livestock (IRRI); none in water, gloves on, gather carcasses. [memory]',
      'Zinc phosphide gives off poisonous gas when moist: prepare fresh, never indoors. (PAU)',
    ];
  if (action === 'control_snails')
    return ['Hand picking: gloves and boots. [common practice]', `Snail baits: ${LABEL}`];
  return action === 'harvest' || action === 'land_prep' ? [MACHINES] : [];
}
