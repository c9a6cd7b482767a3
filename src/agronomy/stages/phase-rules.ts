/**
 * Lengths of the three phases. Published rules differ by five days in the date of panicle initiation, and do not count to
 * the same event, so a date always carries the name of its rule.
 */
import { between } from '../check-number.ts';
import { dayPlus, daysAfter } from '../crop-day.ts';
import { type Fault, fault, isFault, sure } from '../fault.ts';
import type { Sourced } from '../source.ts';

export type PhaseRuleName = 'Yoshida' | 'IRRI guide' | 'BRRI slides';

export interface PhaseRule extends Sourced {
  name: PhaseRuleName;
  /** From panicle initiation to `ends`. */
  reproductiveDays: number;
  ends: 'heading' | 'flowering';
  /** From `ends` to maturity. */
  ripeningDays: number;
}

export const PHASE_RULES: readonly PhaseRule[] = [
  {
    name: 'Yoshida',
    reproductiveDays: 30,
    ends: 'heading',
    ripeningDays: 30,
    source: 'Yoshida 1981, Fundamentals of Rice Crop Science, IRRI, p. 1 (120-day variety, tropics)',
  },
  {
    name: 'IRRI guide',
    reproductiveDays: 35,
    ends: 'flowering',
    ripeningDays: 30,
    source: 'IRRI growth-stage guide, about 35 and about 30 days',
  },
  {
    name: 'BRRI slides',
    reproductiveDays: 30,
    ends: 'flowering',
    ripeningDays: 30,
    source: 'BRRI/IRRI training slides, Dhaka 2011; which event ends the 30 days is our reading',
    unconfirmed: true,
  },
];

export interface PhaseDays {
  vegetative: number;
  reproductive: number;
  ripening: number;
}

/** The rest, sowing to panicle initiation, is what differs between varieties (Yoshida 1981 p. 1). */
export function phaseDays(totalDays: number, rule: PhaseRuleName): PhaseDays | Fault {
  const wrong = between(totalDays, 80, 260, 'days from sowing to maturity');
  if (wrong) return wrong;
  const found = PHASE_RULES.find(({ name }) => name === rule);
  if (!found) return fault(`no phase rule is called ${rule}`);
  const { reproductiveDays, ripeningDays } = found;
  const vegetative = totalDays - reproductiveDays - ripeningDays;
  return { vegetative, reproductive: reproductiveDays, ripening: ripeningDays };
}

export interface PhaseDates extends Sourced {
  rule: PhaseRuleName;
  panicleInitiationOn: string;
  /** Heading or flowering, as the rule counts. */
  ends: PhaseRule['ends'];
  endsOn: string;
  matureOn: string;
}

/** Dates after `sownOn` for a variety of so many days; transplanting lag is the caller's to add. */
export function phaseDates(sownOn: string, totalDays: number, rule: PhaseRuleName): PhaseDates | Fault {
  const days = phaseDays(totalDays, rule);
  if (isFault(days)) return days;
  const start = dayPlus(sownOn, 0);
  if (isFault(start)) return start;
  const { ends, source, unconfirmed } = PHASE_RULES.find(({ name }) => name === rule)!;
  const on = (day: number): string => sure(dayPlus(sownOn, day));
  return {
    rule,
    panicleInitiationOn: on(days.vegetative),
    ends,
    endsOn: on(days.vegetative + days.reproductive),
    matureOn: on(totalDays),
    source,
    unconfirmed,
  };
}

/** Days by which the published rules differ about panicle initiation, and what each says. */
export function panicleInitiationByRule(
  sownOn: string,
  totalDays: number,
): { dates: PhaseDates[]; apartDays: number } | Fault {
  const dates = PHASE_RULES.map(({ name }) => phaseDates(sownOn, totalDays, name));
  const wrong = dates.find(isFault);
  if (wrong) return wrong;
  const found = dates as PhaseDates[];
  const days = found.map((date) => sure(daysAfter(sownOn, date.panicleInitiationOn)));
  return { dates: found, apartDays: Math.max(...days) - Math.min(...days) };
}
