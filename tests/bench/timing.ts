/** Times of one thing done again and again, in milliseconds; the first runs warm up and do not count. */
export async function timesOf(
  runs: number,
  warmUp: number,
  what: (n: number) => Promise<unknown> | unknown,
): Promise<number[]> {
  const times: number[] = [];
  for (let n = 0; n < runs + warmUp; n++) {
    const from = performance.now();
    await what(n);
    if (n >= warmUp) times.push(performance.now() - from);
  }
  return times;
}

const quantile = (times: number[], share: number): number => {
  const sorted = [...times].sort((a, b) => a - b);
  return Math.round(sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))]! * 100) / 100;
};

export const medianOf = (times: number[]): number => quantile(times, 0.5);
export const p95Of = (times: number[]): number => quantile(times, 0.95);
