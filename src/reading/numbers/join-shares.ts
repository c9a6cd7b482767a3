/** Two numbers that make one share: `4 out of 50 hills`. */
import type { Token } from '../text.ts';
import type { NumberFound } from './number-found.ts';
import { COUNTED_THINGS } from './number-words.ts';

const SHARE_WORDS = new Set(['of', 'in', 'from', 'out', 'outta', 'per', 'over', 'off', 'among']);

/** Two numbers become one share: `4 out of 50`, `1 hill in 10`, `14 not there out of 200`, `5 in every 100`. */
export function joinShares(tokens: Token[], numbers: NumberFound[]): NumberFound[] {
  const joined: NumberFound[] = [];
  for (let index = 0; index < numbers.length; index++) {
    const part = numbers[index] as NumberFound;
    const whole = numbers[index + 1];
    if (whole && isReversedShare(tokens, part, whole)) {
      joined.push({ ...whole, first: part.first, form: 'share', of: part.value });
      index++;
    } else if (whole && isShare(tokens, part, whole)) {
      joined.push({ ...part, last: whole.last, form: 'share', of: whole.value });
      index++;
    } else joined.push(everyOther(tokens, part));
  }
  return joined;
}

function isShare(tokens: Token[], part: NumberFound, whole: NumberFound): boolean {
  if (
    whole.first - part.last > 6 ||
    !isCount(part) ||
    !isCount(whole) ||
    whole.form === 'range' ||
    whole.value < 2
  )
    return false;
  let link = false;
  for (let at = part.last + 1; at < whole.first; at++) {
    const word = tokens[at]?.lower ?? '';
    if (SHARE_WORDS.has(word) || (word === 'on' && isCountedOn(tokens, part, whole, at)))
      link = link || word !== 'of' || at + 1 === whole.first || tokens[at + 1]?.lower === 'every';
    else if (link ? !AFTER_SHARE_WORD.has(word) : !COUNTED_THINGS.has(word)) return false;
  }
  const next = tokens[whole.last + 1];
  return (
    link &&
    !(next && NOT_A_WHOLE.has(next.lower)) &&
    !(part.value > whole.value && tokens[part.last + 1]?.lower === 'of')
  );
}

/** `5 hills on 40`, `6 on 100 tillers`: as French has it, only where hills or stems are counted. */
const isCountedOn = (tokens: Token[], part: NumberFound, whole: NumberFound, at: number): boolean =>
  whole.value >= 10 &&
  part.value < whole.value &&
  (WHOLE_THINGS.has(tokens[whole.last + 1]?.lower ?? '') ||
    (at > part.last + 1 && COUNTED_THINGS.has(tokens[at - 1]?.lower ?? '')));

export const WHOLE_THINGS = new Set(['hill', 'hills', 'tillers', 'plants', 'panicles', 'stools', 'clumps']);
const BETWEEN_REVERSED = new Set([
  'i',
  'we',
  'found',
  'find',
  'counted',
  'count',
  'saw',
  'there',
  'were',
  'was',
  'are',
  'is',
  'had',
  'have',
  'got',
  'only',
  'just',
  'about',
  ',',
  'they',
  'cut',
  'rats',
  'see',
  'checked',
  'walked',
  'looked',
  'sampled',
  'counted',
  'inspected',
  'examined',
]);

const opensShare = (tokens: Token[], whole: NumberFound): boolean =>
  /^(in|of|from|among|over|on)$/.test(tokens[whole.first - 1]?.lower ?? '') ||
  /^(checked|counted|walked|sampled|inspected|examined)$/.test(tokens[whole.last + 2]?.lower ?? '');

/** `in 300 hills I found one off-type`, `of 20 hills 3 were cut`. */
function isReversedShare(tokens: Token[], whole: NumberFound, part: NumberFound): boolean {
  if (!opensShare(tokens, whole) || !WHOLE_THINGS.has(tokens[whole.last + 1]?.lower ?? '')) return false;
  if (
    !isCount(whole) ||
    !isCount(part) ||
    part.value > whole.value ||
    whole.value < 4 ||
    part.first - whole.last > 8
  )
    return false;
  if (tokens[whole.first - 1]?.lower === 'on' && whole.value < 10) return false;
  for (let at = whole.last + 2; at < part.first; at++)
    if (!BETWEEN_REVERSED.has(tokens[at]?.lower ?? '')) return false;
  return (
    !/^(per|a|each|\/)$/.test(tokens[part.last + 2]?.lower ?? '') && tokens[part.last + 1]?.lower !== 'per'
  );
}

const AFTER_SHARE_WORD = new Set(['every', 'each', 'the', 'of']);
/** `2 in 3 inches`, `5 in 2031`, `3 from 5 pm`: what follows shows that the second figure is no count. */
const NOT_A_WHOLE = new Set(
  'square sq inch inches cm mm m metre metres meter meters feet foot ft days day weeks week hours hour am pm o percent kg bags % /'.split(
    ' ',
  ),
);

const isCount = (number: NumberFound): boolean =>
  (number.form === 'cardinal' || number.form === 'range') && !number.percent && number.value >= 0;

/** `every third hill` is one in three, `every other hill` one in two. */
function everyOther(tokens: Token[], number: NumberFound): NumberFound {
  if (
    number.form !== 'ordinal' ||
    tokens[number.first - 1]?.lower !== 'every' ||
    !/^(hill|hills|plant|clump|stool)$/.test(tokens[number.last + 1]?.lower ?? '')
  )
    return number;
  return { ...number, first: number.first - 1, value: 1, form: 'share', of: number.value };
}
