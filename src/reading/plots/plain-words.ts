/** Tells plots named by a bare figure or an ordinary word from counts and from the words themselves. */
import type { Token } from '../text.ts';
import type { PlotFound } from './find-plots.ts';
import type { PlotMeant } from './plot-tree.ts';

const UNITS = new Set(
  `cm mm m km centimeter centimeters centimetre centimetres millimeter millimeters meter meters metre metres inch inches foot feet ft
   percent % per pct cent dat das dap day days week weeks month months year years hour hours minute minutes am pm o'clock oclock
   kg kilo kilos g gram grams t ton tons tonne tonnes lb lbs pound pounds bag bags sack sacks l liter liters litre litres ml bushel bushels
   hill hills plant plants tiller tillers stem stems stool stools panicle panicles head heads row rows line lines hole holes burrow burrows
   trap traps rat rats bird birds snail snails egg eggs hopper hoppers off of out from x by times degrees degree c square sq acre acres ha
   hectare hectares step steps pieces people men women boys labour labourers pax active live dead missing trials st nd rd th point and
   to - / . spots plots fields bays blocks lesions leaves sweeps samples points piece th round rounds new fresh bugs per a an one two three
   four five six seven eight nine ten hundred thousand % tall red white or in at only more less`
    .split(/\s+/)
    .filter(Boolean),
);
const QUANTITY_BEFORE = new Set(
  `about around approx approximately almost nearly over under below above by than least most every maybe perhaps say some only of to per
   reads read reading says showing counted count counts found score spad lcc chart tube was were has have got is at height row hill day no-of
   minus plus times another just x -`
    .split(/\s+/)
    .filter(Boolean),
);
const PLOT_BEFORE = new Set(
  'plot plots bay field block in number no check paddy and from until till through now then'.split(' '),
);

/** A bare figure counts as a plot where it opens a clause or follows a word for plots, and nothing is counted by it. */
export function isCountNotPlot(
  tokens: Token[],
  following: Int32Array,
  at: number,
  last: number,
  before?: PlotFound,
): boolean {
  const previous = tokens[at - 1]?.lower ?? '';
  const next = tokens[following[last]!];
  const nextWord = next?.lower ?? '';
  const digits = tokens[at]!.kind === 'number' && at === last ? tokens[at]!.text.length : 0;
  if (/^(plot|plots|bay|field|block|paddy)$/.test(previous)) return false;
  if (/'s$/.test(tokens[last]!.lower)) return false;
  if (/^(ain't|ain|isn't|wasn't|doesn't|dont|don't|stands|looks|gets|got|needs)$/.test(nextWord))
    return false;
  if (previous === 'than' && !isUnit(tokens, following, last))
    return /^(more|less|fewer|greater|other)$/.test(tokens[at - 2]?.lower ?? '');
  const listed = before && before.said === 'number' && isListed(tokens, before.last, at);
  if (listed && !isUnit(tokens, following, last)) return false;
  if (
    nextWord === 'and' ||
    nextWord === 'n' ||
    nextWord === 'to' ||
    nextWord === 'or' ||
    nextWord === '-' ||
    nextWord === ',' ||
    nextWord === '&' ||
    nextWord === '+'
  ) {
    return (
      (QUANTITY_BEFORE.has(previous) && previous !== 'on') ||
      (digits < 3 && !opens(tokens, at) && !/^(on|in|at|both)$/.test(previous))
    );
  }
  if (
    nextWord === 'at' &&
    opens(tokens, at) &&
    STAGE_NEXT.test(tokens[following[following[last]!]!]?.lower ?? '')
  )
    return false;
  if (isUnit(tokens, following, last) && !(nextWord === 'no' || nextWord === 'out'))
    return (
      digits < 3 ||
      !/^(have|has|missing|dead|new|fresh|tall|only|more|less|at|in)$/.test(nextWord) ||
      !opens(tokens, at)
    );
  if (digits >= 3) return QUANTITY_BEFORE.has(previous) && !/^(in|is|was|and|to|than|of|at)$/.test(previous);
  if (/^(than|in|and|until|till)$/.test(previous)) return false;
  return !opens(tokens, at) && !(PLOT_BEFORE.has(previous) || !QUANTITY_BEFORE.has(previous));
}

/** `41 at flower`: nobody counts anything at a stage. */
const STAGE_NEXT =
  /^(flower|flowering|boot|booting|heading|milk|dough|pi|panicle|tillering|jointing|maturity|full|soft|hard|early|late|mid|max)$/;

const isListed = (tokens: Token[], from: number, at: number): boolean => {
  const between = tokens.slice(from + 1, at).map(({ lower }) => lower);
  return (
    between.length > 0 &&
    between.length <= 2 &&
    between.every((word) => /^(,|and|&|\+|to|until|till|than|in|or|the)$/.test(word))
  );
};

const isUnit = (tokens: Token[], following: Int32Array, last: number): boolean => {
  const next = tokens[last + 1]?.kind === 'mark' ? tokens[last + 1] : tokens[following[last]!];
  return (
    next !== undefined && UNITS.has(next.lower) && !/^(\.|,)$/.test(next.lower) && !(next.lower === 'and')
  );
};

const opens = (tokens: Token[], at: number): boolean => {
  const before = tokens[at - 1];
  return (
    before === undefined ||
    /^[.!?;:,\n—–]$/.test(before.text) ||
    /^(um|uh|eh|okay|ok|then|now|so|and|also|next|please)$/.test(before.lower) ||
    tokens[at]!.sentence !== before.sentence
  );
};

/** `flooded check valve`, `the control of rats`: the words of a name inside other words. */
export function isPartOfOtherWords(tokens: Token[], last: number, meant: PlotMeant): boolean {
  const next = tokens[last + 1]?.lower ?? '';
  return (
    meant.said === 'part' &&
    !/^(is|was|has|looks|,|:|;|\.|—|-|needs|got|again|at|still|now|also|all|no)$/.test(next) &&
    next !== ''
  );
}
