/**
 * Reads misheard trade words as what was meant. Sound proposes, the words around decide, and every change carries
 * its evidence. Where the two do not agree the note stays as it is.
 */
import type { Heard } from '../record.ts';
import type { Token } from '../text.ts';
import { applyProposals } from './apply-proposals.ts';
import { proposeFarmWords } from './farm-words.ts';
import { type HearContext, type Hearing, hearingOf, type Proposal } from './hearing.ts';
import { KNOWN_MISHEARINGS } from './known-mishearings.ts';
import { indexRows, proposeByRows } from './mishearing-rows.ts';
import { proposePlotWords } from './plot-words.ts';
import { SMALL_WORDS } from './small-words.ts';
import { proposeBySound } from './sound-search.ts';
import { proposeLetters } from './spelled-letters.ts';
import { proposeByTerm } from './term-search.ts';
import { proposeSlips } from './typed-slips.ts';

const KNOWN = indexRows(KNOWN_MISHEARINGS);
const SMALL = indexRows(SMALL_WORDS);

export type { HearContext };

type Pass = (hearing: Hearing) => Proposal[];

/** In the order of trust: a farm's own words, attested mishearings, small words, then the search by sound. */
const DICTATED: readonly Pass[] = [
  proposeFarmWords,
  proposePlotWords,
  proposeLetters,
  (hearing) => proposeByRows(KNOWN, hearing),
  proposeByTerm,
  proposeBySound,
  (hearing) => proposeByRows(SMALL, hearing),
];
const TYPED: readonly Pass[] = [proposeFarmWords, proposeSlips];

/** A change can bring the evidence for the next (`nay weeds` after `weed is`); more rounds were never needed. */
const MOST_ROUNDS = 6;

/**
 * Tokens with `lower` as it was meant, renumbered, offsets still those of the note, and the list of changes in the
 * order of the text. Words already changed are left alone, so that a second hearing changes nothing. Never throws.
 */
export function hear(tokens: Token[], context: HearContext): { tokens: Token[]; heard: Heard[] } {
  const passes = context.channel === 'dictated' ? DICTATED : TYPED;
  const heard: Heard[] = [];
  let current = tokens.map((token, index) => ({ ...token, index }));
  for (let round = 0; round < MOST_ROUNDS; round++) {
    let changes = 0;
    for (const pass of passes) {
      const result = applyProposals(current, pass(hearingOf(current, context)));
      current = result.tokens;
      changes += result.heard.length;
      for (const one of result.heard) heard.push(one);
    }
    if (changes === 0) break;
  }
  return { tokens: current, heard: heard.sort((a, b) => a.start - b.start) };
}
