/** Where the text divides: sentences, clauses, list items. */
import type { PlotFound } from '../plots/find-plots.ts';
import type { Token } from '../text.ts';

const ABBREVIATED = new Set('mr mrs ms dr no vs st approx ca etc prof jr sr fig'.split(' '));
const CONTRAST = new Set(
  'but however though although tho except otherwise whereas while yet instead'.split(' '),
);
const RESTART = new Set('okay ok anyway anyways alright um uh right also'.split(' '));
const OPENS_CLAUSE_AFTER_AND = new Set(
  "i we he she they it the that then there you i'll we'll i'm we're let let's".split(' '),
);

/** 3 before a new sentence, 2 before a clause with a subject of its own, 1 before a list item; see Passage. */
export function findWalls(tokens: Token[], plots: PlotFound[], dictated: boolean): Uint8Array {
  const walls = new Uint8Array(tokens.length);
  for (let at = 1; at < tokens.length; at++) walls[at] = wallBefore(tokens, at, dictated);
  for (const plot of plots) {
    if (plot.role === 'subject' && plot.first > 0 && opensSubject(tokens, plot.first))
      walls[plot.first] = Math.max(walls[plot.first]!, 2);
  }
  return walls;
}

/** A plot after `in`, `of`, `on` belongs to the clause that runs. */
export const opensSubject = (tokens: Token[], at: number): boolean =>
  !/^(in|of|on|at|for|from|to|into|over|across|both|the|through|with|by|between|outta|off|thru|onto|out|near|along|throughout|inside|within|around)$/.test(
    tokens[at - 1]?.lower ?? '',
  ) ||
  (tokens[at - 1]?.lower === 'the' && opensSubject(tokens, at - 1));

function wallBefore(tokens: Token[], at: number, dictated: boolean): number {
  const before = tokens[at - 1]!;
  const token = tokens[at]!;
  if (before.kind === 'mark') {
    if (/^[.!?…]$/.test(before.text)) return isAbbreviation(tokens, at - 1) ? 0 : 3;
    if (before.text === ';' || before.text === '—' || before.text === '–') return 2;
    if (before.text === '-' && before.start > (tokens[at - 2]?.end ?? 0) && token.start > before.end)
      return 2;
    if (before.text === ',' || before.text === ':' || before.text === '(' || before.text === ')')
      return (
        1 +
        Number(
          CONTRAST.has(token.lower) ||
            (before.text === ',' && /^(since|because|which|who|where|if|when|so)$/.test(token.lower)),
        )
      );
  }
  if (token.sentence !== before.sentence || before.text === 'STOP') return 3;
  const word = token.lower;
  if (CONTRAST.has(word)) return 2;
  if (word === 'so')
    return /^(far|that|much|many|good|bad|so|dry|wet|thick|yeah)$/.test(tokens[at + 1]?.lower ?? '') ? 0 : 2;
  if (word === 'and' || word === 'plus' || word === '&')
    return OPENS_CLAUSE_AFTER_AND.has(tokens[at + 1]?.lower ?? '') ? 2 : 1;
  if (/^(because|cuz|coz|bc)$/.test(word)) return 2;
  if (word === 'then') return 1;
  if (dictated && RESTART.has(word)) return 2;
  return 0;
}

const isAbbreviation = (tokens: Token[], at: number): boolean =>
  ABBREVIATED.has(tokens[at - 1]?.lower ?? '') &&
  tokens[at + 1] !== undefined &&
  (tokens[at - 1]?.lower !== 'no' || tokens[at + 1]!.kind === 'number');

/** Running counts of walls, so that `is there one between` is one subtraction. */
export function countWalls(walls: Uint8Array): {
  comma: Int32Array;
  clause: Int32Array;
  sentence: Int32Array;
} {
  const comma = new Int32Array(walls.length + 1);
  const clause = new Int32Array(walls.length + 1);
  const sentence = new Int32Array(walls.length + 1);
  for (let at = 0; at < walls.length; at++) {
    comma[at] = (comma[at - 1] ?? 0) + Number(walls[at]! >= 1);
    clause[at] = (clause[at - 1] ?? 0) + Number(walls[at]! >= 2);
    sentence[at] = (sentence[at - 1] ?? 0) + Number(walls[at]! >= 3);
  }
  return { comma, clause, sentence };
}
