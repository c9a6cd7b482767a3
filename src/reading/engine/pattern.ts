/**
 * Patterns of rules. Parts are divided by spaces:
 * `word` any form of it, `=word` that form alone, `a|b` either, `{family}` a phrase of a word family,
 * `#` a number, `<plot>` a plot named in the text, `<time>` a time, `..4` up to four tokens of the same sentence,
 * `,` the mark itself; `?` after a part makes it optional.
 */
import { FAMILIES, type FamilyName } from '../lexicon/families.ts';
import type { Passage } from './passage.ts';
import { type PhraseTree, phrasesAt } from './phrase-tree.ts';

type Part =
  | { is: 'words'; words: ReadonlySet<string>; optional: boolean }
  | { is: 'family'; name: FamilyName; tree: PhraseTree<true>; optional: boolean }
  | { is: 'number' | 'plot' | 'time'; optional: boolean }
  | { is: 'gap'; most: number; optional: true };

export interface Pattern {
  source: string;
  parts: Part[];
  /** Words with which a match can start; null where it can start with a number, plot or time. */
  starts: ReadonlySet<string> | null;
}

/** Where each part matched: token indexes, last included; null where an optional part is missing. */
export interface Matched {
  first: number;
  last: number;
  spans: ({ first: number; last: number } | null)[];
}

/** One pattern, or several where a part mixes a family with words (`{gap}|in`). */
export function compilePattern(source: string): Pattern[] {
  return alternatives(source.trim().split(/\s+/)).map((texts) => {
    const parts = texts.map(compilePart);
    return { source, parts, starts: startsOf(parts) };
  });
}

function alternatives(texts: string[]): string[][] {
  const at = texts.findIndex((text) => text.includes('{') && text.includes('|'));
  if (at < 0) return [texts];
  const optional = texts[at]!.endsWith('?');
  const options = texts[at]!.replace(/\?$/, '').split('|');
  const words = options.filter((option) => !option.includes('{')).join('|');
  return [...options.filter((option) => option.includes('{')), ...(words ? [words] : [])].flatMap((option) =>
    alternatives([...texts.slice(0, at), optional ? `${option}?` : option, ...texts.slice(at + 1)]),
  );
}

function compilePart(text: string): Part {
  const optional = text.length > 1 && text.endsWith('?');
  const body = optional ? text.slice(0, -1) : text;
  if (body === '#') return { is: 'number', optional };
  if (body === '<plot>') return { is: 'plot', optional };
  if (body === '<time>') return { is: 'time', optional };
  if (/^\.\.\d+$/.test(body)) return { is: 'gap', most: Number(body.slice(2)), optional: true };
  if (body.startsWith('{')) {
    const name = body.slice(1, -1) as FamilyName;
    const tree = FAMILIES[name];
    if (!tree) throw new Error(`No word family called ${name} in pattern`);
    return { is: 'family', name, tree, optional };
  }
  return { is: 'words', words: new Set(body.split('|')), optional };
}

function startsOf(parts: Part[]): ReadonlySet<string> | null {
  const starts = new Set<string>();
  for (const part of parts) {
    if (part.is === 'words') for (const word of part.words) starts.add(word);
    else if (part.is === 'family') for (const word of part.tree.next.keys()) starts.add(word);
    else return null;
    if (!part.optional) return starts;
  }
  return starts;
}

export function matchAt(pattern: Pattern, passage: Passage, at: number): Matched | null {
  const spans: Matched['spans'] = [];
  const last = step(pattern.parts, 0, passage, at, at - 1, spans);
  return last === null ? null : { first: at, last, spans };
}

/** Longest families first, shortest gaps first. `spans` is filled on the way back from a match. */
function step(
  parts: Part[],
  index: number,
  passage: Passage,
  at: number,
  last: number,
  spans: Matched['spans'],
): number | null {
  const part = parts[index];
  if (!part) return last;
  if (part.is === 'gap') return stepGap(part.most, parts, index, passage, at, last, spans);
  if (at < passage.tokens.length && !passage.endsBefore(at, index === 0)) {
    for (const end of endsOf(part, passage, at)) {
      const reached = step(parts, index + 1, passage, passage.following[end]!, end, spans);
      if (reached !== null) {
        spans[index] = { first: at, last: end };
        return reached;
      }
    }
  }
  if (!part.optional) return null;
  const reached = step(parts, index + 1, passage, at, last, spans);
  if (reached !== null) spans[index] = null;
  return reached;
}

function stepGap(
  most: number,
  parts: Part[],
  index: number,
  passage: Passage,
  at: number,
  last: number,
  spans: Matched['spans'],
): number | null {
  let here = at;
  for (let skipped = 0; skipped <= most; skipped++) {
    const reached = step(parts, index + 1, passage, here, last, spans);
    if (reached !== null) {
      spans[index] = null;
      return reached;
    }
    if (here >= passage.tokens.length || passage.endsBefore(here, false)) return null;
    here = passage.following[here]!;
  }
  return null;
}

function endsOf(part: Exclude<Part, { is: 'gap' }>, passage: Passage, at: number): number[] {
  if (part.is === 'words') return passage.forms[at]!.some((form) => part.words.has(form)) ? [at] : [];
  if (part.is === 'family') return phrasesAt(part.tree, passage, at).map((found) => found.last);
  const found =
    part.is === 'number'
      ? passage.numberAt[at]
      : part.is === 'plot'
        ? passage.plotAt[at]
        : passage.timeAt[at];
  return found ? [found.last] : [];
}
