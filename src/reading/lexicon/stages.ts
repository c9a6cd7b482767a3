/** Words for crop stages, after the standard scale for rice; `heads` and `heading` both as the trade says them. */
import type { Stage } from '../record.ts';

export interface StageRow {
  stage: Stage;
  words: string;
  /** The phrase itself says that the stage is near. */
  near?: true;
  /** Counts only where it is said of the crop (`it is ripe`, `ripe already`), not in passing. */
  weak?: true;
}

export const STAGE_WORDS: readonly StageRow[] = [
  {
    stage: 'heading',
    near: true,
    words:
      'about|abt|ready|going to =head, begin|start to =head within|in|soon|next|any, pushing heads, ready to pop, head go show|come, panicle almost out, almost out the panicle',
  },
  { stage: 'flowering', near: true, words: 'about|abt|ready|going to flower' },
  { stage: 'booting', near: true, words: 'about|abt to boot|go in boot' },
  {
    stage: 'ripe',
    near: true,
    words: 'about|abt ready to? cut?, not ripe yet but close, turning color|colour',
  },
  {
    stage: 'germination',
    words:
      '=germination, =germinating, germinated, emergence, =emerging, emerged, spiking, sprouting, germination be? complete|good|on|even|poor, coleoptile, coming up, just up',
  },
  {
    stage: 'seedling',
    words:
      'seedling stage, one|two|three|four|2|3|4 leaf stage, at seedling, seedling|seedlings be? established, two|three|four leaf, pegging, 2|3|4 leaf',
  },
  {
    stage: 'tillering',
    words:
      '=tillering, max|maximum|late|early|mid|active|full|peak tillering, tillering stage, =tiller out|hard',
  },
  {
    stage: 'panicle_initiation',
    words:
      'panicle initiation, =pi, p i, green ring, panicle initiated, initiation, panicle differentiation, panicle be? visible under the knife, panicle primordia, primordia, panicle be? initiating, pi stage, internode ring',
  },
  {
    stage: 'stem_elongation',
    words:
      'stem elongation, =jointing, =jointed, joint movement, internode elongation, internode be? elongating, elongation stage, internode moving|movement, half inch internode, moving joint, start|begin|started|starting to joint, =joints be? showing|moving, in joint, jointed',
  },
  {
    stage: 'booting',
    words:
      '=booting, in boot, in the boot, early|mid|late|full boot, boot stage, boots swelling, flag leaf be? show|showing|out|visible|there, flag leaf showing|out, flag leaves showing|out, panicle be? in the? sheath, boot be? swell|swelling|splitting, split boot, flag leaf emerged, carry belly, pregnant stage, pregnant, booted, in late|early|mid booting, flag leaf just come|came|coming',
  },
  {
    stage: 'heading',
    words:
      '=heading, =headed, head|heads be? out|coming|emerging|showing, =heads out|come|coming|emerging|showing, head out, heading out, panicle be? emerging|out|exserting|coming out?, ear emergence, panicle|panicles be? emerged, panicle exsertion, half headed, in head, =heads #, head|heads|panicle|ear come|came|coming|started|starting out, panicle exserted, earing, panicle emergence, starting to head, begin to head',
  },
  {
    stage: 'flowering',
    words:
      '=flowering, in flower, full flower, in full? bloom, full bloom, =blooming, anthesis, pollinating, =flowers be? open, flower now|already|start|started|come, at flower, pollen be? everywhere|flying, shedding pollen, in full flower, anthers be? out, anthers out, pollination, they|it|still flower, start|begin flowering, flower the? same time, flowers be? out, spikelets be? open',
  },
  {
    stage: 'milk',
    words:
      '=milk, =milky, milky be?, milk stage, milky stage, in the? milk, milky grain, grain be? milky, milk ripe, =milking',
  },
  {
    stage: 'dough',
    words:
      '=dough, soft dough, hard dough, dough stage, early|late dough, doughy, in the? dough, grain be? doughy',
  },
  {
    stage: 'ripe',
    words:
      '=ripe, =mature, =maturity, ready to|for cut|harvest|combine|reap|cutting|reaping, physiological maturity, ripened, fully ripe, =matured, harvest ready, fit to cut, ready for the combine, fully mature, ripe enough',
  },
];

/** Words that say that a stage is near: before it, or behind it. */
export const NEAR_BEFORE =
  "approaching, nearing, near, nearly, nearly in|at, almost, almost at|in, about to, abt to, close to, close on, not far from, soon, just before, coming to|up to|into|on, getting close|near to, getting toward|towards, days away from, days from, next be?, should begin|start to?, will begin|start to?, any day now, going to, gonna, ready to, shy of, short of, a few days off|from, towards, moving into, toward, will soon|be, starts soon, verge of, on the point of, not quite, not yet, expect, a week|day from|off, soon to be?, it'll|she'll|they'll be, should|will be, not long till|until|to";
export const NEAR_AFTER =
  'any day now?, be? near, be? close, soon, be? coming soon, be? days|week away|off, days away|off, week away|off, be? next, within the? week, in a week|day|few, around the corner, be? about to start|begin, be? # or|to? # day away|off|out|more, be? about|only|maybe|just? # day away|off|out|more, about # day off|away|out, # day off|away|out, like # day off|away, away, not far off?, by|before friday|saturday|sunday|monday|the weekend, almost, nearly, be? not far, in # day, almost there, a few day away|off|out, any time now?, will begin|start soon?, be? expected, not yet but close, coming up, next week';
