/** Tells a plot that is only mentioned, to compare with or to point at, from one that is spoken of. */
import type { Token } from '../text.ts';
import type { PlotFound } from './find-plots.ts';

const PASSING_BEFORE = new Set([
  'than',
  'like',
  'as',
  'vs',
  'v',
  'versus',
  'against',
  'unlike',
  'with',
  'near',
  'beside',
  'opposite',
  'toward',
  'towards',
  'behind',
  'past',
  'outyields',
  'beats',
  'ahead of',
  'from',
]);
const PASSING_PAIRS = new Set([
  'compared to',
  'same as',
  'next to',
  'compare to',
  'compared with',
  'ahead of',
  'behind in',
  'close to',
  'side of',
  'than in',
  'than on',
  'as in',
  'like in',
  'not in',
  'way to',
  'road to',
  'relative to',
  'similar to',
  'than the',
  'like the',
  'as the',
  'against the',
  'out yields',
  'ahead of',
  'edge of',
]);

export function markRoles(tokens: Token[], found: PlotFound[]): PlotFound[] {
  return found.map((one) => {
    let at = one.first - 1;
    while (['the', 'that', 'our', 'those'].includes(tokens[at]?.lower ?? '')) at--;
    const word = tokens[at]?.lower ?? '';
    const _behindThan = [1, 2, 3, 4].some(
      (back) =>
        tokens[one.first - back]?.lower === 'than' &&
        tokens.slice(one.first - back, one.first).every(({ kind }) => kind === 'word'),
    );
    const pair = `${tokens[at - 1]?.lower ?? ''} ${word}`;
    const passing = PASSING_PAIRS.has(pair) || (PASSING_BEFORE.has(word) && !isOpeningFrom(tokens, at, word));
    return passing && !(one.codes.length > 1 && word === 'from') ? { ...one, role: 'passing' as const } : one;
  });
}

/** `water comes from B2`, `seed from C1`: where something comes from; else one speaks of the plot itself. */
const COMES_FROM =
  /^(comes?|came|coming|spread|spreading|drift|drifted|drifting|drains?|leaks?|leaking|seeps?|seeping|runs?|running|ran|moved?|moving|different|over|in|back|seed|seeds|seedlings?|away|far|differs?|blown|washed|rats|metres?|meters?|steps|apart|across|borrowed|hoppers|drift|smell)$/;

/** `starting from T1R1`, `with B2 done`: the walk goes there. */
const isOpeningFrom = (tokens: Token[], at: number, word: string): boolean =>
  (word === 'from' && !COMES_FROM.test(tokens[at - 1]?.lower ?? '')) ||
  (word === 'with' &&
    (at === 0 || /^(start|starting|started|begin|beginning|began)$/.test(tokens[at - 1]?.lower ?? ''))) ||
  (word === 'v' && one(tokens, at));

const one = (tokens: Token[], at: number): boolean => tokens[at - 1] === undefined;
