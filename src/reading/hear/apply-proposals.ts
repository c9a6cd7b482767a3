import type { Heard } from '../record.ts';
import type { Token } from '../text.ts';
import { isOpen, type Proposal } from './hearing.ts';

/** Carries out the proposals from left to right, the longer first; one that overlaps an earlier one is dropped. */
export function applyProposals(
  tokens: readonly Token[],
  proposals: readonly Proposal[],
): { tokens: Token[]; heard: Heard[] } {
  const out: Token[] = [];
  const heard: Heard[] = [];
  let at = 0;
  for (const proposal of proposals
    .map((one) => narrowed(tokens, one))
    .sort((a, b) => a.from - b.from || b.to - a.to)) {
    if (proposal.from < at || !changes(tokens, proposal)) continue;
    for (const token of tokens.slice(at, proposal.from)) out.push(token);
    const said = tokens.slice(proposal.from, proposal.to);
    out.push(...readAs(said, proposal.meant));
    heard.push({
      said: writtenText(said),
      meant: proposal.meant.join(' '),
      why: proposal.why,
      start: said[0]!.start,
      end: said.at(-1)!.end,
    });
    at = proposal.to;
  }
  for (const token of tokens.slice(at)) out.push(token);
  return { tokens: out.map((token, index) => ({ ...token, index })), heard };
}

/** Without the words at either end that stand there already: `is for` read as `is four` changes one word. */
export function narrowed(tokens: readonly Token[], { from, to, meant, why }: Proposal): Proposal {
  if (meant.length !== to - from) return { from, to, meant, why };
  let first = 0;
  let last = meant.length;
  while (first < last && tokens[from + first]?.lower === meant[first]) first++;
  while (last > first && tokens[from + last - 1]?.lower === meant[last - 1]) last--;
  return { from: from + first, to: from + last, meant: meant.slice(first, last), why };
}

/** A hyphen less is no change. */
function changes(tokens: readonly Token[], { from, to, meant }: Proposal): boolean {
  if (to <= from || meant.length === 0 || !isOpen(tokens, from, to)) return false;
  const said = tokens.slice(from, to).flatMap(({ kind, lower }) => (kind === 'mark' ? [] : [lower]));
  return said.length !== meant.length || meant.some((word, at) => word !== said[at]);
}

/** Word for word where the counts agree; otherwise each word meant covers all that was said. */
function readAs(said: readonly Token[], meant: readonly string[]): Token[] {
  if (said.length === meant.length) return said.map((token, at) => ({ ...token, lower: meant[at]! }));
  const whole = { ...said[0]!, kind: 'word' as const, text: writtenText(said), end: said.at(-1)!.end };
  return meant.map((lower) => ({ ...whole, lower }));
}

/** The note's own words; the gap between two tokens is written as one space however wide it was. */
function writtenText(said: readonly Token[]): string {
  return said
    .map((token, at) => (at > 0 && said[at - 1]!.end < token.start ? ' ' : '') + token.text)
    .join('');
}
