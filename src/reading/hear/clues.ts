/**
 * Words that speak for a sense. Rows name a set with `@`, so that a set is written once. A clue is no proof: it
 * counts only where the sound already points the same way.
 */
const SETS: Record<string, string> = {
  water:
    'water leak leaks leaking leaked leakage seep seeps seeping seepage weeping weeps flood flooded irrigate irrigation drain drains drained draining outlet inlet canal pipe gate hole holes crab crabs overtopped breached overflow pond',
  bank: '@water mend mended mending repair repaired repairing patch patched pack packed clay mud plaster plastered seal sealed rat rats burrow burrows barrow barrows runway runways runs grass weed weeds side sides cut along beside inside outside downhill uphill north south east west broken break breaks built shade top walk walked trimmed slashed high low washed blown crossing tank wet dry snail snails trap traps plot',
  gale: 'storm wind winds rain rains rained typhoon drizzle flat stem stems straw tall heavy ripe dough milk heading headed flowering nitrogen fertilizer fertiliser urea plants crop hills corner patch leaning lean plot stand harvest hail degrees panicles panicle booting',
  fall: '@gale percent % down seed too variety weather little yet some no risk tied tie',
  count:
    '# count counted counting per average averages hill hills square metre meter each main productive many more less few panicle panicles plot height tall plants maximum max number',
  patches:
    'spot spots patch patches corner lesion lesions lower leaf leaves sheath hill hills plants percent % spray sprayed few some moderate severe heavy light slight scattered panicle panicles neck infected hit fungicide starting started seen see suspected stage none no low down shaded canopy risk weather',
  insects:
    '# hill hills per count counted damage damaged net sweep sweeps sweeping spray sprayed threshold leaf leaves few some beetle beetles larvae adults eggs moth moths insects insect no none light heavy moderate severe near folded webbed plant plants edge seen bitten bite bites',
  weeds:
    'weed weeds weeding grass patch pull pulled spray sprayed herbicide inlet outlet corner corners bund row rows hand seedhead flower flowers flowering leaf near along some few seen inside between canopy covers cover half scattered channel pipe',
  stage:
    'stage leaf early late mid maximum max active days dat das week weeks heading flowering panicle started starting begun beginning nearly almost approaching crop plot reached now just before at split tillers percent % visible initiation showing swelling swollen plants',
  work: 'tomorrow today yesterday finished done finish start started crew women men boys ladies labour labor field plot plots monday tuesday wednesday thursday friday saturday sunday week days after before urea kilo kg bag bags by hand plan need now must should will plants off',
  feed: 'kilo kilos kg bag bags per hectare acre leaf leaves yellow pale apply applied put broadcast topdress top split split put more less short shortage enough deficiency need sulphate sulfate fertilizer fertiliser # too basal dose nitrogen rusty brown bronzing',
  hill: '# float floating missing per percent % count counted square metre meter planted cut tillers sampled near counts row rows leaf loose transplanted uprooted rats hopper plants empty',
  field:
    'plot plots field fields hill hills leaf leaves tiller tillers panicle panicles stem stems water bund bunds levee row rows crop rice damage counted percent spray sprayed weed weeds rat rats corner inlet outlet canal drain drained square metre meter severe moderate patch patches seedling seedlings plants stage urea nitrogen irrigation irrigate grass sheath roots transplanted transplanting heading flowering booting tillering lodged lodging dough ripe hectare per bug bugs insects hopper hoppers spot spots blight blast block replicate treatment centimeters centimeter lesion lesions larvae moth moths beetle beetles herbicide fungicide weeding seed damaged threshold anther anthers sulphide sulfide burrow burrows droppings traps tubewell',
};

const expand = (words: string): string[] =>
  words
    .split(' ')
    .flatMap((word) => (word.startsWith('@') ? expand(SETS[word.slice(1)]!) : word ? [word] : []));

/** The words of a clue list, sets spelled out: `@fall gale` is every word of `fall` and `gale`. */
export const cluesOf = (words: string | undefined): ReadonlySet<string> => new Set(expand(words ?? ''));

/** Every word of the sets: words of the field, whatever they sound like. */
export const FIELD_WORDS: ReadonlySet<string> = cluesOf(
  Object.keys(SETS)
    .map((name) => `@${name}`)
    .join(' '),
);

/** Words that bind a sentence and are no mishearing of a noun. */
export const BINDING: ReadonlySet<string> = cluesOf(
  'the a an and or of in on at is was are were be to for by with from no not this that these those it its some any few all more less very too but so as if than then there here we i he she they you my our your his her have has had do did will can',
);
