/** Figures without a unit, which their name alone explains: `SPAD 36.5`, `tube 17`, `max 35.4`, `5 on`, `24 below`. */
import type { NumberFound } from '../numbers/find-numbers.ts';
import type { Quantity } from '../record.ts';
import { endsHere } from './ends-here.ts';
import { onInstrument, topicAt } from './on-instrument.ts';
import { type Read, type ReadFigure, read } from './reading.ts';
import { frameAt } from './shapes.ts';
import { nearestTopic, type Surroundings, type TopicFound, wordOf } from './surroundings.ts';
import { celsius } from './temperatures.ts';
import type { Topic } from './topics.ts';

const NAMES: Partial<Record<Topic, Quantity>> = {
  spad: 'spad',
  'leaf-colour': 'leaf_colour',
  tube: 'water_table_depth',
  moisture: 'grain_moisture_pct',
  heading: 'heading_pct',
  height: 'plant_height',
  tillers: 'tillers_per_hill',
  panicles: 'panicles_per_m2',
  temperature: 'air_temperature',
  rows: 'row_spacing',
  hills: 'hill_spacing',
  spacing: 'hill_spacing',
  burrows: 'burrows',
  yield: 'grain_yield',
  water: 'water_depth',
  rain: 'rainfall',
};

/** What may stand between a name and its figure. */
const JOINING = new Set(
  (
    "did one averaging t / ha tonnes square sq m2 lower higher too four three six eight is are was at about around of reading readings reads read says said shows showing show gives gave gave: = : - only now today the on it i got i've count counts average avg mean averages averaged maybe roughly nearly almost like some score value level again stands say just up here there this comes came to in a uh um er " +
    "he we they with has have having reached reaches touching touched measured for per hill plot all round morning , approx approximately number hit it's still and two five ten hills nos as per meter metre chart card already"
  ).split(' '),
);
const REACH_BACK = 9;
/** `SPAD reading 36.5 heads coming out`: a name right before the figure wins over one behind it. */
const BESIDE = 2;

export const readBare: ReadFigure = (around, number) => {
  if (number.form === 'fraction' || number.value < 0)
    return number.value < 0 ? belowZero(around, number) : [];
  return (
    (wordOf(around, number.first - 1) === 'and' ? nameBehind(around, number) : null) ??
    nameBefore(around, number, BESIDE) ??
    onInstrument(around, number) ??
    nameBehind(around, number) ??
    nameBefore(around, number, REACH_BACK) ??
    []
  );
};

function belowZero(around: Surroundings, number: NumberFound): Read[] {
  return nearestTopic(around, number.first, number.last, new Set<Topic>(['tube']), 'sentence')
    ? read('water_table_depth', -number.value, 'tube')
    : [];
}

/** `36.5 SPAD`, `19 moisture`, `5 on`, `24 below`, `11 active holes`, `22 hills` in a frame. */
function nameBehind(around: Surroundings, number: NumberFound): Read[] | null {
  const next = wordOf(around, number.last + 1);
  const after = wordOf(around, number.last + 2);
  const topic =
    topicAt(around, number.last + 1) ?? (ADJECTIVE.test(next) ? topicAt(around, number.last + 2) : null);
  if (/^(below|down)$/.test(next) && isWaterTable(around, number))
    return read('water_table_depth', number.value, 'below');
  if (
    next === 'on' &&
    (after === 'it' || after === 'her' || endsHere(around, number.last + 2)) &&
    isWater(around, number)
  )
    return read('water_depth', number.value, 'water-on');
  if (!topic) return null;
  if (topic.topic === 'burrows') return read('burrows', number.value, 'burrows-counted');
  if (topic.topic === 'spad') return read('spad', number.value, 'named-behind');
  if (topic.topic === 'moisture') return read('grain_moisture_pct', number.value, 'named-behind');
  if (topic.topic === 'hills')
    return framed(around, number) ? read('hills_per_m2', number.value, 'hills-in-a-frame') : [];
  if (topic.topic === 'panicles' || (topic.topic === 'heading' && next === 'heads'))
    return framed(around, number) ? read('panicles_per_m2', number.value, 'panicles-in-a-frame') : [];
  if (topic.topic === 'tillers')
    return framed(around, number)
      ? read('tillers_per_m2', number.value, 'tillers-in-a-frame')
      : isTillerCount(around, number)
        ? read('tillers_per_hill', number.value, 'tillers-counted')
        : [];
  if (topic.topic === 'snails')
    return framed(around, number) ? read('snails_per_m2', number.value, 'snails-in-a-frame') : [];
  if (topic.topic === 'weeds')
    return framed(around, number) ? read('weed_density', number.value, 'weeds-in-a-frame') : [];
  return NEXT_IS_OTHER.has(topic.topic) ? [] : null;
}

const ADJECTIVE = /^(active|live|fresh|new|open|rat|small|big|more|good|productive|effective|bearing)$/;
/** `2 rats`, `3 snails`, `4 plants`: a count of things that has no quantity. */
const NEXT_IS_OTHER: ReadonlySet<Topic> = new Set<Topic>([
  'rats',
  'insects',
  'crop',
  'gap',
  'white-heads',
  'dead-hearts',
  'off-types',
  'disease',
  'patch',
  'bund',
  'crack',
  'part-length',
  'sweep',
  'missing',
  'rain',
]);

function isWaterTable(around: Surroundings, number: NumberFound): boolean {
  const topic = nearestTopic(
    around,
    number.first,
    number.last,
    new Set<Topic>(['tube', 'water', 'temperature', 'yield', 'spad', 'leaf-colour']),
    'before',
  )?.topic;
  return (
    (topic === undefined || topic === 'tube' || topic === 'water') && number.value >= 1 && number.value <= 120
  );
}

function isWater(around: Surroundings, number: NumberFound): boolean {
  return (
    number.value <= 40 &&
    !/^(at|by|from|till|until)$/.test(wordOf(around, number.first - 1)) &&
    !/(hopper|insects)/.test(
      nearestTopic(around, number.first, number.last, new Set<Topic>(['insects', 'water']), 'stretch')
        ?.topic ?? '',
    )
  );
}

/** `one square metre I count 22 hills`, `panicle 268 one square meter`. */
function framed(around: Surroundings, number: NumberFound): boolean {
  for (let index = Math.max(0, number.first - 14); index <= number.last + 8; index++) {
    if (around.tokens[index]?.sentence !== around.tokens[number.first]?.sentence) continue;
    if (frameAt(around.tokens, index) || /^(frame|quadrat|m2)$/.test(wordOf(around, index))) return true;
    if (wordOf(around, index) === 'one' && /^(square|sq)$/.test(wordOf(around, index + 1))) return true;
  }
  return false;
}

/** `18 tillers`; not `split a dozen stems`, `four tillers cut`. */
function isTillerCount(around: Surroundings, number: NumberFound): boolean {
  const before = [1, 2, 3].map((back) => wordOf(around, number.first - back));
  if (
    number.value < 3 ||
    before.some((word) => /^(split|opened|checked|sampled|pulled|dissected|sliced|of|from|on|in)$/.test(word))
  )
    return false;
  return !/^(cut|dead|gone|eaten|down|broken|chewed|lost|missing|had|show|showed)$/.test(
    wordOf(around, number.last + 2),
  );
}

/** The name that leads to the figure with nothing but joining words and plots between. */
function nameBefore(around: Surroundings, number: NumberFound, reach: number): Read[] | null {
  let steps = 0;
  for (
    let index = number.first - 1;
    index >= 0 && steps < reach && number.first - index < 4 * REACH_BACK;
    index--
  ) {
    if (!around.isPlot(index)) steps++;
    if (around.tokens[index]?.sentence !== around.tokens[number.first]?.sentence) return null;
    const topic = topicEndingAt(around, index);
    const reads = topic && NAMES[topic.topic] ? named(around, number, topic, index) : null;
    if (reads || (topic && NAMES[topic.topic] && topic.topic !== 'hills')) return reads;
    if (!JOINING.has(wordOf(around, index)) && !around.isPlot(index)) return null;
  }
  return null;
}

function topicEndingAt(around: Surroundings, at: number): TopicFound | null {
  for (let back = Math.max(0, at - 4); back <= at; back++) {
    const topic = topicAt(around, back);
    if (topic?.last === at) return topic;
  }
  return null;
}

function named(around: Surroundings, number: NumberFound, topic: TopicFound, end: number): Read[] | null {
  const quantity = NAMES[topic.topic] as Quantity;
  const said = wordOf(around, topic.first);
  if (topic.topic === 'hills' && framed(around, number))
    return read('hills_per_m2', number.value, 'hills-in-a-frame');
  const between = around.tokens.slice(end + 1, number.first).map((token) => token.lower);
  const { value } = number;
  if (
    /^(hills|plants|stools|plots|points|places|sites)$/.test(wordOf(around, number.last + 1)) &&
    topic.topic !== 'hills'
  )
    return null;
  if (topic.topic === 'water' && !isWaterFigure(around, number, said, between)) return null;
  if (
    topic.topic === 'rain' &&
    !(said === 'gauge' || between.some((word) => /^(is|was|reads|says|:|=)$/.test(word)))
  )
    return null;
  if (
    topic.topic === 'yield' &&
    !(value >= 0.5 && value <= 15 && /^(yield|yields|yielded|gave|made|averaged|averages)$/.test(said))
  )
    return null;
  if (
    topic.topic === 'heading' &&
    (value < 1 ||
      value > 100 ||
      !/^(heading|headed|heads|panicles|ears|in)$/.test(said) ||
      between.includes('on'))
  )
    return null;
  if (topic.topic === 'hills' && !(speaksOfRowsBefore(around, topic.first) && value >= 8 && value <= 60))
    return null;
  if (
    topic.topic === 'rows' &&
    !(
      value >= 8 &&
      value <= 60 &&
      /^(row|rows)$/.test(said) &&
      between.every((word) => !/^(of|the|,|and)$/.test(word))
    )
  )
    return null;
  if (topic.topic === 'spacing' && !(value >= 8 && value <= 60)) return null;
  if (topic.topic === 'panicles') return panicles(around, number, between);
  if (topic.topic === 'temperature')
    return isTemperature(around, number, said)
      ? read(quantity, celsius(value, isColdIn(said, value)), 'named-before')
      : null;
  if (
    topic.topic === 'height' &&
    !(value >= 5 && value <= 200 && /^(height|ht|plant|canopy|tall|heigth|hight|tallest)$/.test(said))
  )
    return null;
  if (topic.topic === 'leaf-colour' && (value < 1 || value > 6)) return null;
  if (
    topic.topic === 'tillers' &&
    (value < 2 || value > 90 || (said !== 'tiller' && said !== 'tillers' && between.includes('to')))
  )
    return null;
  return read(quantity, value, 'named-before');
}

const isWaterFigure = (around: Surroundings, number: NumberFound, said: string, between: string[]): boolean =>
  /^(water|water's|flood|flood's|depth|standing|tubig|pani|wtr|h2o)$/.test(said) &&
  number.value <= 60 &&
  between.every((word) => /^(is|at|level|depth|about|around|now|only|still|,|:|=|maybe|of)$/.test(word)) &&
  endsHere(around, number.last + 1);

function panicles(around: Surroundings, number: NumberFound, between: string[]): Read[] | null {
  if (framed(around, number)) return read('panicles_per_m2', number.value, 'panicles-in-a-frame');
  return number.value >= 80 && number.value <= 900 && !between.includes('of')
    ? read('panicles_per_m2', number.value, 'panicles-counted')
    : null;
}

/** A low above 35 can only be in Fahrenheit where rice grows. */
const isColdIn = (said: string, value: number): boolean => /^(low|min|minimum)$/.test(said) && value > 35;

const isTemperature = (around: Surroundings, number: NumberFound, said: string): boolean =>
  number.value >= 5 &&
  number.value <= 125 &&
  !(/^(hot|heat|hi)$/.test(said) && number.value < 28) &&
  endsHere(around, number.last + 1);

const speaksOfRowsBefore = (around: Surroundings, at: number): boolean =>
  nearestTopic(around, at, at, new Set<Topic>(['rows', 'spacing']), 'sentence') !== null;
