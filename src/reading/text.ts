/**
 * Words of a note with their places in it. Nothing is changed here: `lower` starts as the token's own text in
 * lower case and may later be replaced by what was meant (see hear), while `start` and `end` always point into
 * the note as it was written.
 */
export interface Token {
  /** As it stands in the note. */
  text: string;
  /** Lower case, straight apostrophes; what the rules read. */
  lower: string;
  kind: 'word' | 'number' | 'mark';
  start: number;
  end: number;
  index: number;
  sentence: number;
}

/** A number, a word (apostrophes inside, digits after a letter: `T1R1`, `don't`), or one other visible mark. */
const TOKEN = /\d+(?:[.,]\d+)*|[\p{L}\p{M}][\p{L}\p{M}\d]*(?:['’][\p{L}\p{M}]+)*|[^\s\p{L}\p{M}\d]/gu;
const ENDS_SENTENCE = /^[.!?;…\n]$/;

/** Tokens in order; `6cm` is `6` `cm`, `25x20` is `25` `x` `20`, `North-1` is `North` `-` `1`. Linear in length. */
export function tokenise(text: string): Token[] {
  const tokens: Token[] = [];
  let sentence = 0;
  let last = 0;
  for (const match of text.matchAll(TOKEN)) {
    const start = match.index;
    const word = match[0];
    if (text.slice(last, start).includes('\n')) sentence++;
    const kind = /^\d/.test(word) ? 'number' : /^[\p{L}\p{M}]/u.test(word) ? 'word' : 'mark';
    last = start + word.length;
    tokens.push({
      text: word,
      lower: word.toLowerCase().replaceAll('’', "'"),
      kind,
      start,
      end: last,
      index: tokens.length,
      sentence,
    });
    if (ENDS_SENTENCE.test(word)) sentence++;
  }
  return tokens;
}
