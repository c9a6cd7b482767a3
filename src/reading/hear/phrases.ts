/** Phrases found by their first word, so that each place in a note costs one lookup. */
import type { Token } from '../text.ts';

export type PhraseIndex<T> = Map<string, { words: string[]; value: T }[]>;

export function indexPhrases<T>(phrases: readonly { words: string[]; value: T }[]): PhraseIndex<T> {
  const index: PhraseIndex<T> = new Map();
  for (const phrase of phrases) {
    const first = phrase.words[0];
    if (first === undefined) continue;
    const rows = index.get(first);
    if (rows) rows.push(phrase);
    else index.set(first, [phrase]);
  }
  return index;
}

/** Phrases that stand word for word at a place. A hyphen between two words of the note does not part them. */
export function phrasesAt<T>(
  index: PhraseIndex<T>,
  tokens: readonly Token[],
  at: number,
): { length: number; value: T }[] {
  const rows = index.get(tokens[at]!.lower);
  if (!rows) return [];
  return rows
    .filter(({ words }) => words.every((word, offset) => tokens[at + offset]?.lower === word))
    .map(({ words, value }) => ({ length: words.length, value }));
}
