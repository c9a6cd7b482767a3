import type { NumberFound } from '../numbers/find-numbers.ts';
import { unitAt } from '../numbers/units.ts';
import type { Token } from '../text.ts';
import type { DoseFound } from './dose-found.ts';

/** Verbs that bring the water to a level. */
const WATERING = new Set(
  (
    'irrigate irrigating irrigated fill filling filled refill flood flooding flooded reflood raise raising raised bring bringing brought pump pumping pumped top topping topped let letting keep keeping hold holding put putting ' +
    'give giving maintain maintaining drain draining lower lowering drop dropping drawdown reduce reducing take taking build building get add adding water watering run soak apply allow draw drawing push pull pulling'
  ).split(' '),
);
const WATER_WORDS = new Set(
  'water flood it level depth pond ponding irrigation irrigate irrigating irrigated flooded reflood flooding fill refill pump drain her them back up'.split(
    ' ',
  ),
);
const TO_WORDS = new Set([
  'to',
  'till',
  'until',
  'at',
  'upto',
  'about',
  'around',
  'roughly',
  'maybe',
  'say',
  'just',
  'another',
  'up',
  'with',
  'on',
  'in',
  'only',
  'some',
  'the',
  'not',
  'more',
  'than',
  'between',
  'a',
  'an',
]);

/** Nouns as often as verbs: an order only where something to act on follows. */
const NOUN_TOO = new Set(['water', 'flood', 'drain', 'pump', 'top', 'pull', 'run', 'drop']);
const AFTER_A_VERB = /^(it|them|this|that|these|to|up|again|all|both|off|down|back|the|her|upto)$/;

const LOOK_BACK = 10;

/** `irrigate up to five`, `bring the water to 2 inches`, `hold it at 4 inches`, `keeping 10 cm of water on`: a level to be reached. */
export function waterLevelDose(tokens: Token[], number: NumberFound): DoseFound | null {
  if (
    (number.form !== 'cardinal' && number.form !== 'range' && number.form !== 'fraction') ||
    number.percent ||
    number.value <= 0
  )
    return null;
  const next = tokens[number.last + 1]?.lower ?? '';
  const unit = unitAt(
    tokens,
    number.form === 'fraction' && /^(a|an)$/.test(next) ? number.last + 2 : number.last + 1,
  );
  const length = unit?.value.dimension === 'length' ? unit : null;
  if (unit && !length) return null;
  const lead = leadingVerb(tokens, number);
  if (!lead || (!length && !isBareLevel(tokens, number, lead.toldLevel))) return null;
  const half =
    tokens
      .slice((length?.last ?? 0) + 1, (length?.last ?? 0) + 4)
      .map((token) => token.lower)
      .join(' ') === 'and a half';
  const valueCm = (number.value + (half ? 0.5 : 0)) * (length?.value.toBase ?? 1);
  const ofWater =
    tokens[(length?.last ?? number.last) + 1]?.lower === 'of' &&
    tokens[(length?.last ?? number.last) + 2]?.lower === 'water';
  const last = ofWater ? (length?.last ?? number.last) + 2 : (length?.last ?? number.last);
  if (/^(below|under|down|beneath)$/.test(tokens[last + 1]?.lower ?? '') && !ofWater) return null;
  return {
    first: number.first,
    last,
    dose: {
      value: Number(valueCm.toPrecision(4)),
      unit: 'cm',
      ...(ofWater || lead.water ? { of: 'water' } : {}),
    },
    rule: 'water-level',
  };
}

interface Lead {
  /** The clause speaks of `up to`, `to` or `at` a level. */
  toldLevel: boolean;
  water: boolean;
}

/** The watering verb before the figure in its clause, if water is what it moves. */
function leadingVerb(tokens: Token[], number: NumberFound): Lead | null {
  let water =
    tokens[number.last + 2]?.lower === 'water' ||
    (tokens[number.last + 2]?.lower === 'of' && tokens[number.last + 3]?.lower === 'water');
  let named = water;
  const toldLevel =
    /^(to|at|upto|till|until)$/.test(tokens[number.first - 1]?.lower ?? '') ||
    TO_WORDS.has(tokens[number.first - 1]?.lower ?? '');
  for (let index = number.first - 1; index >= Math.max(0, number.first - LOOK_BACK); index--) {
    const token = tokens[index];
    const word = token?.lower ?? '';
    if (!token || /^[.,;:!?()]$/.test(token.text) || token.sentence !== tokens[number.first]?.sentence)
      return null;
    if (
      /^(was|were|is|are|has|had|says|reads|shows|tall|high|rice|plants|spacing|row|rows|tube|if|when|after|every)$/.test(
        word,
      )
    )
      return null;
    if (word === 'water') water = true;
    if (WATER_WORDS.has(word)) named = true;
    if (WATERING.has(word)) {
      if (NOUN_TOO.has(word) && !AFTER_A_VERB.test(tokens[index + 1]?.lower ?? '')) continue;
      const watery = /^(irrigat|flood|reflood|fill|refill|pump|drain|water|soak)/.test(word);
      return watery || named ? { toldLevel, water } : null;
    }
  }
  return null;
}

/** Without a unit only a told level counts (`irrigate up to five`), not a count or a time (`pump at 6 am`). */
function isBareLevel(tokens: Token[], number: NumberFound, toldLevel: boolean): boolean {
  const before = tokens[number.first - 1]?.lower ?? '';
  const next = tokens[number.last + 1];
  if (!toldLevel || !/^(to|upto|till|until|about|around)$/.test(before) || number.value > 20) return false;
  return (
    !next ||
    next.kind === 'mark' ||
    /^(and|then|again|only|today|tomorrow|tonight|by|before|on|this|but|so|max|maximum)$/.test(next.lower)
  );
}
