/** Threshold between two heaps of a histogram: Otsu 1979, IEEE Trans. SMC 9:62-66. */

export interface OtsuSplit {
  /** First level that belongs to the upper class; 0 where there is only one level and nothing to part. */
  firstUpper: number;
  /** Variances in levels squared; within and between add up to the total. */
  within: number;
  between: number;
  total: number;
  lower: LevelClass;
  upper: LevelClass;
}

export interface LevelClass {
  /** Share of all, 0 to 1. */
  share: number;
  mean: number;
  variance: number;
}

/** `counts[level]` pixels a level. The split with the least variance within its two classes. */
export function otsuSplit(counts: ArrayLike<number>): OtsuSplit {
  const all = sumsOf(counts);
  let best = splitAt(0, noPixels, all);
  const below = { ...noPixels };
  for (let level = 0; level + 1 < counts.length; level++) {
    add(below, level, counts[level]!);
    const split = splitAt(level + 1, below, all);
    if (split.between > best.between) best = split;
  }
  return best;
}

/** Variance within the classes if `firstUpper` parts them; for looking at a threshold that is not the best one. */
export function withinVariance(counts: ArrayLike<number>, firstUpper: number): number {
  const below = { ...noPixels };
  for (let level = 0; level < firstUpper; level++) add(below, level, counts[level]!);
  return splitAt(firstUpper, below, sumsOf(counts)).within;
}

interface Sums {
  pixels: number;
  levels: number;
  squares: number;
}

const noPixels: Sums = { pixels: 0, levels: 0, squares: 0 };

function sumsOf(counts: ArrayLike<number>): Sums {
  const sums = { ...noPixels };
  for (let level = 0; level < counts.length; level++) add(sums, level, counts[level]!);
  return sums;
}

function add(sums: Sums, level: number, count: number): void {
  sums.pixels += count;
  sums.levels += count * level;
  sums.squares += count * level * level;
}

function splitAt(firstUpper: number, below: Sums, all: Sums): OtsuSplit {
  const lower = classOf(below, all.pixels);
  const upper = classOf(
    {
      pixels: all.pixels - below.pixels,
      levels: all.levels - below.levels,
      squares: all.squares - below.squares,
    },
    all.pixels,
  );
  const within = lower.share * lower.variance + upper.share * upper.variance;
  const between = lower.share * upper.share * (upper.mean - lower.mean) ** 2;
  return { firstUpper, within, between, total: classOf(all, all.pixels).variance, lower, upper };
}

function classOf({ pixels, levels, squares }: Sums, allPixels: number): LevelClass {
  if (pixels === 0) return { share: 0, mean: 0, variance: 0 };
  const mean = levels / pixels;
  return { share: pixels / allPixels, mean, variance: Math.max(0, squares / pixels - mean * mean) };
}
