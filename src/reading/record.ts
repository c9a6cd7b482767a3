/**
 * The note that goes in and the record that comes out: the contract of the reader.
 * Every list, status, unit and key is one of these; nothing else may stand in a record.
 */

export const STAGES = [
  'germination',
  'seedling',
  'tillering',
  'panicle_initiation',
  'stem_elongation',
  'booting',
  'heading',
  'flowering',
  'milk',
  'dough',
  'ripe',
  'harvested',
] as const;
export type Stage = (typeof STAGES)[number];

export const FINDING_KINDS = [
  'gap',
  'poor_anchorage',
  'uneven_stand',
  'weeds',
  'rodents',
  'lodging',
  'insects',
  'disease',
  'nutrient',
  'dry',
  'flooded',
  'seepage',
  'snails',
  'birds',
  'spray_injury',
  'off_types',
  'weather_damage',
] as const;
export type FindingKind = (typeof FINDING_KINDS)[number];

export const FINDING_STATUSES = ['present', 'suspected', 'risk', 'absent', 'cleared'] as const;
export type FindingStatus = (typeof FINDING_STATUSES)[number];

export const SEVERITIES = ['slight', 'moderate', 'severe'] as const;
export type Severity = (typeof SEVERITIES)[number];

export const TAXA = [
  'barnyard_grass',
  'jungle_rice',
  'sprangletop',
  'umbrella_sedge',
  'rice_flatsedge',
  'fimbristylis',
  'monochoria',
  'ludwigia',
  'eclipta',
  'brown_planthopper',
  'whitebacked_planthopper',
  'green_leafhopper',
  'stem_borer',
  'leaf_folder',
  'rice_bug',
  'hispa',
  'gall_midge',
  'whorl_maggot',
  'thrips',
  'armyworm',
  'blast',
  'sheath_blight',
  'sheath_rot',
  'bacterial_leaf_blight',
  'brown_spot',
  'false_smut',
  'tungro',
  'bakanae',
  'golden_apple_snail',
] as const;
export type Taxon = (typeof TAXA)[number];

/** Unit of each quantity; values in a record are always in this unit. */
export const QUANTITY_UNITS = {
  row_spacing: 'cm',
  hill_spacing: 'cm',
  gap_width: 'cm',
  plant_height: 'cm',
  hills_per_m2: 'per m2',
  tillers_per_hill: 'per hill',
  tillers_per_m2: 'per m2',
  panicles_per_m2: 'per m2',
  missing_hills_pct: '%',
  rodent_hills_pct: '%',
  rodent_tillers_pct: '%',
  burrows: 'count',
  weed_density: 'per m2',
  weed_cover_pct: '%',
  weed_height: 'cm',
  lodged_area_pct: '%',
  affected_area_pct: '%',
  affected_area: 'm2',
  affected_hills_pct: '%',
  insects_per_hill: 'per hill',
  snails_per_m2: 'per m2',
  dead_hearts_pct: '%',
  white_heads_pct: '%',
  water_depth: 'cm',
  water_table_depth: 'cm',
  leaf_colour: 'chart score',
  spad: 'SPAD',
  heading_pct: '%',
  grain_moisture_pct: '%',
  grain_yield: 't/ha',
  rainfall: 'mm',
  air_temperature: 'degC',
} as const;
export type Quantity = keyof typeof QUANTITY_UNITS;

export const ACTION_KINDS = [
  'hand_weed',
  'spray',
  'replant',
  'fertilise',
  'irrigate',
  'drain',
  'control_rodents',
  'control_snails',
  'scare_birds',
  'mend_bund',
  'rogue',
  'support',
  'inspect',
  'measure',
  'harvest',
  'land_prep',
  'plant',
  'tell',
  'leave',
] as const;
export type ActionKind = (typeof ACTION_KINDS)[number];

export const ACTION_STATUSES = ['done', 'planned', 'proposed', 'ruled_out'] as const;
export type ActionStatus = (typeof ACTION_STATUSES)[number];

export const DOSE_UNITS = [
  'kg/ha',
  'kg',
  'g/m2',
  'g',
  'L/ha',
  'L',
  'mL/L',
  'bags/ha',
  'bags',
  'cm',
  'mm',
] as const;
export type DoseUnit = (typeof DOSE_UNITS)[number];

export const ATTRIBUTES = [
  'height',
  'vigour',
  'stem_strength',
  'tillering',
  'colour',
  'uniformity',
  'earliness',
  'weeds',
  'water_use',
  'damage',
  'stand',
  'yield',
] as const;
export type Attribute = (typeof ATTRIBUTES)[number];

export type Trigger =
  | 'drained'
  | 'dry'
  | 'rain'
  | 'if_worse'
  | 'next_walk'
  | Stage
  | `after:${ActionKind}`
  | `before:${ActionKind}`;

/** Days are local calendar days at the farm, `YYYY-MM-DD`, both ends included. */
export type When = { from: string; to: string } | { trigger: Trigger; days?: number };
export interface Dose {
  value: number;
  unit: DoseUnit;
  of?: string;
}

/** A plot code of the note, or null where the note leaves the plot open. */
export type PlotCode = string | null;

export interface StageFact {
  plot: PlotCode;
  stage: Stage;
  status: 'current' | 'approaching';
}
export interface AgeFact {
  plot: PlotCode;
  days: number;
  since: 'transplanting' | 'sowing';
}
export interface FindingFact {
  plot: PlotCode;
  kind: FindingKind;
  status: FindingStatus;
  severity?: Severity;
  taxon?: Taxon;
  where?: string;
  cause?: string;
}
export interface MeasurementFact {
  plot: PlotCode;
  quantity: Quantity;
  value: number;
  where?: string;
}
export interface ActionFact {
  plot: PlotCode;
  kind: ActionKind;
  status: ActionStatus;
  when?: When;
  dose?: Dose;
  who?: string;
  hearsay?: boolean;
}
export interface LessonFact {
  plot: PlotCode;
  text: string;
}
export interface UnvisitedFact {
  plot: PlotCode;
}
export interface ComparisonFact {
  attribute: Attribute;
  more: string;
  less: string;
}

export interface NoteRecord {
  stages: StageFact[];
  ages: AgeFact[];
  findings: FindingFact[];
  measurements: MeasurementFact[];
  actions: ActionFact[];
  lessons: LessonFact[];
  unvisited: UnvisitedFact[];
  comparisons: ComparisonFact[];
}
export type ListName = keyof NoteRecord;
export const LIST_NAMES = [
  'stages',
  'ages',
  'findings',
  'measurements',
  'actions',
  'lessons',
  'unvisited',
  'comparisons',
] as const satisfies readonly ListName[];

export interface PlotNamed {
  code: string;
  names: string[];
}

/** What the reader is given: the words, the day they were spoken, and the plots known at the site. */
export interface NoteToRead {
  id: string;
  /** Local date and time at the site, `YYYY-MM-DDTHH:MM`. */
  observedAt: string;
  plots: PlotNamed[];
  /** The plot where the writer stands or which was chosen, or null. */
  plot: PlotCode;
  channel: 'typed' | 'dictated';
  text: string;
}

/** Offsets into the note's own text in UTF-16 code units, end excluded. */
export interface Span {
  start: number;
  end: number;
}

/** A word that was read as another: what stands in the note, what was understood, and the evidence. */
export interface Heard extends Span {
  said: string;
  meant: string;
  why: string;
}

/** Why an entry stands: data, so that the note's page, the command line and a failing test print the same. */
export interface Trace {
  /** Id of the rule that found it. */
  rule: string;
  /** The note's own words that the rule matched. */
  words: string;
  /** Cues that changed it: `{cue: 'no …', words: 'no', says: 'absent'}`. */
  cues: { cue: string; words: string; says: string }[];
  /** Mishearings that it rests on. */
  heard: { said: string; meant: string }[];
  /** Readings that it displaced, and why. */
  beat: { rule: string; words: string; why: string }[];
  /** How the plot was settled, in words: `named in this clause`, `the note's plot`. */
  plot: string;
}

export type Fact =
  | { list: 'stages'; fact: StageFact }
  | { list: 'ages'; fact: AgeFact }
  | { list: 'findings'; fact: FindingFact }
  | { list: 'measurements'; fact: MeasurementFact }
  | { list: 'actions'; fact: ActionFact }
  | { list: 'lessons'; fact: LessonFact }
  | { list: 'unvisited'; fact: UnvisitedFact }
  | { list: 'comparisons'; fact: ComparisonFact };

/** One fact with the words that it came from and why it stands. */
export type Entry = Fact & { evidence: Span[]; trace: Trace };

export interface Reading {
  record: NoteRecord;
  /** The same facts, in the order of the text, each with evidence and trace. */
  entries: Entry[];
  heard: Heard[];
}

/** Words that a farm adds of its own: how a recogniser wrote them, and what was meant. */
export interface FarmWords {
  mishearings: { said: string; meant: string }[];
  people: string[];
  varieties: string[];
}
export const NO_FARM_WORDS: FarmWords = { mishearings: [], people: [], varieties: [] };

export const emptyRecord = (): NoteRecord => ({
  stages: [],
  ages: [],
  findings: [],
  measurements: [],
  actions: [],
  lessons: [],
  unvisited: [],
  comparisons: [],
});
