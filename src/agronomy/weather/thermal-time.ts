/**
 * Growing degree days. McMaster & Wilhelm 1997, Agric. For. Meteorol. 87:291-300: one equation, two readings, which differ
 * as soon as the lowest temperature is under the base. A figure without method, base and cap says nothing.
 */
import { type Fault, fault, firstFault, isFault } from '../fault.ts';
import { temperature } from './weather-limits.ts';

export interface ThermalRule {
  /** 1: the mean is raised to the base. 2: highest and lowest are each raised to the base first. */
  method: 1 | 2;
  baseC: number;
  /** Method 1 cuts the mean here, method 2 the extremes. How the paper caps is from memory: unconfirmed. */
  capC?: number;
}

export interface DayRange {
  maxC: number;
  minC: number;
}

/** Degree days of one day, C d. */
export function degreeDays({ maxC, minC }: DayRange, { method, baseC, capC }: ThermalRule): number | Fault {
  const cap = capC ?? Number.POSITIVE_INFINITY;
  const wrong = firstFault(
    temperature(maxC, 'highest temperature'),
    temperature(minC, 'lowest temperature'),
    temperature(baseC, 'base'),
    capC === undefined ? null : temperature(capC, 'cap'),
  );
  if (wrong) return wrong;
  if (maxC < minC) return fault(`the highest temperature (${maxC} C) is below the lowest (${minC} C)`);
  if (cap <= baseC) return fault(`the cap (${capC} C) must lie above the base (${baseC} C)`);
  const cut = (c: number): number => Math.min(cap, Math.max(baseC, c));
  return (method === 1 ? cut((maxC + minC) / 2) : (cut(maxC) + cut(minC)) / 2) - baseC;
}

export interface ThermalSum {
  degreeDaysC: number;
  days: number;
  /** `method 1, base 8 C, no cap`: to be printed with the figure. */
  rule: string;
}

export function degreeDaySum(days: readonly DayRange[], rule: ThermalRule): ThermalSum | Fault {
  let sum = 0;
  for (const [index, day] of days.entries()) {
    const one = degreeDays(day, rule);
    if (isFault(one)) return fault(`day ${index + 1}: ${one.fault}`);
    sum += one;
  }
  return { degreeDaysC: sum, days: days.length, rule: thermalRuleWords(rule) };
}

export function thermalRuleWords({ method, baseC, capC }: ThermalRule): string {
  const cap = capC === undefined ? 'no cap' : `cap ${capC} C (cap rule from memory)`;
  return `method ${method}, base ${baseC} C, ${cap}`;
}

export function celsiusFromFahrenheit(fahrenheit: number): number | Fault {
  const celsius = ((fahrenheit - 32) * 5) / 9;
  return temperature(celsius, 'temperature') ?? celsius;
}
