/** Lengths: of water, of plants, of gaps, between rows, and of rain. */
import type { NumberFound } from '../numbers/find-numbers.ts';
import { endsHere } from './ends-here.ts';
import { type Read, type ReadFigure, read } from './reading.ts';
import { nearestTopic, type Surroundings, speaksOf, wordOf } from './surroundings.ts';
import type { Topic } from './topics.ts';

const SAID_BEHIND = 4;

/** The word behind a length that settles what it is; the first of them within a few words. */
function behind(around: Surroundings, last: number): string {
  for (
    let index = last + 1;
    index <= last + SAID_BEHIND && around.clause[index] === around.clause[last];
    index++
  ) {
    const word = wordOf(around, index);
    if (
      /^(below|under|underneath|beneath|down|wide|across|tall|high|shorter|taller|higher|lower|longer|deeper|long|apart|deep|standing|rain|water|on|away|ahead|of)$/.test(
        word,
      )
    )
      return word;
    if (!/^(now|today|only|or|so|about|maybe|still|there|the|it|is|already|nicely|in)$/.test(word)) return '';
  }
  return '';
}

const LENGTH_TOPICS: ReadonlySet<Topic> = new Set<Topic>([
  'tube',
  'water',
  'rain',
  'rows',
  'spacing',
  'gap',
  'weeds',
  'height',
  'crop',
  'crack',
  'part-length',
  'planting-depth',
  'hills',
  'bund',
  'missing',
]);

export const readLength: ReadFigure = (around, number, shape) => {
  if (shape.kind !== 'length') return [];
  const value = tidy(shape.value);
  const said = behind(around, shape.last);
  const next = wordOf(around, shape.last + 1);
  const afterOf = next === 'of' ? wordOf(around, shape.last + 2) : '';
  const hasRain = nearestTopic(around, number.first, shape.last, new Set<Topic>(['rain']), 'sentence');
  if (isDifference(around, number, said)) return [];
  if (
    afterOf === 'rain' ||
    afterOf === 'rainfall' ||
    said === 'rain' ||
    (shape.unit.name === 'mm' && hasRain)
  )
    return read('rainfall', tidy(value * 10), 'rain');
  if (shape.unit.name === 'cm' && isUnderWater(around, number))
    return read('water_depth', value, 'depth-over-the-field');
  if (isRainOvernight(around, number, shape.last))
    return read('rainfall', tidy(value * 10), 'rain-overnight');
  if (shape.unit.name === 'mm') return readMillimetres(around, number, shape.last, value);
  if (/^(water|flood|floodwater)$/.test(afterOf)) return read('water_depth', value, 'depth-of-water');
  const topic = nearestTopic(around, number.first, shape.last, LENGTH_TOPICS, 'clause')?.topic;
  const wider = topic ?? nearestTopic(around, number.first, shape.last, LENGTH_TOPICS)?.topic;
  if (said === 'wide' || said === 'across')
    return isGap(around, number, shape.last) ? read('gap_width', value, 'gap-wide') : [];
  if (said === 'apart')
    return wider === 'rows'
      ? read('row_spacing', value, 'rows-apart')
      : wider === 'hills' || wider === 'spacing'
        ? read('hill_spacing', value, 'hills-apart')
        : [];
  if (
    said === 'below' ||
    said === 'under' ||
    said === 'underneath' ||
    said === 'beneath' ||
    (said === 'down' && wider !== 'water')
  )
    return belowGround(around, number, shape.last, Math.abs(value));
  if (said === 'long' || said === 'away' || said === 'ahead') return [];
  if (topic === 'crack' || topic === 'part-length' || topic === 'planting-depth') return [];
  if (said === 'tall' || said === 'high') return tallness(around, number, shape.last, value);
  if (said === 'standing' || (said === 'on' && topic !== 'height' && isOnTheField(around, shape.last)))
    return read('water_depth', value, 'water-on');
  if (said === 'deep') return read('water_depth', value, 'water-deep');
  const inSentence =
    topic ?? nearestTopic(around, number.first, shape.last, LENGTH_TOPICS, 'sentence')?.topic;
  if (inSentence === undefined && shape.unit.name === 'cm' && value >= 50 && value <= 160)
    return read('plant_height', value, 'height-by-size');
  return byTopic(around, number, shape.last, value, topic ?? wider, topic !== undefined);
};

/** `5 cm on`, `5 cm on it`, not `71 cm on ten-hill means`. */
function isOnTheField(around: Surroundings, last: number): boolean {
  const at = [1, 2, 3].map((step) => last + step).find((index) => wordOf(around, index) === 'on') ?? last;
  return wordOf(around, at + 1) === 'it' || wordOf(around, at + 1) === 'her' || endsHere(around, at + 1);
}

/** `submerged under thirty centimetres`, `flooded again since the rain, 18 cm now`. */
const isUnderWater = (around: Surroundings, number: NumberFound): boolean =>
  [...around.tokens.slice(Math.max(0, number.first - 16), number.first)].some(
    ({ lower, sentence }) =>
      sentence === around.tokens[number.first]!.sentence &&
      /^(flooded|submerged|underwater|waterlogged|inundated|overflow|overflowed|overflows)$/.test(lower),
  );

const tidy = (value: number): number => Number(value.toPrecision(6));

/** `we got 2 inches last nite`: rain, where nothing else is spoken of. */
function isRainOvernight(around: Surroundings, number: NumberFound, last: number): boolean {
  if (
    !/^(mm|mms|millimetres?|millimeters?)$/.test(wordOf(around, last)) &&
    !/^(got|had|caught)$/.test(wordOf(around, number.first - 1)) &&
    !/^(got|had|caught)$/.test(wordOf(around, number.first - 2))
  )
    return false;
  const behindIt = `${wordOf(around, last + 1)} ${wordOf(around, last + 2)}`;
  if (behindIt === 'in the' && !/^(got|had|caught)$/.test(wordOf(around, number.first - 1))) return false;
  return (
    /^(last (night|nite|nyt|evening)|overnight|in the|yesterday)/.test(behindIt) &&
    nearestTopic(around, number.first, last, LENGTH_TOPICS, 'clause') === null
  );
}

/** `ten centimetre taller`, `six inches shorter than`, `lost two inches`, `dropped 3 cm`: a change, no state. */
function isDifference(around: Surroundings, number: NumberFound, said: string): boolean {
  if (/^(shorter|taller|higher|lower|longer|deeper)$/.test(said) || isThanAnother(around, number))
    return true;
  const before = [1, 2, 3].map((step) =>
    around.clause[number.first - step] === around.clause[number.first]
      ? wordOf(around, number.first - step)
      : '',
  );
  if (/^(to|at|around|about)$/.test(before[0] ?? '')) return false;
  if (
    before.some((word) =>
      /^(lost|lose|losing|dropped|rose|risen|gained|fell|within|taller|shorter|nearest|by|every|another|outside|inside|first|grew)$/.test(
        word,
      ),
    ) &&
    !/^(is|are|at)$/.test(before[0] ?? '')
  )
    return true;
  return false;
}

/** `thirteen is taller than the temple plot, maybe ten centimetre` has a comma in writing, none in speech. */
function isThanAnother(around: Surroundings, number: NumberFound): boolean {
  if (/^(against|versus|vs|v)$/.test(wordOf(around, number.last + 1))) return false;
  let than = false;
  for (let index = number.first - 1; index >= Math.max(0, number.first - 10); index--) {
    if (around.clause[index] !== around.clause[number.first]) return false;
    const word = wordOf(around, index);
    if (word === 'than') than = true;
    if (/^(against|versus|vs|v)$/.test(word)) return false;
    if (than && /^(taller|shorter|higher|lower|longer|deeper)$/.test(word)) return true;
  }
  return false;
}

function readMillimetres(around: Surroundings, number: NumberFound, last: number, value: number): Read[] {
  const topic = nearestTopic(around, number.first, last, LENGTH_TOPICS, 'clause')?.topic;
  if (topic === 'water') return read('water_depth', value, 'depth-of-water');
  return topic === 'tube'
    ? read('water_table_depth', value, 'tube')
    : topic === 'rows'
      ? read('row_spacing', value, 'rows')
      : topic === 'height'
        ? read('plant_height', value, 'height')
        : [];
}

function isGap(around: Surroundings, number: NumberFound, last: number): boolean {
  const topic = nearestTopic(
    around,
    number.first,
    last,
    new Set<Topic>(['gap', 'crack', 'missing', 'bund', 'disease', 'weeds']),
  )?.topic;
  return topic === 'gap' || topic === 'missing';
}

function belowGround(around: Surroundings, number: NumberFound, last: number, value: number): Read[] {
  const topic = nearestTopic(
    around,
    number.first,
    last,
    new Set<Topic>(['planting-depth', 'tube', 'water', 'part-length', 'crack']),
    'sentence',
  )?.topic;
  return topic === 'planting-depth' || topic === 'part-length' || topic === 'crack'
    ? []
    : read('water_table_depth', value, 'below-the-surface');
}

const TALL_THINGS: ReadonlySet<Topic> = new Set<Topic>(['weeds', 'crop', 'off-types', 'bund']);

function tallness(around: Surroundings, number: NumberFound, last: number, value: number): Read[] {
  const found = nearestTopic(around, number.first, last, TALL_THINGS, 'sentence');
  const isBehind = found !== null && found.first > last;
  const topic =
    isBehind && found.first > last + 2
      ? nearestTopic(around, number.first, last, new Set<Topic>(['crop']), 'sentence')?.topic
      : found?.topic;
  if (topic === 'weeds') return read('weed_height', value, 'weeds-tall');
  return topic === 'off-types' || topic === 'bund' ? [] : read('plant_height', value, 'plants-tall');
}

function byTopic(
  around: Surroundings,
  number: NumberFound,
  last: number,
  value: number,
  topic: Topic | undefined,
  near: boolean,
): Read[] {
  if (topic === 'tube') return read('water_table_depth', Math.abs(value), 'tube');
  if (topic === 'water') return read('water_depth', value, 'water');
  if (topic === 'rows') return near ? read('row_spacing', value, 'rows') : [];
  if (topic === 'spacing' || topic === 'hills') return near ? read('hill_spacing', value, 'hills') : [];
  if (topic === 'gap') return isAlong(around, number) ? [] : read('gap_width', value, 'gap');
  if (topic === 'rain') return read('rainfall', tidy(value * 10), 'rain');
  if (topic === 'weeds')
    return speaksOf(around, number.first, 'height') ? read('weed_height', value, 'weeds-tall') : [];
  if (topic === 'height') return tallness(around, number, last, value);
  return topic === 'crop' && near && isOf(around, number) ? read('plant_height', value, 'plants') : [];
}

const isAlong = (around: Surroundings, number: NumberFound): boolean =>
  /^(for|along|over|by|from|every)$/.test(wordOf(around, number.first - 1));

/** `rice is 4 inches`, `plants measure 96 cm`, `seedlings at 15 cm`. */
function isOf(around: Surroundings, number: NumberFound): boolean {
  for (let index = number.first - 1; index >= number.first - 4; index--) {
    const word = wordOf(around, index);
    if (
      /^(is|are|'re|at|measure|measures|about|already|now|reach|reaches|reached|stands|standing|only|averages|average|height|to)$/.test(
        word,
      )
    )
      return true;
    if (!/^(maybe|around|just|like|some|roughly|almost)$/.test(word))
      return /^(rice|plants|crop|seedlings|stand)$/.test(word);
  }
  return false;
}
