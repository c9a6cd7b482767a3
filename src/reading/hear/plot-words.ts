/** Letters and figures of the note's own plots, spoken: `bee two`, `tea two are one`, `K for`, `north won`. */
import type { PlotNamed } from '../record.ts';
import type { Token } from '../text.ts';
import { type Hearing, isOpen, type Proposal } from './hearing.ts';
import { letterOf } from './spelled-letters.ts';

const FIGURES: Record<string, string> = {
  won: 'one',
  one: 'one',
  to: 'two',
  too: 'two',
  two: 'two',
  tree: 'three',
  free: 'three',
  three: 'three',
  for: 'four',
  fore: 'four',
  four: 'four',
  five: 'five',
  six: 'six',
  seven: 'seven',
  ate: 'eight',
  eight: 'eight',
  nine: 'nine',
  ten: 'ten',
  eleven: 'eleven',
  twelve: 'twelve',
};
const DIGITS = [
  'zero',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
];

/** Small words that are figures only where they cannot stand as themselves. */
const DOUBTFUL = new Set(['to', 'too', 'for', 'tree', 'free', 'fore', 'ate', 'won']);
/** What follows a plot's name but no `to` or `for`. */
const FOLLOWS = new Set(
  'is was are has had have needs need looks look shows showing got and but no not still heading flowering booting ripe milk all they it we i'.split(
    ' ',
  ),
);
/** Words before which a letter's name is that word itself: `a bee`, `we see`. */
const TAKES_THE_WORD = new Set(
  'a an the some this that my your of drink for we i you they can could to will would she he must'.split(' '),
);

/** Codes and names of the note's plots as the words in which they are spoken. */
export function proposePlotWords({ tokens, context }: Hearing): Proposal[] {
  const plots = context.plots.flatMap(spokenForms);
  if (plots.length === 0) return [];
  return tokens.flatMap((_, at) => {
    for (const { parts, name } of plots) {
      const meant = readAs(tokens, at, parts);
      if (meant)
        return [{ from: at, to: at + parts.length, meant, why: `can only be the name of plot ${name}` }];
    }
    return [];
  });
}

interface Spoken {
  parts: string[];
  name: string;
}

/** `T2R1` is spoken `t two r one`, `North-1` `north one`; only forms that hold a letter or word and a figure. */
function spokenForms({ code, names }: PlotNamed): Spoken[] {
  return [code, ...names]
    .map((name) => ({
      parts: (name.toLowerCase().match(/\d+|\p{L}+/gu) ?? []).map(spokenFigure),
      name: code,
    }))
    .filter(({ parts }) => parts.length >= 2 && isFigure(parts.at(-1)!) && !isFigure(parts[0]!));
}

const spokenFigure = (part: string): string => DIGITS[Number(part)] ?? part;
const isFigure = (word: string): boolean => DIGITS.includes(word);

function readAs(tokens: readonly Token[], at: number, parts: readonly string[]): string[] | undefined {
  if (at + parts.length > tokens.length) return undefined;
  for (let offset = 0; offset < parts.length; offset++)
    if (!soundsAs(tokens[at + offset]!, parts[offset]!)) return undefined;
  if (!isOpen(tokens, at, at + parts.length)) return undefined;
  const said = tokens.slice(at, at + parts.length).map((token) => token.lower);
  return isPlain(tokens, at, said, parts) ? [...parts] : undefined;
}

const soundsAs = ({ lower, kind }: Token, part: string): boolean =>
  kind !== 'mark' &&
  (lower === part || (part.length === 1 ? letterOf(lower) === part : FIGURES[lower] === part));

/**
 * A bare letter cannot stand alone, so any figure may follow it; the name of a letter or a word of the plot's name
 * can, and then a small word must be out of place.
 */
function isPlain(
  tokens: readonly Token[],
  at: number,
  said: readonly string[],
  parts: readonly string[],
): boolean {
  const bareLetter = /^[b-hj-z]$/.test(said[0]!);
  if (!bareLetter && TAKES_THE_WORD.has(tokens[at - 1]?.lower ?? '')) return false;
  if (bareLetter || said.length > 2 || !DOUBTFUL.has(said.at(-1)!)) return true;
  const next = tokens[at + parts.length];
  return next === undefined || next.kind === 'mark' || FOLLOWS.has(next.lower);
}
