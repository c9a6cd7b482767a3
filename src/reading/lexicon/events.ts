/** Events that a time may hang on: stages, work, water and weather. Asked for by the reader of times. */
import { formsOf } from '../engine/forms.ts';
import { JOINING_MARK } from '../engine/passage.ts';
import { addPhrases, emptyTree, phrasesAt } from '../engine/phrase-tree.ts';
import type { Token } from '../text.ts';
import type { EventAt, TimedEvent } from '../times/find-times.ts';
import { STAGE_WORDS } from './stages.ts';

const EVENTS: readonly { event: TimedEvent; words: string }[] = [
  {
    event: 'drained',
    words:
      "it be? drained|drain, be? drained, drained, the water be? off|out|down|gone, water be? off|out|down, it's drained, drainage, draining, the field be? drained, it be? dried down, it dries down, the water goes off|out",
  },
  {
    event: 'dry',
    words:
      "it be? dry|dries, be? dry, dry, the soil|ground|field|surface be? dry|dries, it dries out|up, ground be? fit|hard, dries out|up|off?, things dry out|up, it's dry",
  },
  {
    event: 'rain',
    words:
      'rain, the rain, the next rain, a rain, it rains|rained, next rain, a good rain, some rain, rain comes|stops|passes, the rain stops|passes|comes, a shower, first rain, the storm, good shower, it stops raining, rains',
  },
  {
    event: 'next_walk',
    words:
      'next walk|round|visit|pass|loop, the next walk|round|visit|loop, my next round|walk|visit, our next round|walk|visit, next time round|around?, next time i|we walk|come|am|visit|round it?, next time we walk it, next time i walk, next time, next trip, on the next walk',
  },
  {
    event: 'if_worse',
    words:
      'it gets worse, gets worse, it spreads, spreads, it climbs, they spread, it goes up|over, it passes, it increases, more than #, it goes past, they get worse, numbers rise|climb|build|go, it gets any worse, it reaches, it builds, it crosses, they pass, they reach, worse, it gets to, count goes over|up|past',
  },
  {
    event: 'hand_weed',
    words:
      'weeding, the weeding, hand weeding, hand weed, we weed, weeded, it be? weeded, weed, the weeds be? out|gone|pulled, the hand weeding, the first weeding',
  },
  {
    event: 'spray',
    words:
      'spraying, the spraying, the spray, spray, herbicide, the herbicide, the granule, granule, fungicide, the fungicide, insecticide, we spray, it be? sprayed, treatment, the treatment, application, the plane',
  },
  {
    event: 'fertilise',
    words:
      'urea, the urea, topdressing, top dressing, the topdressing, the top dressing, topdress, top dress, fertilizer, the fertilizer, fertiliser, the fertiliser, fertilising, fertilizing, the n, n, nitrogen, the nitrogen, potash, the potash, the fertilizer be? on, the basal, the first split, second split',
  },
  {
    event: 'irrigate',
    words:
      'irrigation, the irrigation, irrigating, the flood, flooding, flood, we flood, reflooding, water be? back, permanent flood, the water be? back|on|in, the water comes in, water comes, the pump comes on',
  },
  {
    event: 'replant',
    words: 'replanting, gap filling, the gap filling, filling, refilling, filling the gaps',
  },
  {
    event: 'plant',
    words:
      'transplanting, planting, transplant, sowing, seeding, drilling, tp, the transplanting, the planting, planted, we plant, we transplant, transplanted, it be? planted, crawfish go in',
  },
  {
    event: 'harvest',
    words: 'harvest, harvesting, the harvest, cutting, cut, the combine, we cut, crop cut, the crop cut',
  },
  {
    event: 'mend_bund',
    words:
      'mending, the repair, the bund be? mended|fixed|repaired, levee be? fixed|patched|mended|packed, it be? mended|fixed|patched|packed|plugged, mending the bund, the leak be? fixed',
  },
  { event: 'control_rodents', words: 'trapping, the traps, baiting, the bait, traps go in' },
  { event: 'control_snails', words: 'picking, snail picking, the snail bait' },
  { event: 'rogue', words: 'roguing, rogueing, the roguing' },
  { event: 'inspect', words: 'the inspection, inspection' },
  { event: 'measure', words: 'the count, counting, the counts, sampling' },
  {
    event: 'land_prep',
    words: 'puddling, levelling, leveling, ploughing, plowing, land prep, land preparation, the puddling',
  },
  { event: 'support', words: 'tying, propping' },
  {
    event: 'heading',
    words:
      'it heads, they head, head out, heads come|show|appear, it starts heading, the heads be? out, it begins to head, it heads out',
  },
  { event: 'flowering', words: 'it flowers, they flower, flower, it starts flowering' },
  { event: 'booting', words: 'it boots, it be? in boot, boot' },
  { event: 'ripe', words: 'it ripens, it be? ripe, maturity' },
  { event: 'tillering', words: 'it tillers, tillers show|appear, maximum tillering' },
  { event: 'panicle_initiation', words: 'pi, green ring, panicle initiation, panicle differentiation' },
];

const TREE = emptyTree<TimedEvent>();
for (const { event, words } of EVENTS) addPhrases(TREE, words, event);
for (const { stage, words } of STAGE_WORDS) addPhrases(TREE, words, stage);

/** Reads at most eight words ahead; the words are few, so their forms are made on the spot. */
export const eventReader: EventAt = (tokens: Token[], index: number) => {
  const near = tokens.slice(index, index + 10);
  const forms = near.map(({ lower }) => formsOf(lower));
  const following = new Int32Array(near.length);
  let next = near.length;
  for (let at = near.length - 1; at >= 0; at--) {
    following[at] = next;
    if (!(near[at]!.kind === 'mark' && JOINING_MARK.test(near[at]!.text))) next = at;
  }
  const hit = phrasesAt(TREE, { forms, following }, 0)[0];
  return hit ? { event: hit.meanings[0]!, last: index + hit.last } : null;
};
