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

/** Phrases that stand word for word at a place, with the tokens that each covers. */
export function phrasesAt<T>(
  index: PhraseIndex<T>,
  tokens: readonly Token[],
  at: number,
): { to: number; value: T }[] {
  const found: { to: number; value: T }[] = [];
  for (const { words, value } of index.get(tokens[at]!.lower) ?? []) {
    const to = endOf(words, tokens, at);
    if (to !== undefined) found.push({ to, value });
  }
  return found;
}

function endOf(words: readonly string[], tokens: readonly Token[], at: number): number | undefined {
  let place: number | undefined = at;
  let last = at;
  for (const word of words) {
    if (place === undefined || tokens[place]!.lower !== word) return undefined;
    last = place;
    place = nextWord(tokens, place);
  }
  return last + 1;
}

/** The word after one, over a hyphen written without spaces (`stem-borer`), never over another mark. */
export function nextWord(tokens: readonly Token[], at: number): number | undefined {
  const next = tokens[at + 1];
  if (!next) return undefined;
  if (next.kind !== 'mark') return at + 1;
  const over = tokens[at + 2];
  const joined = next.lower === '-' && next.start === tokens[at]!.end && over?.start === next.end;
  return joined && over.kind !== 'mark' ? at + 2 : undefined;
}
