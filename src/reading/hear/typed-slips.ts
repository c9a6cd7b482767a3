/** Slips of the finger in trade words of typed notes: letters dropped, doubled, swapped; never a plain English word. */
import { type Hearing, isOpen, namesOf, type Proposal } from './hearing.ts';
import { isOrdinary } from './ordinary-words.ts';
import { isFieldWord, TRADE_SINGLES } from './sound-index.ts';

const SHORTEST = 6;
const LONGEST = 20;
/** From this length on two slips are still unmistakable. */
const TWO_SLIPS = 10;

const TARGETS = [...TRADE_SINGLES].filter((word) => word.length >= SHORTEST);

export function proposeSlips({ tokens, context }: Hearing): Proposal[] {
  const names = namesOf(context);
  return tokens.flatMap(({ lower, kind }, at) => {
    if (kind !== 'word' || lower.length < SHORTEST - 1 || lower.length > LONGEST) return [];
    if (!isOpen(tokens, at, at + 1) || names.has(lower) || isFieldWord(lower) || isOrdinary(lower)) return [];
    const meant = onlyNeighbour(lower);
    return meant === undefined
      ? []
      : [{ from: at, to: at + 1, meant: [meant], why: `a slip in writing "${meant}"` }];
  });
}

/** The one trade word within reach that begins alike; none where two compete, but for singular beside plural. */
function onlyNeighbour(word: string): string | undefined {
  let best: { target: string; slips: number } | undefined;
  let rival = false;
  for (const target of TARGETS) {
    if (target[0] !== word[0] || Math.abs(target.length - word.length) > 2) continue;
    const slips = slipsBetween(word, target);
    if (slips > (target.length >= TWO_SLIPS ? 2 : 1)) continue;
    if (!best || slips < best.slips) {
      best = { target, slips };
      rival = false;
    } else if (slips === best.slips) rival = true;
  }
  return rival ? undefined : best?.target;
}

/** Letters dropped, added, changed or swapped with their neighbour (Damerau's count, adjacent swaps). */
function slipsBetween(a: string, b: string): number {
  let before: number[] = [];
  let row = Array.from({ length: b.length + 1 }, (_, at) => at);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const changed = row[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1);
      let least = Math.min(changed, row[j]! + 1, next[j - 1]! + 1);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        least = Math.min(least, before[j - 2]! + 1);
      next.push(least);
    }
    before = row;
    row = next;
  }
  return row[b.length]!;
}
