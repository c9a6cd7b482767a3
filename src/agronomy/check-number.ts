/** Checks of numbers that came from people or instruments. `what` names the number and its unit: `row spacing in cm`. */
import { type Fault, fault } from './fault.ts';

/** Nothing on a farm is measured larger, or above 0 and smaller; so no quotient of two checked numbers runs over. */
const LARGEST = 1e12;
const SMALLEST = 1e-9;

export function finite(value: number, what: string): Fault | null {
  if (!Number.isFinite(value)) return fault(`${what} must be a number, not ${value}`);
  return Math.abs(value) > LARGEST ? fault(`${what} cannot be as large as ${value}`) : null;
}

export function above0(value: number, what: string): Fault | null {
  return (
    finite(value, what) ?? (value >= SMALLEST ? null : fault(`${what} must be more than 0, not ${value}`))
  );
}

export function atLeast0(value: number, what: string): Fault | null {
  return finite(value, what) ?? (value >= 0 ? null : fault(`${what} must be 0 or more, not ${value}`));
}

/** Both ends count as inside. */
export function between(value: number, low: number, high: number, what: string): Fault | null {
  const inside = value >= low && value <= high;
  return (
    finite(value, what) ?? (inside ? null : fault(`${what} must be from ${low} to ${high}, not ${value}`))
  );
}

export function wholeCount(value: number, what: string): Fault | null {
  return (
    atLeast0(value, what) ??
    (Number.isInteger(value) ? null : fault(`${what} must be a whole number, not ${value}`))
  );
}

/** Every value passes `check`; at least `least` of them. `what` stands in the plural: `readings`. */
export function eachOf(
  values: readonly number[],
  least: number,
  what: string,
  check: (value: number, what: string) => Fault | null,
): Fault | null {
  if (values.length < least) return fault(`needs at least ${least} ${what}, not ${values.length}`);
  return (
    values.map((value, index) => check(value, `number ${index + 1} of the ${what}`)).find(Boolean) ?? null
  );
}
