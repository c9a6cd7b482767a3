/** Until when gaps are filled. The published rules differ; each is a row, and a station may bring its own. */
import { between } from '../check-number.ts';
import { dayPlus } from '../crop-day.ts';
import { type Fault, fault, firstFault, isFault, sure } from '../fault.ts';
import type { Sourced } from '../source.ts';

export interface ReplantRule extends Sourced {
  name: string;
  /** Days after transplanting. */
  fromDays: number;
  toDays: number;
  /** A second round, where the rule has one. */
  againDays?: number;
}

export const REPLANT_RULES: readonly ReplantRule[] = [
  { name: 'PhilRice', fromDays: 0, toDays: 7, source: 'PhilRice, PalayCheck Key Check 4' },
  { name: 'TNAU', fromDays: 7, toDays: 10, source: 'TNAU Agritech' },
  {
    name: 'RKMP-DRR',
    fromDays: 7,
    toDays: 7,
    againDays: 22,
    source: 'RKMP-DRR irrigated rice: one week, and 15 days later',
  },
];

export interface ReplantWindow extends Sourced {
  rule: string;
  from: string;
  to: string;
  againOn?: string;
}

export function replantWindow(plantedOn: string, rule: ReplantRule): ReplantWindow | Fault {
  const wrong = firstFault(
    between(rule.fromDays, 0, 60, `first day of the rule ${rule.name}`),
    between(rule.toDays, rule.fromDays, 60, `last day of the rule ${rule.name}`),
    between(rule.againDays ?? 0, 0, 60, `second round of the rule ${rule.name}`),
  );
  if (wrong) return wrong;
  const from = dayPlus(plantedOn, rule.fromDays);
  if (isFault(from)) return from;
  const { name, source, unconfirmed } = rule;
  const againOn = rule.againDays === undefined ? undefined : sure(dayPlus(plantedOn, rule.againDays));
  return { rule: name, from, to: sure(dayPlus(plantedOn, rule.toDays)), againOn, source, unconfirmed };
}

/** The window that closes first: work done by its last day satisfies every rule's last day. */
export function strictestReplantWindow(
  plantedOn: string,
  rules: readonly ReplantRule[] = REPLANT_RULES,
): ReplantWindow | Fault {
  const windows = rules.map((rule) => replantWindow(plantedOn, rule));
  const wrong = windows.find(isFault);
  if (wrong) return wrong;
  const [first] = (windows as ReplantWindow[]).sort((a, b) => a.to.localeCompare(b.to));
  return first ?? fault('no replanting rule is given');
}
