/** Lengths: of water, of plants, of gaps, between rows; and areas, sides and rain, which share their words. */
import type { NumberFound } from '../numbers/find-numbers.ts';
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
  if (said === 'standing' || (said === 'on' && topic !== 'height'))
    return read('water_depth', value, 'water-on');
  if (said === 'deep')
    return topic === 'water' || wider === 'water' || topic === undefined
      ? read('water_depth', value, 'water-deep')
      : [];
  return byTopic(around, number, shape.last, value, topic ?? wider, topic !== undefined);
};

const tidy = (value: number): number => Number(value.toPrecision(6));

/** `ten centimetre taller`, `six inches shorter than`, `lost two inches`, `dropped 3 cm`: a change, no state. */
function isDifference(around: Surroundings, number: NumberFound, said: string): boolean {
  if (/^(shorter|taller|higher|lower|longer|deeper)$/.test(said)) return true;
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

function tallness(around: Surroundings, number: NumberFound, last: number, value: number): Read[] {
  const topic = nearestTopic(
    around,
    number.first,
    last,
    new Set<Topic>(['weeds', 'crop', 'off-types', 'bund']),
    'clause',
  )?.topic;
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

/** `25 by 20`: a spacing, the row first, or the sides of a patch. */
export const readSides: ReadFigure = (around, number, shape) => {
  if (shape.kind !== 'sides') return [];
  const { a, b, unit } = shape;
  const patch = nearestTopic(around, number.first, shape.last, PATCHES)?.topic;
  const spacing =
    speaksOf(around, number.first, 'spacing', 'sentence') ||
    speaksOf(around, number.first, 'rows', 'stretch');
  const asMetres = unit && /^(m|foot|yard)$/.test(unit.name);
  if (spacing && !asMetres)
    return [...read('row_spacing', tidy(a), 'spacing'), ...read('hill_spacing', tidy(b), 'spacing')];
  if (asMetres)
    return patch ? read('affected_area', Number(((a * b) / 10000).toPrecision(4)), 'sides-of-a-patch') : [];
  const fits = a >= 5 && a <= 60 && b >= 5 && b <= 60;
  return fits && (unit?.name === 'cm' || unit?.name === 'inch' || !unit)
    ? [...read('row_spacing', tidy(a), 'spacing'), ...read('hill_spacing', tidy(b), 'spacing')]
    : [];
};

const PATCHES: ReadonlySet<Topic> = new Set<Topic>([
  'patch',
  'problem',
  'lodged',
  'disease',
  'insects',
  'weeds',
  'rats',
  'gap',
  'missing',
  'snails',
]);

/** `one patch forty square metre`, `two acres gone`, `about a tenth of an acre`. */
export const readArea: ReadFigure = (around, number, shape) => {
  if (shape.kind !== 'area' || /^(per|the|back|every|each|of)$/.test(wordOf(around, number.first - 1)))
    return [];
  if (/^(plot|field|block|farm|check|lot|nursery|bay|piece)$/.test(wordOf(around, shape.last + 1))) return [];
  const topic = nearestTopic(around, number.first, shape.last, PATCHES);
  return topic ? read('affected_area', Number(shape.value.toPrecision(4)), 'area-affected') : [];
};

/** Fahrenheit where it is said, and where no air on earth is that hot in Celsius. */
export const readTemperature: ReadFigure = (around, number, shape) => {
  if (shape.kind !== 'temperature') return [];
  if (
    nearestTopic(around, number.first, number.last, new Set<Topic>(['water', 'part-length']), 'stretch') &&
    !speaksOf(around, number.first, 'temperature', 'clause')
  )
    return [];
  return read('air_temperature', celsius(number.value, shape.unit.name === 'degree F'), 'degrees');
};

export const celsius = (value: number, fahrenheit: boolean): number =>
  fahrenheit || value > 55 ? Number((((value - 32) * 5) / 9).toFixed(2)) : value;

const HARVEST: ReadonlySet<Topic> = new Set<Topic>(['yield', 'moisture']);

/** Bushels, tonnes and maunds to an area are a harvest; pounds and kilos only where one is spoken of. */
export const readCropWeight: ReadFigure = (around, number, shape) => {
  if (shape.kind !== 'crop-weight') return [];
  const grainOnly = /^(t|bushel|barrel|maund|quintal|cwt|cavan)$/.test(shape.unit.name);
  const harvest = nearestTopic(around, number.first, shape.last, HARVEST, 'sentence');
  const isMaterial = /^(manure|compost|straw|lime|gypsum|fym|dung|of|n|seed)$/.test(
    wordOf(around, shape.last + 1),
  );
  if ((!grainOnly && !harvest) || isMaterial || shape.tPerHa < (grainOnly ? 0.2 : 0.8)) return [];
  return read('grain_yield', Number(shape.tPerHa.toPrecision(4)), 'weight-from-an-area');
};
