/** How the parts of a plot code sound: letters by name, figures in words, and what a recogniser makes of either. */

const LETTER_NAMES: Readonly<Record<string, string>> = {
  a: 'a ay',
  b: 'b bee be',
  c: 'c see sea cee',
  d: 'd dee',
  e: 'e ee',
  f: 'f eff ef',
  g: 'g gee jee',
  h: 'h aitch',
  i: 'i eye',
  j: 'j jay',
  k: 'k kay',
  l: 'l el ell',
  m: 'm em',
  n: 'n en',
  o: 'o oh',
  p: 'p pea pee',
  q: 'q queue cue',
  r: 'r are ar our',
  s: 's ess es',
  t: 't tea tee',
  u: 'u you',
  v: 'v vee',
  w: 'w',
  x: 'x ex',
  y: 'y why',
  z: 'z zed zee',
};

const SMALL =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(
    ' ',
  );
const TENS = 'twenty thirty forty fifty sixty seventy eighty ninety'.split(' ');

/** Words that sound like a figure; they count only after a spoken letter (`V to`, `K for`). */
const SOUND_ALIKES: Readonly<Record<string, string>> = {
  '1': 'won',
  '2': 'to too',
  '4': 'for fore',
  '8': 'ate',
};

/** Each way to name a letter. `=`: that very form, so that `is 3` is not `be 3`. */
export const lettersNamed = (letters: string): string[][] => {
  const low = letters.toLowerCase();
  if (low.length > 1) return [[low]];
  const names = (LETTER_NAMES[low] ?? low).split(' ').map((name) => [`=${name}`]);
  return low === 'w' ? [...names, ['double', 'u'], ['double', 'you']] : names;
};

/** Each way to say a whole number below a thousand, as words: `212` -> `two twelve`, `two one two`, … */
export function figuresSaid(figures: string, afterLetter: boolean): string[][] {
  const plain = String(Number(figures));
  const ways = [[figures], ...(plain === figures ? [] : [[plain]]), ...wordsOf(Number(figures))];
  if (figures.length > 1) ways.push(...digitByDigit(figures));
  if (figures.length === 3 && figures[0] !== '0') ways.push(...hundredless(figures));
  if (afterLetter)
    for (const like of (SOUND_ALIKES[figures] ?? '').split(' ').filter(Boolean)) ways.push([like]);
  return ways;
}

function wordsOf(value: number): string[][] {
  if (value < 20) return [[SMALL[value]!]];
  if (value < 100) {
    const tens = TENS[Math.floor(value / 10) - 2]!;
    return value % 10 === 0 ? [[tens]] : [[tens, SMALL[value % 10]!]];
  }
  if (value >= 1000) return [];
  const hundred = [SMALL[Math.floor(value / 100)]!, 'hundred'];
  if (value % 100 === 0) return [hundred];
  return wordsOf(value % 100).flatMap((rest) => [
    [...hundred, ...rest],
    [...hundred, 'and', ...rest],
  ]);
}

const digitByDigit = (figures: string): string[][] => {
  const said = [...figures].map((figure) => SMALL[Number(figure)]!);
  const ways = [said, [...figures]];
  if (figures.includes('0'))
    ways.push(
      said.map((word) => (word === 'zero' ? 'oh' : word)),
      said.map((word) => (word === 'zero' ? 'o' : word)),
    );
  return ways;
};

/** `212` as `two twelve`, `2 12`. */
const hundredless = (figures: string): string[][] =>
  [...wordsOf(Number(figures.slice(1))), [figures.slice(1)]].flatMap((rest) => [
    [SMALL[Number(figures[0])]!, ...rest],
    [figures[0]!, ...rest],
  ]);
