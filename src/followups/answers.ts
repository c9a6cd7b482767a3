/** Which problem a piece of work answers, and which figures size it. [common practice] */
import type { ActionKind, FindingKind, Quantity } from '../reading/record.ts';

/** `usual`: the work is done for this; `also`: it can be, where the note speaks of it beside the work. */
export const ANSWERS: Record<ActionKind, { usual: FindingKind[]; also: FindingKind[] }> = {
  hand_weed: { usual: ['weeds'], also: ['off_types'] },
  spray: { usual: ['weeds', 'insects', 'disease'], also: ['snails', 'off_types'] },
  replant: { usual: ['gap'], also: ['poor_anchorage', 'uneven_stand', 'snails'] },
  fertilise: { usual: ['nutrient'], also: ['uneven_stand', 'spray_injury', 'weather_damage'] },
  irrigate: {
    usual: ['dry'],
    also: ['weeds', 'nutrient', 'poor_anchorage', 'spray_injury', 'weather_damage'],
  },
  drain: {
    usual: ['flooded'],
    also: ['poor_anchorage', 'snails', 'nutrient', 'insects', 'disease', 'lodging', 'seepage'],
  },
  control_rodents: { usual: ['rodents'], also: ['seepage'] },
  control_snails: { usual: ['snails'], also: ['gap'] },
  scare_birds: { usual: ['birds'], also: [] },
  mend_bund: { usual: ['seepage'], also: ['dry', 'flooded', 'rodents'] },
  rogue: { usual: ['off_types'], also: ['disease', 'weeds'] },
  support: { usual: ['lodging'], also: ['weather_damage'] },
  harvest: { usual: [], also: ['lodging', 'birds', 'rodents', 'weather_damage'] },
  land_prep: { usual: [], also: ['weeds', 'uneven_stand', 'flooded', 'dry'] },
  plant: { usual: ['gap'], also: ['poor_anchorage', 'uneven_stand'] },
  inspect: { usual: [], also: [] },
  measure: { usual: [], also: [] },
  tell: { usual: [], also: [] },
  leave: { usual: [], also: [] },
};

/** `inspect` and `measure` can be about any problem. */
export const aboutAnything = (kind: ActionKind): boolean => kind === 'inspect' || kind === 'measure';

export const answers = (kind: ActionKind, problem: FindingKind): boolean =>
  aboutAnything(kind) || ANSWERS[kind].usual.includes(problem) || ANSWERS[kind].also.includes(problem);

/** The work that grows from a look that found it not mended; null where it cannot be done again. */
export function workAgain(kind: ActionKind): ActionKind | null {
  if (kind === 'plant') return 'replant';
  return ['harvest', 'tell', 'inspect', 'measure', 'leave'].includes(kind) ? null : kind;
}

/** A first-hand `done` of these is itself the look: nothing is left to be seen afterwards. */
export const seenByDoing = (kind: ActionKind): boolean => ['inspect', 'measure', 'tell'].includes(kind);

/** Figures that size a problem; the smaller the better. */
export const SIZED_BY: Partial<Record<FindingKind, Quantity[]>> = {
  gap: ['missing_hills_pct', 'gap_width'],
  weeds: ['weed_density', 'weed_cover_pct'],
  rodents: ['rodent_hills_pct', 'rodent_tillers_pct', 'burrows'],
  lodging: ['lodged_area_pct'],
  insects: ['insects_per_hill', 'dead_hearts_pct', 'white_heads_pct', 'affected_hills_pct'],
  disease: ['affected_area_pct', 'affected_hills_pct', 'affected_area'],
  snails: ['snails_per_m2'],
  off_types: ['affected_hills_pct'],
  birds: ['affected_area_pct'],
};

/** Figures that show the result of the work in themselves, and which way is good. */
export const SHOWN_BY: Partial<
  Record<ActionKind, { quantity: Quantity; good: 'above_0' | 'not_above_0' | 'higher' | 'given' }[]>
> = {
  irrigate: [{ quantity: 'water_depth', good: 'above_0' }],
  drain: [{ quantity: 'water_depth', good: 'not_above_0' }],
  fertilise: [
    { quantity: 'leaf_colour', good: 'higher' },
    { quantity: 'spad', good: 'higher' },
  ],
  harvest: [
    { quantity: 'grain_yield', good: 'given' },
    { quantity: 'grain_moisture_pct', good: 'given' },
  ],
  plant: [
    { quantity: 'hills_per_m2', good: 'given' },
    { quantity: 'missing_hills_pct', good: 'given' },
  ],
};

/** Figures of the weather say nothing about who looked at a plot. */
export const ofTheWeather = (quantity: Quantity): boolean =>
  quantity === 'rainfall' || quantity === 'air_temperature';

const ASKED_FIGURES: [RegExp, Quantity[]][] = [
  [/\btiller/, ['tillers_per_hill', 'tillers_per_m2', 'rodent_tillers_pct']],
  [/\b(burrow|live hole)/, ['burrows']],
  [/\b(moisture|meter)\b/, ['grain_moisture_pct']],
  [/\b(yield|weigh|crop cut)/, ['grain_yield']],
  [/\b(water|depth|tube)\b/, ['water_depth', 'water_table_depth']],
  [/\b(lcc|leaf colou?r|colou?r chart|spad)\b/, ['leaf_colour', 'spad']],
  [/\b(height|how tall)\b/, ['plant_height']],
  [/\b(missing|gaps?|skips?|stand)\b/, ['missing_hills_pct', 'hills_per_m2', 'gap_width']],
  [/\bpanicle/, ['panicles_per_m2']],
  [/\b(hopper|bph|insect|borer)/, ['insects_per_hill', 'dead_hearts_pct', 'white_heads_pct']],
  [/\bsnail/, ['snails_per_m2']],
  [/\b(weed|sedge)/, ['weed_density', 'weed_cover_pct']],
  [/\b(heading|headed)\b/, ['heading_pct']],
  [/\b(lodg|lean)/, ['lodged_area_pct']],
];

/** The figures that a planned count asks for, as far as its words name them; an empty list means any. */
export function figuresAskedFor(words: string): Quantity[] {
  const heard = words.toLowerCase();
  return ASKED_FIGURES.flatMap(([pattern, quantities]) => (pattern.test(heard) ? quantities : []));
}
