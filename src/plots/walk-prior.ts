/** PURE. How likely the walker was in each plot at a moment, from the notes before and after it and the order of the walk. */
export interface Seen {
  /** Local wall time, `YYYY-MM-DDTHH:MM`. */
  at: string;
  plot: string;
}

/** Notes further away than this say nothing about where somebody stood (common practice: a walk goes on). */
const MOST_MINUTES = 20;

/**
 * Weight of each plot at `at`: highest at the place in the walking order that lies between the nearest notes,
 * falling by half with each plot away from it. All alike where no note is near.
 */
export function walkPrior(at: string, seen: Seen[], walkingOrder: string[]): (code: string) => number {
  const place = new Map(walkingOrder.map((code, index) => [code, index]));
  const near = seen
    .map(({ at: time, plot }) => ({ minutes: minutesBetween(at, time), place: place.get(plot) }))
    .filter(
      (one): one is { minutes: number; place: number } =>
        one.place !== undefined && Math.abs(one.minutes) <= MOST_MINUTES,
    );
  const before = near.filter(({ minutes }) => minutes <= 0).sort((a, b) => b.minutes - a.minutes)[0];
  const after = near.filter(({ minutes }) => minutes > 0).sort((a, b) => a.minutes - b.minutes)[0];
  if (!before && !after) return () => 1;
  const expected = between(before ?? after!, after ?? before!);
  return (code) => {
    const index = place.get(code);
    return index === undefined ? 0.05 : 0.5 ** Math.abs(index - expected);
  };
}

/** The plot in which both the note before and the note after stand, when both are near; else null. */
export function betweenTwoNotesOf(at: string, seen: Seen[]): string | null {
  const near = seen
    .map(({ at: time, plot }) => ({ minutes: minutesBetween(at, time), plot }))
    .filter(({ minutes }) => Math.abs(minutes) <= MOST_MINUTES);
  const before = near.filter(({ minutes }) => minutes <= 0).sort((a, b) => b.minutes - a.minutes)[0];
  const after = near.filter(({ minutes }) => minutes >= 0).sort((a, b) => a.minutes - b.minutes)[0];
  return before && after && before.plot === after.plot ? before.plot : null;
}

interface Near {
  minutes: number;
  place: number;
}
const between = (before: Near, after: Near): number => {
  const span = after.minutes - before.minutes;
  return span === 0 ? before.place : before.place + ((after.place - before.place) * -before.minutes) / span;
};

const minutesBetween = (from: string, to: string): number =>
  (Date.parse(`${to.slice(0, 16)}Z`) - Date.parse(`${from.slice(0, 16)}Z`)) / 60_000;
