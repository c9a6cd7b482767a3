/** Where a note names its plots: single ones, lists, ranges and groups, and which of them are only mentioned. */
import { type PhraseTree, phrasesAt, type Readable } from '../engine/phrase-tree.ts';
import type { PlotNamed } from '../record.ts';
import type { Token } from '../text.ts';
import { markRoles } from './passing-mention.ts';
import { isCountNotPlot, isPartOfOtherWords } from './plain-words.ts';
import { type PlotMeant, plotTree } from './plot-tree.ts';

export interface PlotFound {
  first: number;
  last: number;
  codes: string[];
  /** `passing`: named to compare with or to point at, so that it does not take over. */
  role: 'subject' | 'passing';
  said: PlotMeant['said'];
  /** `both`, `all plots` and the like. */
  group: boolean;
}

interface Words extends Readable {
  tokens: Token[];
}

export function findPlots(words: Words, plots: PlotNamed[]): PlotFound[] {
  if (plots.length === 0) return [];
  const order = plots.map(({ code }) => code);
  const single = findSingle(words, plotTree(plots));
  const all = findAll(words, order);
  const found = [...single, ...all].sort((a, b) => a.first - b.first || b.last - a.last);
  const apart = found.filter(
    (one, at) =>
      at === 0 || one.first > Math.max(...found.slice(Math.max(0, at - 3), at).map(({ last }) => last)),
  );
  return markRoles(words.tokens, correct(words, join(words, joinBoth(words, apart), order)));
}

function findSingle(words: Words, tree: PhraseTree<PlotMeant>): PlotFound[] {
  const found: PlotFound[] = [];
  for (let at = 0; at < words.tokens.length; ) {
    const hit = bestAt(words, tree, at, found.at(-1));
    if (hit) found.push(hit);
    at = hit ? hit.last + 1 : at + 1;
  }
  return found;
}

const LEAD_INS = new Set([
  'plot',
  'bay',
  'field',
  'block',
  'number',
  'no',
  'check',
  'paddy',
  'plots',
  'fields',
  'bays',
]);

function bestAt(words: Words, tree: PhraseTree<PlotMeant>, at: number, before?: PlotFound): PlotFound | null {
  if (words.tokens[at]!.kind === 'mark') return null;
  for (const { last, meanings } of phrasesAt(tree, words, at)) {
    const meant = meanings.find((meaning) => stands(words, meaning, at, last, before));
    if (!meant || isBothOfLonger(words, tree, at, last)) continue;
    return {
      first: LEAD_INS.has(words.tokens[at - 1]?.lower ?? '') ? at - 1 : at,
      last: lastOfTail(words, last),
      codes: meant.codes,
      role: 'subject',
      said: meant.said,
      group: meant.codes.length > 1 || meant.said === 'group',
    };
  }
  return null;
}

/** `for both t three r two`: the `both` stands alone, the longer name follows. */
const isBothOfLonger = (words: Words, tree: PhraseTree<PlotMeant>, at: number, last: number): boolean =>
  words.tokens[at]!.lower === 'both' && (phrasesAt(tree, words, words.following[at]!)[0]?.last ?? -1) > last;

/** `B2's`, `the top check plot`: the noun behind the name belongs to it. */
const lastOfTail = (words: Words, last: number): number => {
  const next = words.following[last]!;
  return ['plot', 'field', 'bay', 'block'].includes(words.tokens[next]?.lower ?? '') &&
    words.tokens[next]!.start - words.tokens[last]!.end <= 1
    ? next
    : last;
};

function stands(words: Words, meant: PlotMeant, at: number, last: number, before?: PlotFound): boolean {
  if (meant.said === 'number') return !isCountNotPlot(words.tokens, words.following, at, last, before);
  if (meant.said === 'part')
    return (
      opensSentence(words, at) &&
      !ORDINARY.has(words.tokens[at]!.lower) &&
      !isPartOfOtherWords(words.tokens, last, meant)
    );
  return !isPartOfOtherWords(words.tokens, last, meant) && !isOrdinaryPair(words, at, last);
}

/** A word of a name alone (`Relift, no bugs`) counts where it opens a sentence, and is no everyday word. */
const opensSentence = (words: Words, at: number): boolean => {
  const from = words.tokens[at - 1]?.lower === 'the' ? at - 1 : at;
  return from <= 0 || words.tokens[from - 1]!.kind === 'mark';
};
const ORDINARY = new Set(
  'top bottom low high long short north south east west middle first second third last old new big small wet dry road canal river pump pond drain bank late early upper lower left right check control open wide narrow good bad rat bird weed water plain flooded severe safe dense sparse standard house home school'.split(
    ' ',
  ),
);

/** `be to`, `see for`, `a 2`: words that only spell a code by chance. */
function isOrdinaryPair({ tokens }: Words, at: number, last: number): boolean {
  if (last === at) return false;
  const first = tokens[at]!.lower;
  const end = tokens[last]!.lower;
  if (first === 'a' && last === at + 1) return isArticle(tokens, last);
  return (
    ['be', 'see', 'are', 'you', 'i', 'we', 'why'].includes(first) &&
    ['to', 'too', 'for', 'won', 'ate', 'one'].includes(end)
  );
}

/** `a two inch gap`: what is counted follows; `a two almost there`: a plot. */
const isArticle = (tokens: Token[], last: number): boolean => {
  const next = tokens[last + 1]?.lower ?? '';
  return tokens[last]!.kind === 'number'
    ? !/^[A-Z]/.test(tokens[last - 1]!.text)
    : next === '-' ||
        /^(inch|foot|day|week|leaf|meter|metre|cm|person|man|hour|time|way|third|of)/.test(next);
};

const ALL_BEFORE = new Set(['all', 'every', 'each', 'whole', 'entire']);
const ALL_AFTER = new Set(
  'plots plot bays bay fields field blocks block checks paddies treatments farm trial site'.split(' '),
);
const FILLERS = new Set(
  'of the my our these six seven five four eight nine ten twelve trial research'.split(' '),
);

/** `all plots`, `all of the six plots`, `every field`, `the whole trial`. */
function findAll({ tokens }: Words, order: string[]): PlotFound[] {
  const found: PlotFound[] = [];
  for (let at = 0; at < tokens.length; at++) {
    if (!ALL_BEFORE.has(tokens[at]!.lower)) continue;
    let end = at + 1;
    while (end < at + 4 && (FILLERS.has(tokens[end]?.lower ?? '') || tokens[end]?.kind === 'number')) end++;
    const word = tokens[end]?.lower ?? '';
    if (!ALL_AFTER.has(word) || (word === 'field' && tokens[at]!.lower === 'all')) continue;
    if (['whole', 'entire'].includes(tokens[at]!.lower) && !['farm', 'trial', 'site'].includes(word))
      continue;
    found.push({ first: at, last: end, codes: order, role: 'subject', said: 'group', group: true });
  }
  return found;
}

/** `both plots`, `both of them`, `for both`: the two that were named last. */
function joinBoth({ tokens }: Words, found: PlotFound[]): PlotFound[] {
  const out = [...found];
  for (let at = 0; at < tokens.length; at++) {
    if (tokens[at]!.lower !== 'both' || out.some(({ first, last }) => at >= first && at <= last)) continue;
    const before = out.filter(({ last }) => last < at).flatMap(({ codes }) => codes);
    const named = [...new Set(before.slice(-4).reverse())].slice(0, 2).reverse();
    const next = tokens[at + 1]?.lower ?? '';
    const counted = found.find(({ first }) => first === at + 1);
    if (counted?.group) {
      counted.first = at;
      continue;
    }
    const listed = counted && /^(and|&|,)$/.test(tokens[counted.last + 1]?.lower ?? '');
    if (listed || (tokens[at + 1]?.kind === 'word' && NOT_PLOTS.has(next)) || named.length < 2) continue;
    const last = ['plots', 'bays', 'fields', 'blocks', 'checks'].includes(next) ? at + 1 : at;
    out.push({ first: at, last, codes: named, role: 'subject', said: 'group', group: true });
  }
  return out.sort((a, b) => a.first - b.first);
}

const NOT_PLOTS = new Set('sides side ends edges bunds banks rows reps corners rates dates traps'.split(' '));

const LIST_MARKS = new Set([',', '+', '&', '/', 'and', 'n', 'plus', 'or']);
const RANGE_WORDS = new Set(['to', 'until', 'till', 'through', 'thru', '-', '–']);

/** `101, 102 and 103` is one mention of three; `B1 to B3` of all between. */
function join({ tokens }: Words, found: PlotFound[], order: string[]): PlotFound[] {
  const out: PlotFound[] = [];
  for (const one of found) {
    const before = out.at(-1);
    const between = before ? tokens.slice(before.last + 1, one.first).map(({ lower }) => lower) : [];
    if (before && between.length === 1 && RANGE_WORDS.has(between[0]!) && !before.group && !one.group)
      out[out.length - 1] = {
        ...before,
        last: one.last,
        codes: rangeOf(order, before.codes.at(-1)!, one.codes[0]!, before.codes),
        group: true,
      };
    else if (
      before &&
      between.length === 0 &&
      before.said === 'code' &&
      one.said === 'name' &&
      before.codes.join() === one.codes.join()
    )
      out[out.length - 1] = { ...before, last: one.last };
    else if (
      before &&
      between.length === 0 &&
      before.said === 'number' &&
      one.said === 'number' &&
      !opensAnew(tokens, before, one)
    )
      out[out.length - 1] = {
        ...before,
        last: one.last,
        codes: [...new Set([...before.codes, ...one.codes])],
        group: true,
      };
    else if (before && isSameAgain(between) && before.codes.join() === one.codes.join())
      out[out.length - 1] = { ...before, last: one.last };
    else if (
      before &&
      isList(between) &&
      !isNewClause(tokens, one, between) &&
      !(before.said === 'group' && between.includes(','))
    )
      out[out.length - 1] = {
        ...before,
        last: one.last,
        codes: [...new Set([...before.codes, ...one.codes])],
        group: true,
      };
    else out.push({ ...one });
  }
  return out;
}

/** `eleven and twelve, eleven's at green ring`: a plot of the list named again, or with its verb, begins its own report. */
const opensAnew = (tokens: Token[], before: PlotFound, one: PlotFound): boolean =>
  before.codes.includes(one.codes[0]!) || /'s$/.test(tokens[one.last]!.lower);

const isSameAgain = (between: string[]): boolean =>
  between.length <= 2 && between.every((word) => word === ',' || word === 'the' || word === '(');

const isList = (between: string[]): boolean => {
  const words = between.filter(
    (word) => word !== 'the' && word !== 'also' && word !== 'in' && word !== 'both',
  );
  return words.length > 0 && words.length <= 2 && words.every((word) => LIST_MARKS.has(word));
};

/** `A-1, B-2 is dry`: a comma alone joins only where no verb follows that is for the last one; else it is a list. */
const isNewClause = (tokens: Token[], one: PlotFound, between: string[]): boolean =>
  between.join('') === ',' &&
  /^(\d|is$|has$)/.test(tokens[one.last + 1]?.lower ?? '') &&
  tokens[one.last + 1]?.lower !== undefined;

function rangeOf(order: string[], from: string, to: string, before: string[]): string[] {
  const start = order.indexOf(from);
  const end = order.indexOf(to);
  if (start < 0 || end < 0) return [...before, to];
  const codes = start <= end ? order.slice(start, end + 1) : order.slice(end, start + 1);
  return [...new Set([...before, ...codes])];
}

const CORRECTIONS =
  /^(no|sorry|wait|nope|rather|scratch|correction|actually|mean|i|im|i'm|at|,|—|-|not|uh|um|er)$/;

/** `plot eleven, no, twelve`: the later one stands. */
function correct({ tokens }: Words, found: PlotFound[]): PlotFound[] {
  const out: PlotFound[] = [];
  for (const one of found) {
    const before = out.at(-1);
    const between = before ? tokens.slice(before.last + 1, one.first).map(({ lower }) => lower) : [];
    const corrects =
      before &&
      between.length > 0 &&
      between.length <= 6 &&
      between.every((word) => CORRECTIONS.test(word)) &&
      between.some((word) => /^(no|sorry|wait|nope|scratch|correction|mean)$/.test(word));
    if (corrects) out[out.length - 1] = { ...one, first: before.first };
    else out.push(one);
  }
  return out;
}
