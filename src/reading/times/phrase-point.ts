import { tokenise } from '../text.ts';
import { DAY_PHRASES, type DayPhrase } from './day-phrases.ts';
import { type Point, pastPartOfDay, type ReadPoint } from './point.ts';

interface Branch {
  row?: DayPhrase;
  next: Map<string, Branch>;
}

/** Rows by their first word, then their second: one look-up a word, however many rows there are. */
const ROOT: Branch = { next: new Map() };
for (const row of DAY_PHRASES) {
  for (const phrase of row.phrases) {
    let branch = ROOT;
    for (const token of tokenise(phrase)) {
      const key =
        branch === ROOT
          ? token.lower
          : keyOf(token.lower, token.index > 0 && token.start === lastEnd(phrase, token.start));
      branch = branch.next.get(key) ?? branch.next.set(key, { next: new Map() }).get(key) ?? branch;
    }
    branch.row ??= row;
  }
}

/** Words written in one (`2day`) are not the same as two words (`2 day`). */
function keyOf(word: string, touching: boolean): string {
  return touching ? `+${word}` : word;
}

function lastEnd(phrase: string, start: number): number {
  return phrase[start - 1] === ' ' ? -1 : start;
}

/** The longest fixed phrase that starts here: `this afternoon`, `day after tomorrow`, `early next week`. */
export const phrasePoint: ReadPoint = (context, at) => {
  const { tokens, day } = context;
  let branch: Branch | undefined = ROOT.next.get(tokens[at]?.lower ?? '');
  let found: { row: DayPhrase; last: number } | null = null;
  for (let index = at; branch; index++) {
    if (branch.row) found = { row: branch.row, last: index };
    const next = tokens[index + 1];
    if (!next) break;
    branch =
      branch.next.get(keyOf(next.lower, next.start === tokens[index]?.end)) ??
      (next.kind === 'mark' ? undefined : branch.next.get(next.lower));
  }
  if (!found) return null;
  const { row, last } = found;
  const point: Point = {
    last: pastPartOfDay(context, last),
    rule: row.rule,
    toCome: row.toCome?.(day) ?? null,
    done: row.done?.(day) ?? null,
  };
  return point;
};
