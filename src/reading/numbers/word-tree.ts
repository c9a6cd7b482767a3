import { type Token, tokenise } from '../text.ts';

/** Phrases by their first word, then their second: one look-up a word, however many rows there are. */
export interface WordTree<T> {
  value?: T;
  next: Map<string, WordTree<T>>;
}

/** The first row that holds a phrase keeps it. */
export function treeOf<T>(rows: Iterable<readonly [phrase: string, value: T]>): WordTree<T> {
  const root: WordTree<T> = { next: new Map() };
  for (const [phrase, value] of rows) {
    let branch = root;
    for (const { lower } of tokenise(phrase)) {
      const next: WordTree<T> = branch.next.get(lower) ?? { next: new Map() };
      branch.next.set(lower, next);
      branch = next;
    }
    branch.value ??= value;
  }
  return root;
}

/** The longest phrase that starts at token `at`, and its last token. */
export function longestAt<T>(
  tree: WordTree<T>,
  tokens: Token[],
  at: number,
): { value: T; last: number } | null {
  let found: { value: T; last: number } | null = null;
  let branch = tree.next.get(tokens[at]?.lower ?? '');
  for (let index = at; branch; index++) {
    if (branch.value !== undefined) found = { value: branch.value, last: index };
    branch = branch.next.get(tokens[index + 1]?.lower ?? '');
  }
  return found;
}

/** `row('a, b', 1)`: the phrases of a comma list, each with the value. */
export const phrasesOf = <T>(list: string, value: T): [string, T][] =>
  list.split(',').map((phrase) => [phrase.trim(), value]);
