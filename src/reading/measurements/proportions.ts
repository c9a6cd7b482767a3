/** Percents, shares and fractions: of hills, of tillers, of panicles, of a plot. */
import type { NumberFound } from '../numbers/find-numbers.ts';
import type { Quantity } from '../record.ts';
import { type Read, type ReadFigure, read } from './reading.ts';
import { nearestTopic, type Surroundings, wordOf } from './surroundings.ts';
import type { Topic } from './topics.ts';
import { isSaidOfAnother, WHOLES, type Whole } from './wholes.ts';

const ALL: ReadonlySet<Topic> = new Set<Topic>([
  'cover',
  'moisture',
  'heading',
  'white-heads',
  'dead-hearts',
  'lodged',
  'weeds',
  'missing',
  'rats',
  'disease',
  'insects',
  'off-types',
  'problem',
  'snails',
  'gathered',
]);
const OF_HILLS: ReadonlySet<Topic> = new Set<Topic>([
  'missing',
  'rats',
  'disease',
  'insects',
  'off-types',
  'problem',
  'white-heads',
  'dead-hearts',
  'snails',
  'gathered',
  'lodged',
]);
const OF_AREA: ReadonlySet<Topic> = new Set<Topic>([
  'cover',
  'heading',
  'lodged',
  'weeds',
  'disease',
  'insects',
  'problem',
  'rats',
  'missing',
  'snails',
]);

export const readProportion: ReadFigure = (around, number, shape) => {
  if (shape.kind === 'share') return readShare(around, number);
  const percent = shape.kind === 'fraction' ? tidy(number.value * 100) : number.value;
  return shape.kind === 'percent'
    ? readPercent(around, number, percent, isLedByPlot(around, number.first) ? 'stretch' : 'before')
    : readFraction(around, number, percent);
};

/** Read again without regard to what stood before: the last resort of `B2 20% only`. */
export const readPercentWidely = (around: Surroundings, number: NumberFound): Read[] =>
  readPercent(around, number, number.value, 'before');

/** `T2R2 20%`, `in B-2 about 55 %`: perhaps one of a row, so its own words are asked first. */
function isLedByPlot(around: Surroundings, first: number): boolean {
  for (let index = first - 1; index >= first - 4; index--) {
    if (around.isPlot(index)) return true;
    if (!/^(about|around|is|at|also|only|,|now|maybe|and)$/.test(wordOf(around, index))) return false;
  }
  return false;
}

const tidy = (percent: number): number => Number(percent.toFixed(2));

/** `4 of 25 hills`; `20 in 10 hills` is a count a hill. */
function readShare(around: Surroundings, number: NumberFound): Read[] {
  const whole = shareWhole(around, number);
  const of = number.of ?? 0;
  if (whole === 'other' || of === 0) return [];
  if (number.value > of) return whole === 'hills' ? perHillFromShare(around, number, number.value / of) : [];
  const percent = Number(((100 * number.value) / of).toFixed(3));
  if (percent === 0) return [];
  if (whole === 'tillers' || whole === 'panicles') return ofStems(around, number, percent, whole);
  const topic = nearestTopic(around, number.first, number.last, OF_HILLS)?.topic;
  return ofHills(topic, percent, 'share');
}

function perHillFromShare(around: Surroundings, number: NumberFound, value: number): Read[] {
  const topic = nearestTopic(
    around,
    number.first,
    number.last,
    new Set<Topic>(['insects', 'tillers']),
  )?.topic;
  if (topic === 'insects') return read('insects_per_hill', value, 'count-over-hills');
  return topic === 'tillers' ? read('tillers_per_hill', value, 'count-over-hills') : [];
}

/** The thing counted: behind the second figure, else between the two. */
function shareWhole(around: Surroundings, number: NumberFound): Whole {
  const behind = WHOLES.get(wordOf(around, number.last + 1));
  if (behind !== undefined && behind !== 'area') return behind;
  const next = around.tokens[number.last + 1];
  for (let index = number.first; index <= number.last; index++) {
    const inside = WHOLES.get(wordOf(around, index));
    if (inside) return inside;
  }
  return next?.kind === 'word' && NOUN_END.test(next.lower) && !NOT_A_NOUN.test(next.lower) ? 'other' : null;
}

/** `3 of 12 tomatoes`: a plural that nobody counts hills by. */
const NOUN_END = /(oes|ers|ists|boxes|bottles|bags)$/;
const NOT_A_NOUN = /^(others|tillers|hoppers|borers|folders)$/;

function ofStems(
  around: Surroundings,
  number: NumberFound,
  percent: number,
  whole: 'tillers' | 'panicles',
): Read[] {
  const topic = nearestTopic(
    around,
    number.first,
    number.last,
    new Set<Topic>(['rats', 'white-heads', 'dead-hearts']),
  )?.topic;
  if (topic === 'white-heads') return read('white_heads_pct', percent, 'share-of-panicles');
  if (topic === 'dead-hearts') return read('dead_hearts_pct', percent, 'share-of-tillers');
  return topic === 'rats' && whole === 'tillers'
    ? read('rodent_tillers_pct', percent, 'share-of-tillers')
    : [];
}

function ofHills(topic: Topic | undefined, percent: number, rule: string): Read[] {
  if (topic === 'missing') return read('missing_hills_pct', percent, `${rule}-missing`);
  if (topic === 'rats') return read('rodent_hills_pct', percent, `${rule}-rats`);
  if (topic === 'white-heads') return read('white_heads_pct', percent, `${rule}-white-heads`);
  if (topic === 'dead-hearts') return read('dead_hearts_pct', percent, `${rule}-dead-hearts`);
  if (topic === undefined || topic === 'gathered') return [];
  return read('affected_hills_pct', percent, `${rule}-affected`);
}

const BY_TOPIC: Partial<Record<Topic, Quantity>> = {
  moisture: 'grain_moisture_pct',
  heading: 'heading_pct',
  'white-heads': 'white_heads_pct',
  'dead-hearts': 'dead_hearts_pct',
  lodged: 'lodged_area_pct',
  weeds: 'weed_cover_pct',
  cover: 'weed_cover_pct',
  missing: 'missing_hills_pct',
  rats: 'rodent_hills_pct',
  disease: 'affected_area_pct',
  insects: 'affected_area_pct',
  'off-types': 'affected_hills_pct',
  problem: 'affected_area_pct',
};

/** `15% of hills`, `four percent tillers cut`, `60 per cent out`, `10% lodged`, `20 percent cover`. */
function readPercent(
  around: Surroundings,
  number: NumberFound,
  percent: number,
  reach: 'stretch' | 'before',
): Read[] {
  const next = wordOf(around, number.last + 1);
  const whole = wholeBehind(around, number.last + 1) ?? wholeBefore(around, number.first);
  if (whole === 'other' || NOT_MEASURED.has(next) || isSaidOfAnother(around, number.first)) return [];
  if (/^(out|headed|emerged|exserted)$/.test(next) && wordOf(around, number.last + 2) !== 'of')
    return read('heading_pct', percent, 'percent-out');
  if (whole === 'hills')
    return ofHills(
      nearestTopic(around, number.first, number.last, OF_HILLS)?.topic,
      percent,
      'percent-of-hills',
    );
  if (whole === 'tillers' || whole === 'panicles') {
    const stems = ofStems(around, number, percent, whole);
    if (stems.length > 0 || next === 'of')
      return stems.length > 0 ? stems : headingOf(around, number, percent, whole);
  }
  const wanted = whole === 'area' ? OF_AREA : ALL;
  if (isBesideCropWeight(around, number))
    return read('grain_moisture_pct', percent, 'percent-of-the-weighed-grain');
  const nearest = nearestTopic(around, number.first, number.last, wanted, reach)?.topic;
  const topic =
    nearest === 'insects' || nearest === 'disease' ? (headsOf(around, number) ?? nearest) : nearest;
  const quantity = topic && BY_TOPIC[topic];
  return quantity ? read(quantity, percent, `percent-${topic}`) : [];
}

/** `white heads from borer amount to 4 per cent`: the heads are counted, not the borers. */
const headsOf = (around: Surroundings, number: NumberFound): Topic | undefined =>
  nearestTopic(around, number.first, number.last, new Set<Topic>(['white-heads', 'dead-hearts']), 'clause')
    ?.topic;

/** `4.5 t per ha at 20.2 percent`: grain is weighed with its moisture. */
const isBesideCropWeight = (around: Surroundings, number: NumberFound): boolean =>
  wordOf(around, number.first - 1) === 'at' &&
  [2, 3].some((back) => /^(ha|hectare|acre|ac|t)$/.test(wordOf(around, number.first - back)));

/** `60 percent of the panicles are out`. */
function headingOf(around: Surroundings, number: NumberFound, percent: number, whole: Whole): Read[] {
  const near = [2, 3, 4, 5, 6].map((step) => wordOf(around, number.last + step)).join(' ');
  return whole === 'panicles' && /\b(out|emerged|exserted|showing|visible|headed)\b/.test(near)
    ? read('heading_pct', percent, 'percent-of-panicles-out')
    : [];
}

/** `ninety percent yellow`, `80% shade`, `50% flowering`, `60 percent sure`: said of something that is not measured here. */
const NOT_MEASURED = new Set(
  'yellow ripe mature sure shade germination humidity chance certain full done finished flowering flowered open charge battery discount of. golden turned'.split(
    ' ',
  ),
);

/** What stands behind `of`: `15% of hills`, `a third of the plot`, `half of it`, `4 percent tillers`. */
function wholeBehind(around: Surroundings, at: number): Whole {
  let index = at;
  const ofIt = /^(of|from|in|the)$/.test(wordOf(around, index));
  while (
    /^(of|the|my|our|all|this|that|his|her|these|those|from|in|whole|its|total|main|her)$/.test(
      wordOf(around, index),
    ) &&
    index < at + 4
  )
    index++;
  if (ofIt && index > at && around.isPlot(index)) return 'area';
  const whole = WHOLES.get(wordOf(around, index));
  if (whole === undefined) {
    if (ofIt && wordOf(around, at) === 'of') return WHOLES.get(wordOf(around, index + 1)) ?? 'area';
    return null;
  }
  return whole === 'area' && !ofIt ? null : whole;
}

/** `hills affected 15%`, `tillers cut 4 percent`. */
function wholeBefore(around: Surroundings, first: number): Whole {
  for (let index = first - 1; index >= Math.max(0, first - 3); index--) {
    if (around.clause[index] !== around.clause[first]) return null;
    const word = wordOf(around, index);
    if (word === 'hills' || word === 'tillers') return WHOLES.get(word) ?? null;
  }
  return null;
}

const LESS =
  /^(less|more|fewer|of\s*a|bigger|smaller|again|as|past|empty|full|day|time|hour|hours|way|an|bag|a|asleep|hearted)$/;
const WORKED =
  /^(weed|weeded|weeding|did|done|do|finished|finish|planted|plant|sprayed|spray|cut|harvested|topdressed|puddled|ploughed|plowed|dragged|levelled|other|took|used|takes|bottom|top|west|east|north|south|first|second|last|roadside|lower|upper|left|right|near|far|back|front|inner|outer|that|this|his|one|western|eastern|northern|southern)$/;

/** `half of it drowned`, `about half headed`, `a third of the plot lodged`, `a tenth of the hills`, `heads are coming about a third`. */
function readFraction(around: Surroundings, number: NumberFound, percent: number): Read[] {
  const next = wordOf(around, number.last + 1);
  if (LESS.test(next) || isWorkedHalf(around, number)) return [];
  const whole = wholeBehind(around, number.last + 1);
  if (whole === 'other') return [];
  if (whole === 'hills')
    return ofHills(
      nearestTopic(around, number.first, number.last, OF_HILLS)?.topic,
      percent,
      'fraction-of-hills',
    );
  if (whole === 'tillers' || whole === 'panicles') {
    const stems = ofStems(around, number, percent, whole);
    return stems.length > 0 ? stems : headingOf(around, number, percent, whole);
  }
  const topic = nearestTopic(
    around,
    number.first,
    number.last,
    OF_AREA,
    whole === 'area' ? 'clause' : 'stretch',
  );
  if (!topic || (whole !== 'area' && gapTo(topic, number) > 4)) return [];
  const quantity = BY_TOPIC[topic.topic];
  return quantity && !/^(rats|missing)$/.test(topic.topic)
    ? read(quantity, percent, `fraction-${topic.topic}`)
    : [];
}

const gapTo = (topic: { first: number; last: number }, number: NumberFound): number =>
  topic.last < number.first ? number.first - topic.last : topic.first - number.last;

/** `we hand weed half of the plot`, `the other half`, `the roadside half`: work or a place, no figure. */
function isWorkedHalf(around: Surroundings, number: NumberFound): boolean {
  for (let index = number.first - 1; index >= Math.max(0, number.first - 2); index--) {
    if (around.clause[index] !== around.clause[number.first]) return false;
    if (WORKED.test(wordOf(around, index))) return true;
  }
  return false;
}
