/** PURE. A fact as a plain sentence, for people: `Gap along the north bund.` `20 % of hills missing.` `Refill by Fri 14 Mar.` */
import type {
  ActionFact,
  ActionKind,
  Attribute,
  Dose,
  Fact,
  FindingFact,
  FindingKind,
  MeasurementFact,
  Quantity,
  Stage,
  Trigger,
  When,
} from './record.ts';

export const STAGE_WORDS: Record<Stage, string> = {
  germination: 'germination',
  seedling: 'seedling stage',
  tillering: 'tillering',
  panicle_initiation: 'panicle initiation',
  stem_elongation: 'stem elongation',
  booting: 'booting',
  heading: 'heading',
  flowering: 'flowering',
  milk: 'milk stage',
  dough: 'dough stage',
  ripe: 'ripe',
  harvested: 'harvested',
};

export const FINDING_WORDS: Record<FindingKind, string> = {
  gap: 'gaps',
  poor_anchorage: 'poorly rooted hills',
  uneven_stand: 'uneven stand',
  weeds: 'weeds',
  rodents: 'rats',
  lodging: 'lodging',
  insects: 'insects',
  disease: 'disease',
  nutrient: 'poor leaf colour',
  dry: 'lack of water',
  flooded: 'too much water',
  seepage: 'seepage',
  snails: 'snails',
  birds: 'birds',
  spray_injury: 'spray injury',
  off_types: 'off-types',
  weather_damage: 'weather damage',
};

/** What to do, as an order: `Hand weed`. */
export const ACTION_WORDS: Record<ActionKind, string> = {
  hand_weed: 'hand weed',
  spray: 'spray',
  replant: 'fill the gaps',
  fertilise: 'fertilise',
  irrigate: 'let water in',
  drain: 'drain',
  control_rodents: 'control rats',
  control_snails: 'control snails',
  scare_birds: 'scare birds',
  mend_bund: 'mend the bund',
  rogue: 'rogue',
  support: 'prop up the lodged plants',
  inspect: 'look again',
  measure: 'measure',
  harvest: 'harvest',
  land_prep: 'prepare the land',
  plant: 'plant',
  tell: 'pass it on',
  leave: 'leave it as it is',
};

const DONE_WORDS: Record<ActionKind, string> = {
  hand_weed: 'weeded by hand',
  spray: 'sprayed',
  replant: 'gaps filled',
  fertilise: 'fertilised',
  irrigate: 'water let in',
  drain: 'drained',
  control_rodents: 'rats controlled',
  control_snails: 'snails controlled',
  scare_birds: 'birds scared',
  mend_bund: 'bund mended',
  rogue: 'rogued',
  support: 'lodged plants propped up',
  inspect: 'looked at again',
  measure: 'measured',
  harvest: 'harvested',
  land_prep: 'land prepared',
  plant: 'planted',
  tell: 'passed on',
  leave: 'left as it is',
};

const QUANTITY_WORDS: Record<Quantity, (value: string) => string> = {
  row_spacing: (v) => `rows ${v} cm apart`,
  hill_spacing: (v) => `hills ${v} cm apart`,
  gap_width: (v) => `gap ${v} cm wide`,
  plant_height: (v) => `plant height ${v} cm`,
  hills_per_m2: (v) => `${v} hills per m²`,
  tillers_per_hill: (v) => `${v} tillers a hill`,
  tillers_per_m2: (v) => `${v} tillers per m²`,
  panicles_per_m2: (v) => `${v} panicles per m²`,
  missing_hills_pct: (v) => `${v} % of hills missing`,
  rodent_hills_pct: (v) => `${v} % of hills cut by rats`,
  rodent_tillers_pct: (v) => `${v} % of tillers cut by rats`,
  burrows: (v) => (v === '1' ? '1 burrow' : `${v} burrows`),
  weed_density: (v) => `${v} weeds per m²`,
  weed_cover_pct: (v) => `weeds cover ${v} %`,
  weed_height: (v) => `weeds ${v} cm tall`,
  lodged_area_pct: (v) => `${v} % of the area lodged`,
  affected_area_pct: (v) => `${v} % of the area affected`,
  affected_area: (v) => `${v} m² affected`,
  affected_hills_pct: (v) => `${v} % of hills affected`,
  insects_per_hill: (v) => `${v} insects a hill`,
  snails_per_m2: (v) => `${v} snails per m²`,
  dead_hearts_pct: (v) => `${v} % dead hearts`,
  white_heads_pct: (v) => `${v} % white heads`,
  water_depth: (v) => `water ${v} cm deep`,
  water_table_depth: (v) => `water ${v} cm below the surface`,
  leaf_colour: (v) => `leaf colour ${v}`,
  spad: (v) => `SPAD ${v}`,
  heading_pct: (v) => `${v} % headed`,
  grain_moisture_pct: (v) => `grain moisture ${v} %`,
  grain_yield: (v) => `yield ${v} t/ha`,
  rainfall: (v) => `rain ${v} mm`,
  air_temperature: (v) => `air ${v} °C`,
};

const ATTRIBUTE_WORDS: Record<Attribute, [more: string, noun: string]> = {
  height: ['taller', 'height'],
  vigour: ['more vigorous', 'vigour'],
  stem_strength: ['stronger in the stem', 'stem strength'],
  tillering: ['tillering more', 'tillering'],
  colour: ['greener', 'colour'],
  uniformity: ['more even', 'evenness'],
  earliness: ['earlier', 'earliness'],
  weeds: ['weedier', 'weeds'],
  water_use: ['using more water', 'water use'],
  damage: ['more damaged', 'damage'],
  stand: ['better in stand', 'stand'],
  yield: ['higher in yield', 'yield'],
};

/** One sentence, without the plot; days as `Fri 14 Mar`. */
export function sayFact(fact: Fact): string {
  return `${capital(phrase(fact))}.`;
}

function phrase({ list, fact }: Fact): string {
  switch (list) {
    case 'stages':
      return fact.status === 'current' ? STAGE_WORDS[fact.stage] : `close to ${STAGE_WORDS[fact.stage]}`;
    case 'ages':
      return `${fact.days} days after ${fact.since}`;
    case 'findings':
      return sayFinding(fact);
    case 'measurements':
      return sayMeasurement(fact);
    case 'actions':
      return sayAction(fact);
    case 'lessons':
      return `for next season: ${fact.text}`;
    case 'unvisited':
      return 'not looked at';
    case 'comparisons':
      return `${fact.more} is ${ATTRIBUTE_WORDS[fact.attribute][0]} than ${fact.less}`;
  }
}

function sayFinding({ kind, status, severity, taxon, where, cause }: FindingFact): string {
  const what = taxon ? taxonWords(taxon) : FINDING_WORDS[kind];
  const named = {
    present: severity ? `${what}, ${severity}` : what,
    suspected: `perhaps ${what}${severity ? `, ${severity}` : ''}`,
    risk: `may come: ${what}`,
    absent: NOT_THERE[kind] ?? `no ${what} seen`,
    cleared: `${what}: gone`,
  }[status];
  return [named, where && place(where), cause && `put down to ${cause}`].filter(Boolean).join(', ');
}

const NOT_THERE: Partial<Record<FindingKind, string>> = {
  gap: 'no gaps',
  uneven_stand: 'stand even',
  dry: 'not dry',
  flooded: 'not flooded',
  lodging: 'no lodging',
  nutrient: 'no sign of hunger or excess',
  seepage: 'no leak found',
  poor_anchorage: 'hills hold',
};

const sayMeasurement = ({ quantity, value, where }: MeasurementFact): string =>
  [QUANTITY_WORDS[quantity](figure(value)), where && place(where)].filter(Boolean).join(', ');

function sayAction({ kind, status, when, dose, who, hearsay }: ActionFact): string {
  const work = {
    done: DONE_WORDS[kind],
    planned: ACTION_WORDS[kind],
    proposed: `to consider: ${ACTION_WORDS[kind]}`,
    ruled_out: `decided against: ${ACTION_WORDS[kind]}`,
  }[status];
  const said = hearsay ? `said to be ${DONE_WORDS[kind]}, not seen` : work;
  return [`${said}${dose ? ` ${sayDose(dose)}` : ''}${who ? ` (${who})` : ''}`, when && sayWhen(when)]
    .filter(Boolean)
    .join(' ');
}

export const sayDose = ({ value, unit, of }: Dose): string => `${figure(value)} ${unit}${of ? ` ${of}` : ''}`;

/** `by Fri 14 Mar`, `on Fri 14 Mar`, `at panicle initiation`, `2 days after hand weeding`. */
export function sayWhen(when: When): string {
  if ('trigger' in when) return sayTrigger(when.trigger, when.days);
  return when.from === when.to
    ? `on ${sayDay(when.from)}`
    : `between ${sayDay(when.from)} and ${sayDay(when.to)}`;
}

const EVENT_WORDS: Partial<Record<Trigger, string>> = {
  drained: 'once it is drained',
  dry: 'once it is dry',
  rain: 'after rain',
  if_worse: 'if it gets worse',
  next_walk: 'on the next walk',
};

export function sayTrigger(trigger: Trigger, days?: number): string {
  const [side, action] = trigger.split(':') as ['after' | 'before', ActionKind | undefined];
  const event =
    EVENT_WORDS[trigger] ??
    (action ? `${side} “${ACTION_WORDS[action]}”` : `at ${STAGE_WORDS[trigger as Stage]}`);
  return days ? `${days} ${days === 1 ? 'day' : 'days'} ${action ? event : `after: ${event}`}` : event;
}

const WEEKDAYS = ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat'];
const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

/** `Fri 14 Mar` of `2031-03-14` (a local calendar day; no zone comes into it). */
export function sayDay(day: string): string {
  const [year, month, date] = day.split('-').map(Number) as [number, number, number];
  const weekday = new Date(Date.UTC(year, month - 1, date)).getUTCDay();
  return `${WEEKDAYS[weekday]} ${date} ${MONTHS[month - 1]}`;
}

export const taxonWords = (taxon: string): string => taxon.replaceAll('_', ' ');
/** A figure as it was given, at most three decimals. */
export const figure = (value: number): string => String(Math.round(value * 1000) / 1000);

/** The note's words for a place need their own preposition now and then: `northeast corner` -> `at northeast corner`. */
const place = (words: string): string =>
  /^(in|at|on|along|near|by|beside|under|from|to|around|across|between|behind|inside|outside|elsewhere|over|all|everywhere|here|there|next|where|towards?)\b/i.test(
    words,
  )
    ? words
    : `at ${words}`;

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
export const attributeNoun = (attribute: Attribute): string => ATTRIBUTE_WORDS[attribute][1];
