import type { Token } from '../text.ts';
import { soundKeys } from './sound.ts';

export interface Clues {
  /** The words that fix the place, where the row holds them itself: `leaf color is for`. */
  frame?: string;
  before?: string;
  after?: string;
  near?: string;
  anywhere?: string;
}

/** `sounds like "bund" (PNT / PNT), stands after "the", near "leaking"`: keys of what was said and of what was meant. */
export function evidence(said: readonly Token[], meant: readonly string[], clues: Clues): string {
  const keys = [textOf(said), meant.join(' ')].map((words) => soundKeys(words.replaceAll(' ', ''))[0]);
  const parts = [`sounds like "${meant.join(' ')}" (${keys.join(' / ')})`];
  if (clues.frame !== undefined) parts.push(`in "${clues.frame}"`);
  if (clues.before !== undefined) parts.push(`stands after ${quoted(clues.before)}`);
  if (clues.after !== undefined) parts.push(`stands before ${quoted(clues.after)}`);
  if (clues.near !== undefined) parts.push(`near "${clues.near}"`);
  if (clues.anywhere !== undefined) parts.push(`"${clues.anywhere}" in the same note`);
  return parts.join(', ');
}

export const textOf = (tokens: readonly Token[]): string => tokens.map((token) => token.lower).join(' ');

/** Places (`the beginning`) stand bare, words in quotes. */
const quoted = (clue: string): string =>
  clue === 'the beginning' || clue === 'the end' ? clue : `"${clue}"`;
