/** What a calculation answers when it cannot be done: words that say what was wrong. Never NaN, never an exception. */
export interface Fault {
  fault: string;
}

export const fault = (words: string): Fault => ({ fault: words });

export function isFault(value: unknown): value is Fault {
  return typeof value === 'object' && value !== null && 'fault' in value;
}

/** The first of several checks that found something wrong; null when all passed. */
export function firstFault(...checks: (Fault | null)[]): Fault | null {
  return checks.find((check) => check !== null) ?? null;
}

/** Unwraps a step whose inputs were checked before it; a fault here is a mistake in the code, so it throws. */
export function sure<T>(value: T | Fault): T {
  if (isFault(value)) throw new Error(value.fault);
  return value;
}
