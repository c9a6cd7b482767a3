import { tokenise } from '../text.ts';
import type { Hearing, Proposal } from './hearing.ts';
import { indexPhrases, type PhraseIndex, phrasesAt } from './phrases.ts';

/** A farm's own mishearings apply wherever they stand; they are that farm's decision. */
export function proposeFarmWords({ tokens, context }: Hearing): Proposal[] {
  if (context.farmWords.mishearings.length === 0) return [];
  const index: PhraseIndex<string[]> = indexPhrases(
    context.farmWords.mishearings.map(({ said, meant }) => ({ words: wordsOf(said), value: wordsOf(meant) })),
  );
  return tokens.flatMap((_, at) =>
    phrasesAt(index, tokens, at).map(({ to, value }) => ({
      from: at,
      to,
      meant: value,
      why: "among this farm's own words",
    })),
  );
}

const wordsOf = (text: string): string[] => tokenise(text).map((token) => token.lower);
