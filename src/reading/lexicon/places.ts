/** Words that name places within a plot, and the small words that lead to them. */

/** Places that say by themselves that they are one: a bund, a corner, what stands beside a field. Phrases as in the other tables. */
export const PLACE_NOUNS = `corner, ail, =end, side, edge, border, bund, dike, dyke, levee, =bank, inlet, outlet, intake, ditch, bar ditch, levee ditch, road, roadside, canalside, riverside, tree, pump, middle, centre, center, margin, row, strip, half, third, quarter,
   headland, canal, channel, drain, path, pathway, footpath, track, wheel track, tramline, gate, fence, pond, dam, river, creek, bayou, slough, stream, swamp, lake, pipe, tube, post, pole, hut, house, shed, pylon, turn, turn row, turnrow,
   pivot, lane, spot, low spot|spots, area, part, portion, section, well, tubewell, borehole, culvert, bridge, grove, orchard, forest, wood|woods, palm, mango, bamboo, banana, temple, mosque, church, school, graveyard, village, camp,
   north, south, east, west, ne, nw, se, sw, rim, boundary, =tail, head, mouth, hedge, =trees, bush, stump, ant hill, anthill, termite mound, mound, hollow, depression, dip, ridge, furrow, walkway, alley, weir, box,
   =top, bottom, shade, sump, spillway, mill, kiln, yard, barn, entrance, valve, marker, stake, peg, signboard, tank, windbreak, treeline, highway, embankment, watercourse, nullah, mogha, perimeter, middles, nursery,
   seedbed, landing, ramp, crossing, terrace, terrace wall, wall, crest, slope, toe, brow, riser, patch, pocket, line, wheel, garden, boundary fence, anicut, cut, fill, scrape, brake, thicket, sluice, powerline, power line, stop`;

/** Nouns that are as often something else: a place only behind a word that points (`the head ditch`, `near the tail`). */
export const AMBIGUOUS_NOUNS = new Set(
  'head top bottom tail foot mouth stop box line cut fill scrape well turn post part back front third half quarter patch row strip tree palm mango bamboo banana house tube pipe pump section portion spot area wood toe mill yard gate valve border levee bund wall shade'.split(
    ' ',
  ),
);

/** Lead to a place whatever noun follows (`near the cane brake`). */
export const SURE_PREPOSITIONS =
  'within # metre|meter|m|feet|ft|step|row of, near, nearby, nearest to?, near to, beside, besides, along, alongside, all along, next to, close to, opposite, opposite to, behind, close by, adjacent to, bordering, facing, toward, towards, in front of, on the side of';
/** Lead to a place where the noun is one. */
export const PREPOSITIONS =
  'at, in, on, by, around, round, across, within, inside, outside, down, up, above, below, over, throughout, against, beyond, between, from, off, through, under';
/** Stand before a preposition and belong to the place (`right by the well`, `way down by the slough`). */
export const DEGREES = new Set(
  'right way down all just up out only mostly especially mainly chiefly low high close over back'.split(' '),
);

export const DETERMINERS = new Set(
  `the a an this that those these its our their his her my your one two three four five few some every each both all most any other another whole same first second third fourth fifth last outer inner`.split(
    /\s+/,
  ),
);
/** Point to one part of a plot, so that the noun needs no preposition (`mango side rows`, `the low end`). */
export const POINTERS = new Set(
  `n s e w ne nw se sw north south east west northern southern eastern western north-east northeast northwest southeast southwest lower upper low high lowest highest far near middle central left right top bottom first second third fourth fifth last
   inner outer outside inside other front back head tail canal road river pond tank drain inlet outlet channel creek bayou slough kiln mango tree bank fence border corner sandy shaded shady sunny wet dry deep shallow low-lying windward leeward uphill downhill
   roadside canalside poplar pump ditch levee bund cut tule path temple school rest half main opposite edge turn `.split(
    /\s+/,
  ),
);
/** Parts of a plant and of the calendar: no place, and no place is a part of them. */
export const PLANT_AND_TIME = new Set(
  `leaf leaves blade blades sheath sheaths stem stems culm culms tip tips base node nodes neck necks collar midrib panicle panicles grain grains root roots crown flag tiller tillers straw heads ear ears whorl spikelet glume
   day days week weeks month months year years season seasons time times moment morning evening afternoon night weekend minute hour hours list report page`.split(
    /\s+/,
  ),
);
/** Follow a preposition of place without being a place. */
export const NO_PLACE_WORDS = new Set(
  `note count harvest maturity stage threshold limit target rain wind sun spray whole least most all it them him her me us you which what that this there here now same own crop plant plants hill hills canopy water surface
   other others ground soil knee line end top bottom half rest`.split(/\s+/),
);
/** Stand for a place without a noun of place. */
export const WHOLE_PHRASES =
  'elsewhere, everywhere else, =rest, the rest of it|plot|field?, other place|places|side|half|end|part, every other|second|third|fourth row|line|bund|strip, in the open, up top, down low, out the back, =inside, =outside, the whole length, two|three|four|five|several line|row, one full row, the front|back, up front, out back, where the wheel go|went|ran, ne|nw|se|sw corner, outside # ft|feet|m|metre|row';
/** Say which part so plainly that any noun may follow (`in the lower liyadda`). */
export const PLAIN_POINTERS =
  /^(north|south|east|west|northern|southern|eastern|western|lower|upper|lowest|highest|far|low-lying|northeast|northwest|southeast|southwest)$/;
