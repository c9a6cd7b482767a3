/** One figure from plants sorted into classes. */
import { above0, eachOf, wholeCount } from '../check-number.ts';
import { type Fault, fault, firstFault } from '../fault.ts';

export type ScoreCounts = { [score in 1 | 3 | 5 | 7 | 9]?: number };

/** Panicle blast severity, %: (10N1 + 20N3 + 40N5 + 70N7 + 100N9) over panicles looked at. SES:31 in CO_320. */
export function panicleBlastSeverity(counts: ScoreCounts, panicles: number): number | Fault {
  return weighted(counts, { 1: 10, 3: 20, 5: 40, 7: 70, 9: 100 }, panicles, 'panicles');
}

/** Tungro index: (20N3 + 40N5 + 70N7 + 100N9) over plants looked at. SES:36 in CO_320. */
export function tungroIndex(counts: ScoreCounts, plants: number): number | Fault {
  return weighted(counts, { 3: 20, 5: 40, 7: 70, 9: 100 }, plants, 'plants');
}

/**
 * Sheath blight severity, %: 100 (3n1 + 2n2 + n3) over 3N. n1 tillers are the worst class, n4 without disease. Yoshimura, Ann.
 * Phytopath. Soc. Japan 19(1-2):58 (abstract).
 */
export function sheathBlightSeverity(
  counts: [n1: number, n2: number, n3: number, n4: number],
): number | Fault {
  const all = counts.reduce((sum, count) => sum + count, 0);
  const wrong = firstFault(eachOf(counts, 4, 'counts', wholeCount), above0(all, 'tillers looked at'));
  const [n1, n2, n3] = counts;
  return wrong ?? (100 * (3 * n1 + 2 * n2 + n3)) / (3 * all);
}

function weighted(
  counts: ScoreCounts,
  weights: Record<number, number>,
  all: number,
  what: string,
): number | Fault {
  const sorted = Object.entries(counts).map(([score, count]) => [Number(score), count ?? 0] as const);
  const numbers = sorted.map(([, count]) => count);
  const wrong = firstFault(
    eachOf(numbers, 0, 'counts', wholeCount),
    wholeCount(all, what),
    above0(all, what),
  );
  if (wrong) return wrong;
  const scored = numbers.reduce((sum, count) => sum + count, 0);
  if (scored > all) return fault(`${scored} scored of ${all} ${what} is more than all of them`);
  return sorted.reduce((sum, [score, count]) => sum + count * (weights[score] ?? 0), 0) / all;
}
