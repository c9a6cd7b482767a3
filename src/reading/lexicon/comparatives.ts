/** Words that hold one plot against another. `more`: the plot spoken of has more of it; `less`: it has less. */
import type { Attribute } from '../record.ts';

export interface ComparativeRow {
  attribute: Attribute;
  more: string;
  less: string;
}

export const COMPARATIVES: readonly ComparativeRow[] = [
  {
    attribute: 'height',
    more: '=taller, =higher, more tall, be? # cm up on, =longer',
    less: '=shorter, more short, less tall, not as tall, not so tall, lower in height',
  },
  {
    attribute: 'vigour',
    more: 'more vigorous|vigour|vigor|growth, =stronger, =better, growing faster|better, =lusher, more lush, =healthier, =thriftier, better vigour|vigor|growth, looks better, =nicer, =bigger, =heartier, =faster, =sturdier looking',
    less: '=weaker, less vigorous|vigour|vigor|growth, =poorer, poorer growth|vigour|vigor, not as strong|vigorous|good, slower, =thinner|=smaller plants, =smaller',
  },
  {
    attribute: 'stem_strength',
    more: 'stiffer|stronger|thicker|tougher stem|straw|culm|stalk, stem|straw|culm be? stiffer|stronger|thicker|tougher|sturdier, =stiffer, =sturdier, stands better, standing better',
    less: 'weaker|softer|thinner stem|straw|culm|stalk, stem|straw|culm ..2? be? weaker|softer|thinner, =softer, the stems be? weaker',
  },
  {
    attribute: 'tillering',
    more: 'more tiller, more till, tillers|tillered|tillering more|better|heavier, better tillering, higher tiller count|number, more tillers per hill, more shoots, more stems',
    less: 'fewer|less tiller, fewer shoots, tillering|tillers|tillered less|poorer, poorer tillering',
  },
  {
    attribute: 'colour',
    more: '=greener, =darker, more green, more dark, better|deeper colour|color, darker green, higher spad|lcc',
    less: '=paler, =yellower, =lighter, more pale|yellow, less green, poorer|lighter colour|color, spad be? lower, lower spad|lcc, not as|so green',
  },
  {
    attribute: 'uniformity',
    more: 'more even|uniform|level, =evener, better uniformity, evener stand',
    less: 'more uneven|patchy|ragged, =patchier, =raggedier, less even|uniform, not as|so even',
  },
  {
    attribute: 'earliness',
    more: '=earlier, =sooner, =ahead, more advanced|forward, further along|on|ahead, in front, =quicker, more early',
    less: '=later, =behind, =slower, more late, less advanced, lagging, lags, not as far along, trails',
  },
  {
    attribute: 'weeds',
    more: 'more weed|weedy|grass|grassy, =weedier, =grassier, =dirtier, worse for weed, weeds be? worse|heavier|thicker|higher, heavier weeds',
    less: 'fewer|less weed|weedy|grass, =cleaner, weeds be? ..1? fewer|less|lower|lighter, better for weed, more clean, weeds be clearly fewer',
  },
  {
    attribute: 'water_use',
    more: 'more pump? water, uses more, took more water, =thirstier, drinks more',
    less: 'less pump? water, uses less, took less water, saved water, third|half|quarter less pump? water',
  },
  {
    attribute: 'damage',
    more: '=worse, more damage|damaged|cut|lodged|lodging|rats|disease|blast|bph|insects|snails|leaning, =sicker, harder hit, hit harder, heavier damage, more down, =flatter, more eaten|burnt',
    less: 'less damage|damaged|lodged|lodging|disease|rats|cut|blast|affected, fewer rats|cuts|snails|hoppers|insects, not as bad, less bad, better off, =healthier looking',
  },
  {
    attribute: 'stand',
    more: '=thicker|=denser|=fuller, better|fuller|thicker|denser stand, stand be? better|fuller|thicker, more hills, more plants',
    less: '=thinner, =sparser, thinner|poorer stand, stand be? poorer|thinner, fewer hills|plants, more gaps|missing|skips',
  },
  {
    attribute: 'yield',
    more: 'out yield|yields, outyielded, outyields, gave|gives|yielded|yields|made|cut more|better|higher, higher yield, more grain, yielded higher, heavier yield, beat, beats, =heavier, more yield, better yield',
    less: 'gave|gives|yielded|yields|made less|lower, lower yield, less grain|yield, poorer yield',
  },
];

/** A comparative that may be about anything is about the thing that is named beside it (`better in colour`, `weeds are worse`). */
export const BESIDE: Readonly<Record<string, Attribute>> = {
  colour: 'colour',
  color: 'colour',
  spad: 'colour',
  lcc: 'colour',
  straw: 'stem_strength',
  stem: 'stem_strength',
  stems: 'stem_strength',
  culm: 'stem_strength',
  culms: 'stem_strength',
  stalks: 'stem_strength',
  stand: 'stand',
  tillers: 'tillering',
  tillering: 'tillering',
  weeds: 'weeds',
  weed: 'weeds',
  grass: 'weeds',
  height: 'height',
  yield: 'yield',
  water: 'water_use',
  growth: 'vigour',
  vigour: 'vigour',
  vigor: 'vigour',
};
/** Comparatives of that kind; alone they mean the attribute of their row, or none. */
export const ABOUT_ANYTHING =
  /^(better|worse|stronger|weaker|poorer|thicker|thinner|stiffer|softer|lower|higher|more|less|fewer|heavier|lighter|nicer|improved)$/;
/** Need a thing beside them. */
export const NEEDS_A_THING = {
  more: '=higher, =more, =improved, =stiffer',
  less: '=lower, =less, =fewer',
} as const;
