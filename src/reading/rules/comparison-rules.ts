/** One plot held against another: a comparative, the plot that is spoken of, and the plot behind `than`. */

import { type Passage, wallBetween } from '../engine/passage.ts';
import { addPhrases, emptyTree, phrasesAt } from '../engine/phrase-tree.ts';
import { within } from '../engine/within.ts';
import { ABOUT_ANYTHING, BESIDE, COMPARATIVES, NEEDS_A_THING } from '../lexicon/comparatives.ts';
import { plotsOf } from '../plots/settle-plots.ts';
import type { Attribute } from '../record.ts';
import type { ComparisonMention } from './mentions.ts';

interface Meaning {
  attribute: Attribute;
  more: boolean;
}
const TREE = emptyTree<Meaning>();
const OPEN: Readonly<Record<'more' | 'less', Meaning>> = {
  more: { attribute: 'vigour', more: true },
  less: { attribute: 'vigour', more: false },
};
for (const { attribute, more, less } of COMPARATIVES) {
  addPhrases(TREE, more.replaceAll(/ \.\.\d\?/g, ''), { attribute, more: true });
  addPhrases(TREE, less.replaceAll(/ \.\.\d\?/g, ''), { attribute, more: false });
}
addPhrases(TREE, NEEDS_A_THING.more, OPEN.more);
addPhrases(TREE, NEEDS_A_THING.less, OPEN.less);

const DIRECT = /^(outyields|outyielded|outyield|beats|beat)$/;
const BARE = /^(ahead|behind|later|earlier|sooner)$/;

export function findComparisons(passage: Passage): ComparisonMention[] {
  if (passage.plots.length === 0) return [];
  const found: ComparisonMention[] = [];
  for (let at = 0; at < passage.tokens.length; at++) {
    const hit = phrasesAt(TREE, passage, at)[0];
    if (!hit || passage.plotOver[at] || isDenied(passage, at)) continue;
    const mention = compare(passage, at, hit.last, hit.meanings);
    if (
      mention &&
      !found.some(
        (one) =>
          one.attribute === mention.attribute && one.more === mention.more && one.less === mention.less,
      )
    )
      found.push(mention);
    at = hit.last;
  }
  return found;
}

const isDenied = (passage: Passage, at: number): boolean =>
  /^(no|not|any|isn't|n't|never|if)$/.test(passage.tokens[at - 1]?.lower ?? '');

function compare(
  passage: Passage,
  first: number,
  last: number,
  meanings: Meaning[],
): ComparisonMention | null {
  const other = otherPlot(passage, first, last);
  if (!other) return null;
  const meaning = meantOf(passage, first, last, meanings);
  if (!meaning) return null;
  const spoken = subjectOf(passage, first, other.codes);
  if (!spoken || spoken === other.codes[0]) return null;
  const [more, less] = meaning.more ? [spoken, other.codes[0]!] : [other.codes[0]!, spoken];
  return {
    is: 'comparison',
    attribute: meaning.attribute,
    more,
    less,
    first,
    last: Math.max(last, other.last),
    rule: `compared-${meaning.attribute.replaceAll('_', '-')}`,
  };
}

/** `better` alone is vigour, `better in colour` colour, `the straw is weaker` strength; `lower` alone is nothing. */
function meantOf(passage: Passage, first: number, last: number, meanings: Meaning[]): Meaning | null {
  const meaning = meanings[0]!;
  const needsThing = meaning === OPEN.more || meaning === OPEN.less;
  if (first !== last || !ABOUT_ANYTHING.test(passage.tokens[first]!.lower))
    return needsThing ? null : meaning;
  const thing = thingBeside(passage, first);
  if (thing) return { attribute: thing, more: meaning.more };
  return needsThing ? null : meaning;
}

function thingBeside(passage: Passage, at: number): Attribute | null {
  for (const near of [at + 1, at - 1, at - 2, at + 2, at + 3, at - 3, at - 4, at - 5, at - 6]) {
    const thing = BESIDE[passage.tokens[near]?.lower ?? ''];
    if (thing && wallBetween(passage, Math.min(near, at), Math.max(near, at)) < 2) return thing;
  }
  return null;
}

interface Other {
  codes: string[];
  last: number;
}

/** Behind `than`, `of`, `to` within a few words; or, for `ahead` and its like, the plot of the sentence before. */
function otherPlot(passage: Passage, first: number, last: number): Other | null {
  let linked = DIRECT.test(passage.tokens[last]!.lower) || passage.tokens[first]!.lower === 'out';
  for (let at = last + 1; at < passage.tokens.length && at <= last + 12 && passage.walls[at]! < 3; at++) {
    const plot = passage.plotAt[at];
    if (plot && linked && plot.codes.length === 1) return { codes: plot.codes, last: plot.last };
    const word = passage.tokens[at]!.lower;
    if (
      /^(than|behind|vs|versus|against)$/.test(word) ||
      (/^(to|of|over|then)$/.test(word) && at <= last + 2) ||
      (at === last + 1 && plot && /^(behind|ahead)$/.test(passage.tokens[last]!.lower))
    )
      linked = true;
    if (plot && /^(behind|ahead)$/.test(passage.tokens[last]!.lower))
      return { codes: plot.codes, last: plot.last };
    if (plot && !linked && (!thanBehind(passage, plot.last) || plot.codes.length > 1))
      return isPredicate(passage, first, last) ? pairedPlot(passage, first, last) : null;
  }
  if (isOfTheTwo(passage, last)) return pairedPlot(passage, first, last);
  return (
    (isPair(passage, first, last) ? earlierPlot(passage, first, last) : null) ??
    (isPredicate(passage, first, last) ? pairedPlot(passage, first, last) : null)
  );
}

const isOfTheTwo = (passage: Passage, last: number): boolean =>
  passage.tokens
    .slice(last + 1, last + 4)
    .map(({ lower }) => lower)
    .join(' ') === 'of the two';

/** `R2 is greener`, `its straw being weaker`, where two plots and no third are spoken of; not `it is better now`. */
function isPredicate(passage: Passage, first: number, last: number): boolean {
  const word = passage.tokens[first]!.lower;
  if (
    /^(better|worse|faster|smaller|bigger|slower|later|sooner|quicker|ahead|behind)$/.test(word) &&
    first === last &&
    !thingBeside(passage, first)
  )
    return false;
  if (/^(now|since|again|than|every|each)$/.test(passage.tokens[last + 1]?.lower ?? '')) return false;
  return (
    [1, 2, 3].some((back) =>
      /^(is|are|was|were|being|looks?|stands?|has|have|also|seems?|came|'s)$|'s$/.test(
        passage.tokens[first - back]?.lower ?? '',
      ),
    ) && !/^(getting|get|gets|got|still)$/.test(passage.tokens[first - 1]?.lower ?? '')
  );
}

const NEAR = 40;

/** The other one of two plots, where the text nearby speaks of two and no third. */
function pairedPlot(passage: Passage, first: number, last: number): Other | null {
  const spoken = plotsOf(passage, first, last);
  const near = within(passage.plots, first - NEAR, first + 8).filter((plot) => plot.codes.length <= 2);
  const codes = [...new Set(near.flatMap((plot) => plot.codes))];
  const other = codes.find((code) => code !== spoken.codes[0]);
  return codes.length === 2 && spoken.codes.length === 1 && other ? { codes: [other], last } : null;
}

const thanBehind = (passage: Passage, at: number): boolean => passage.tokens[at + 1]?.lower === 'than';

/** `T3R1 heads 5 %; T1R1 ahead`, `but temple plot more tillers`: no `than`, yet two plots stand side by side. */
const isPair = (passage: Passage, first: number, last: number): boolean =>
  BARE.test(passage.tokens[last]!.lower) ||
  passage.plotOver[first - 1] !== undefined ||
  passage.plotOver[first - 2] !== undefined;

function earlierPlot(passage: Passage, first: number, last: number): Other | null {
  const spoken = plotsOf(passage, first, last);
  if (!spoken.found || wallBetween(passage, spoken.found.last, first) >= 2) return null;
  const before = within(passage.plots, first - 60, first)
    .filter(
      (plot) =>
        plot.last < spoken.found!.first && plot.codes.length === 1 && plot.codes[0] !== spoken.codes[0],
    )
    .at(-1);
  if (!before || spoken.found.first - before.last > 14) return null;
  return { codes: before.codes, last };
}

function subjectOf(passage: Passage, first: number, others: string[]): string | null {
  const named = within(passage.plots, first, first + 6).find(
    (plot) => thanBehind(passage, plot.last) && plot.codes.length === 1,
  );
  if (named) return named.codes[0]!;
  const { codes, found } = plotsOf(passage, first, first);
  if (found && others.join() === found.codes.join()) {
    const before = within(passage.plots, found.first - 60, found.first)
      .filter((plot) => plot.last < found.first && plot.role === 'subject')
      .at(-1);
    return before?.codes.length === 1 ? before.codes[0]! : passage.note.plot;
  }
  return codes.length === 1 ? codes[0]! : null;
}
