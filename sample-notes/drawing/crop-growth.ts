/** How a hill looks at an age; sizes are plausible for a 118-day variety (common practice), for drawing only. */
export interface Growth {
  leaves: number;
  leafLengthCm: number;
  heightCm: number;
  /** Share of stems that show a panicle, 0 to 1. */
  headed: number;
}

const BY_DAY: readonly (readonly [day: number, leaves: number, leafLengthCm: number, heightCm: number])[] = [
  [0, 6, 9, 16],
  [5, 8, 10, 18],
  [10, 12, 13, 24],
  [16, 18, 17, 31],
  [26, 30, 23, 46],
  [37, 42, 28, 64],
  [51, 50, 33, 84],
  [65, 52, 34, 98],
  [75, 50, 34, 100],
];

/** `day` after transplanting; `vigour` is 1 for a well-fed crop, about 0.6 without nitrogen. */
export function growthAt(day: number, vigour: number, headed = 0): Growth {
  const next = Math.max(
    1,
    BY_DAY.findIndex((row) => row[0] >= day),
  );
  const [fromDay, ...from] = BY_DAY[next - 1]!;
  const [toDay, ...to] = BY_DAY[next]!;
  const share = (day - fromDay) / (toDay - fromDay);
  const at = (column: 0 | 1 | 2) => from[column] + share * (to[column] - from[column]);
  const stature = 0.55 + 0.45 * vigour;
  return {
    leaves: Math.round(at(0) * vigour),
    leafLengthCm: at(1) * stature,
    heightCm: at(2) * stature,
    headed,
  };
}
