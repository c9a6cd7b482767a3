/**
 * Trade words that a recogniser loses, by the kind of thing they are; a kind tells what is said around them (see
 * clues.ts). Words are those of rice growing at large; the names of weeds, pests and diseases are the common and
 * the genus names (memory). Products are left out on purpose: one product is never read as another by its sound.
 */
export type TradeClass =
  | 'part'
  | 'pest'
  | 'disease'
  | 'weed'
  | 'stage'
  | 'work'
  | 'place'
  | 'nutrient'
  | 'gauge'
  | 'trouble';

export const TRADE_WORDS: Record<TradeClass, string> = {
  part: 'tiller tillers panicle panicles spikelet spikelets culm culms seedling seedlings ratoon internode axil awns stubble stolons',
  pest: 'hispa thrips armyworm armyworms cutworm caseworm mealybug mealybugs planthopper planthoppers leafhopper leafhoppers hopper hoppers snail snails maggot maggots grasshopper grasshoppers munia munias quelea crawfish',
  disease: 'tungro bakanae lesion lesions blight mildew',
  weed: 'echinochloa leptochloa sprangletop barnyard cyperus fimbristylis fimbry monochoria ludwigia eclipta nutsedge flatsedge sedge sedges azolla sesbania alligatorweed ducksalad',
  stage: 'tillering booting anthesis jointing panicle maturity germination senescence',
  work: 'topdress topdressing topdressed transplant transplanted transplanting transplanter puddling puddled rogue rogued roguing weeding irrigate irrigated irrigation levelling harrowing replant replanted herbicide herbicides insecticide fungicide dibbling broadcasting',
  place: 'plot plots bund bunds levee levees inlet outlet headland quadrat dapog paddy seedbed furrow',
  nutrient:
    'fertiliser fertilizer urea nitrogen phosphorus potash potassium zinc ammonium sulphate bronzing chlorosis deficiency',
  gauge: 'spad moisture chlorophyll piezometer lysimeter',
  trouble:
    'lodging lodged hopperburn deadheart deadhearts whitehead whiteheads seepage salinity sterility volunteers',
};

/**
 * Terms of two words or more. Where all words but one stand as they should, the odd one is measured against the
 * word that is missing. The last column lists words that also follow or precede on their own account and stay.
 */
export const TRADE_TERMS: readonly { term: string; kind: TradeClass; spare?: string }[] = [
  { term: 'stem borer', kind: 'pest', spare: 'more bore' },
  { term: 'stem borers', kind: 'pest', spare: 'more bores' },
  { term: 'leaf folder', kind: 'pest', spare: 'fold folded roller colour color' },
  { term: 'leaf folders', kind: 'pest', spare: 'folds rollers' },
  { term: 'brown planthopper', kind: 'pest' },
  { term: 'brown planthoppers', kind: 'pest' },
  { term: 'gall midge', kind: 'pest' },
  { term: 'whorl maggot', kind: 'pest' },
  { term: 'rice hispa', kind: 'pest' },
  { term: 'rice bug', kind: 'pest', spare: 'bag bags big' },
  { term: 'rice bugs', kind: 'pest', spare: 'bag bags' },
  { term: 'stink bug', kind: 'pest', spare: 'bag' },
  { term: 'stink bugs', kind: 'pest' },
  { term: 'mirid bugs', kind: 'pest', spare: 'rice stink ear more many mealy' },
  { term: 'green leafhopper', kind: 'pest' },
  { term: 'green leafhoppers', kind: 'pest' },
  { term: 'golden apple snail', kind: 'pest' },
  { term: 'golden apple snails', kind: 'pest' },
  { term: 'sheath blight', kind: 'disease', spare: 'plate bright' },
  { term: 'sheath rot', kind: 'disease', spare: 'root' },
  { term: 'neck blast', kind: 'disease', spare: 'late lost' },
  { term: 'leaf blast', kind: 'disease', spare: 'lost blade' },
  { term: 'leaf blight', kind: 'disease', spare: 'blade' },
  { term: 'panicle blight', kind: 'disease', spare: 'light lighter' },
  { term: 'brown spot', kind: 'disease', spare: 'spots stop soft support' },
  { term: 'false smut', kind: 'disease' },
  { term: 'stem rot', kind: 'disease', spare: 'root roots' },
  { term: 'barnyard grass', kind: 'weed' },
  { term: 'jungle rice', kind: 'weed' },
  { term: 'weedy rice', kind: 'weed' },
  { term: 'umbrella sedge', kind: 'weed', spare: 'said' },
  { term: 'flag leaf', kind: 'stage', spare: 'black lift flat live' },
  { term: 'green ring', kind: 'stage', spare: 'rain' },
  { term: 'panicle initiation', kind: 'stage' },
  { term: 'soft dough', kind: 'stage', spare: 'though so' },
  { term: 'hard dough', kind: 'stage', spare: 'though so to do' },
  { term: 'milk stage', kind: 'stage' },
  { term: 'milky stage', kind: 'stage' },
  { term: 'dough stage', kind: 'stage' },
  { term: 'maximum tillering', kind: 'stage' },
  { term: 'hand weeding', kind: 'work', spare: 'leading holding' },
  { term: 'rotary weeding', kind: 'work' },
  { term: 'gap filling', kind: 'work', spare: 'feeling' },
  { term: 'grain filling', kind: 'stage', spare: 'feeling falling' },
  { term: 'drum seeded', kind: 'work' },
  { term: 'direct seeded', kind: 'work' },
  { term: 'green manure', kind: 'nutrient' },
  { term: 'zinc deficiency', kind: 'nutrient', spare: 'since' },
  { term: 'iron toxicity', kind: 'nutrient' },
  { term: 'zinc sulphate', kind: 'nutrient' },
  { term: 'zinc sulfate', kind: 'nutrient' },
  { term: 'leaf colour chart', kind: 'gauge', spare: 'bright' },
  { term: 'leaf color chart', kind: 'gauge', spare: 'bright' },
  { term: 'chlorophyll meter', kind: 'gauge' },
  { term: 'spikelet sterility', kind: 'trouble', spare: 'fertility' },
  { term: 'hairline cracks', kind: 'trouble' },
  { term: 'rat burrow', kind: 'trouble', spare: 'barrier' },
  { term: 'rat burrows', kind: 'trouble', spare: 'barriers' },
  { term: 'rat damage', kind: 'trouble' },
  { term: 'rat droppings', kind: 'trouble', spare: 'bird' },
  { term: 'crab holes', kind: 'trouble', spare: 'crab' },
  { term: 'trap barrier', kind: 'work', spare: 'trap' },
  { term: 'weir box', kind: 'place' },
  { term: 'missing hills', kind: 'trouble', spare: 'hill' },
  { term: 'standing water', kind: 'trouble' },
  { term: 'row spacing', kind: 'gauge', spare: 'hill plant close wide' },
  { term: 'hill spacing', kind: 'gauge', spare: 'row plant close wide' },
  { term: 'alternate wetting', kind: 'work' },
  { term: 'water depth', kind: 'gauge', spare: 'deep' },
  { term: 'silver shoots', kind: 'trouble', spare: 'shots' },
  { term: 'onion shoots', kind: 'trouble' },
  { term: 'dead hearts', kind: 'trouble', spare: 'hard' },
  { term: 'dead heart', kind: 'trouble', spare: 'hard' },
  { term: 'white heads', kind: 'trouble', spare: 'hats hands hat hut' },
  { term: 'days after transplanting', kind: 'stage' },
];

/** Words that mean little to the trade alone but leave no doubt beside their partner. */
export const ONLY_IN_TERMS: ReadonlySet<string> = new Set([
  'folder',
  'folders',
  'borer',
  'borers',
  'midge',
  'smut',
  'sheath',
]);

export const wordsOf = (text: string): string[] => text.split(' ').filter(Boolean);
