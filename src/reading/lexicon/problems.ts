/**
 * Words for problems of a crop. A phrase in `words` stands for all its inflections; `a|b` is either word, `a?` may be
 * missing, `=a` is that very form. English of the rice trade in Asia, Africa, Australia and the Americas; the names of
 * species after the crop protection manuals of the international rice institutes (common practice).
 */
import type { FindingKind, FindingStatus, Taxon } from '../record.ts';

export interface ProblemRow {
  kind: FindingKind;
  words: string;
  taxon?: Taxon;
  /** A word that carries its own answer: `leak-free` is absent, `weak straw` a risk. */
  says?: FindingStatus;
  /** Counts only beside other words of the field: `down`, `dry`, `burn`. */
  weak?: true;
  /** A sign or symptom: beside a named culprit it adds no second entry of another kind. */
  sign?: true;
}

export const PROBLEMS: readonly ProblemRow[] = [
  // Stand
  {
    kind: 'gap',
    words: `gap, skip|skipped|missed|missing hill|plant|row|line|stool|clump|spot|place|patch|pass|strip, =missing, hill|plant|row|line|stool|seedling be? gone, =skips, a =skip, =misses,
      blank, blank|bare|empty|open|vacant spot|patch|place|space|area|strip|hill|row, bare ground|soil, nothing|none came|come|coming|grew|emerged up?, hole in the? stand,
      hill|plant|stool|seedling be? =missing, hill|plant|seedling be? not|never there, drill skip, skip in the? stand, dead|died hill|plant, hill|plant|seedling be? dead|die|died,
      did =not|=n't come|emerge up?, didn't come|emerge up?, planter|drill|seeder skip, vacancy, misses in the? row, thin to nothing, worker skip hill, lost|missing stand, stand loss, missed a row|pass|strip, skippy, gappy, forgot|forget to plant, not planted in? there?, open hill`,
  },
  { kind: 'gap', weak: true, words: 'be not there, not there' },
  {
    kind: 'poor_anchorage',
    words: `float, floater, unrooted, rootless, uprooted, hill|plant|seedling|stool stand? be? loose, loose hill|plant|seedling|stool, pull|pulled with one|two finger, lying|lie|sit|sitting on top of? the? straw|residue|mud|trash|soil,
      on top of the? straw|residue|trash|mud, not anchored|rooted|gripping|gripped, no anchorage, poor|bad|weak anchorage|rooting, wash|washed out hill|plant|seedling, hill|plant|seedling|stool washed out, hill|plant|seedling come|came|pop|popped|lift|lifted out|loose, not|never take|took|taken root|hold, no|poor soil contact, drift|drifted|drifting seedling|hill|plant, seedling|hill|plant drift|drifting|drifted away?, swim|swimming seedling, seedling|hill|plant be? swim|swimming, roots be? in the? air`,
  },
  {
    kind: 'uneven_stand',
    words: `uneven, patchy, ragged, raggedy, thick and|n|& thin, irregular, not =even, not uniform|regular, dense then thin, spotty, ratty, streaky stand|growth, stunted patch|area|strip|plant|hill, =stunted, up and down stand, different|various|all height|size|heights|sizes, growth be? not =even,
      bumpy stand, unequal, thin stand|patch|spot|area, stand be? =thin, sparse stand|patch, short patch|strip|area, wavy growth|stand, sickly patch, lag|lagging patch, poor growth, growth be? poor, short in strip|patch|streak, stunting, checkered, mixed height, behind in patch, plant|paddy|rice|crop be? always|still|too? =short`,
  },
  // Weeds
  {
    kind: 'weeds',
    taxon: 'barnyard_grass',
    words:
      'barnyard grass?, barn yard grass?, barnyardgrass, cockspur, crus galli, echinochloa crus galli, bygrass, barnyard millet',
  },
  {
    kind: 'weeds',
    taxon: 'jungle_rice',
    words: 'jungle rice, junglerice, colona, echinochloa colona, awnless barnyard grass?',
  },
  {
    kind: 'weeds',
    taxon: 'sprangletop',
    words: 'sprangletop, sprangle top, leptochloa, red sprangletop, chinensis',
  },
  {
    kind: 'weeds',
    taxon: 'umbrella_sedge',
    words:
      'small flower|flowered umbrella sedge?, smallflower umbrella sedge?, umbrella sedge|plant, difformis, cyperus difformis, dirty dora, small flower sedge',
  },
  {
    kind: 'weeds',
    taxon: 'rice_flatsedge',
    words: 'rice flatsedge, rice flat sedge, flat sedge, flatsedge, cyperus iria, iria',
  },
  {
    kind: 'weeds',
    taxon: 'fimbristylis',
    words: 'fimbristylis, fimbry, fringerush, fringe rush, globe fringerush, miliacea',
  },
  {
    kind: 'weeds',
    taxon: 'monochoria',
    words: 'monochoria, pickerel weed, pickerelweed, pickerel, vaginalis',
  },
  {
    kind: 'weeds',
    taxon: 'ludwigia',
    words: 'ludwigia, water primrose, waterprimrose, primrose willow, primrose',
  },
  { kind: 'weeds', taxon: 'eclipta', words: 'eclipta, false daisy' },
  {
    kind: 'weeds',
    words: `=weeds, =weed, damo, gulma, agacha, kharpatwar, mauvaise herbe, adventices, mauvaises herbes, =weedy, weed pressure|growth|flush|cover|population, weediness, sedge, nutsedge, nut sedge, nutgrass, nut grass, water grass, watergrass, duck salad, ducksalad, escape of? grass?, =escapes, arrowhead, cattail, bulrush, spikerush, spike rush, smartweed,
      morning glory, coffee bean, sesbania, hemp sesbania, indigo, alligator weed, alligatorweed, signalgrass, signal grass, broadleaf signalgrass, crabgrass, crab grass, dayflower, jointvetch, joint vetch, red stem, redstem, water hyacinth, water lily, water fern, azolla,
      echinochloa, cyperus, broadleaf, broad leaf weed?, broadleaf weed, broad leaves, grass weed|patch|clump, weed grass, =grassy, striga, witchweed, mimosa, bermuda grass, knotgrass, paspalum, paragrass, goosegrass, goose grass, itchgrass, torpedo grass, palmer, pigweed, cocklebur, starfruit, sagittaria, heteranthera, mud plantain, ammannia, rotala, scirpus, bog bulrush, wild grass, unwanted grass, heavy|thick|full with|of|in grass, grass be? come|coming|growing, new grass, grass be? still? tall|thick|plenty|high, much|more|plenty|many|too grass, some|few grass, algae, scum, moss`,
  },
  // Rodents and birds
  {
    kind: 'rodents',
    words: `rat, mouse, daga, tikus, idur, chuha, souris, vole, bandicoot, rodent, mole rat, cane rat, grasscutter, field rat, cut by rat, marsh rat, muskrat, squirrel, nutria, mark of rat`,
  },
  {
    kind: 'rodents',
    sign: true,
    words: `live|active|fresh|new|open|rat burrow|hole, burrow, rat hole|sign|damage|run|runway, runway, droppings, rat droppings, cut|gnawed|chewed|clipped tiller|stem|stool|hill, tiller|hill|stool|stem|panicle cut|gnawed|chewed, tiller be? cut,
      fresh|new|old cut|cuts|cutting|cuttings|gnawing, cut at 45, rat|rats have? cut, gnawed|gnawing, hill be? cut, rat cut|bite, slantwise cut, stem be? cut, tail|foot print`,
  },
  {
    kind: 'birds',
    words: `bird, ibon, oiseau, quelea, weaver bird?, weaver, munia, maya bird?, maya, sparrow, parrot, parakeet, pigeon, blackbird, redwing, red wing|winged blackbird?, grackle, duck|ducks be? in|eating, wild duck, geese, goose, coot, ibis, dove, finch, bobolink, mannikin, cowbird, pecked, peck|pecking|pecked head|grain|seed, swamp hen, water hen, moorhen, purple gallinule, gallinule, gander, mallard, whistling duck, crane, starling, egret, rook, crow, bird damage, java finch, waxbill, bishop bird`,
  },
  {
    kind: 'snails',
    taxon: 'golden_apple_snail',
    words: 'golden apple snail, golden snail, apple snail, gas, golden kuhol, channeled apple snail',
  },
  {
    kind: 'snails',
    words:
      'snail, kuhol, snail egg|damage|bite, pink egg, egg mass|cluster of snail, pink egg cluster|mass, slug',
  },
  // Insects
  {
    kind: 'insects',
    taxon: 'brown_planthopper',
    words:
      'brown plant hopper, brown planthopper, brown hopper, bph, bphs, b p h, wereng coklat, wereng, hopperburn, hopper burn|burned|burnt, brown plant hoppers',
  },
  {
    kind: 'insects',
    taxon: 'whitebacked_planthopper',
    words:
      'white backed? plant hopper, white backed? planthopper, whitebacked planthopper, whiteback planthopper, wbph, w b p h, white back hopper',
  },
  {
    kind: 'insects',
    taxon: 'green_leafhopper',
    words: 'green leaf hopper, green leafhopper, green hopper, glh, g l h',
  },
  {
    kind: 'insects',
    taxon: 'stem_borer',
    words:
      'stem borer, stemborer, yellow|striped|white|pink stem borer, stem bore, borer, ysb, ssb, rice borer, stalk borer, sugarcane borer, mexican rice borer',
  },
  {
    kind: 'insects',
    taxon: 'stem_borer',
    sign: true,
    words: 'dead heart, deadheart, whitehead, white head|panicle|ear, white earhead, empty white head',
  },
  {
    kind: 'insects',
    taxon: 'leaf_folder',
    words: 'leaf folder, leaffolder, leaf roller, leafroller, folded leaves, leaf fold',
  },
  {
    kind: 'insects',
    taxon: 'rice_bug',
    words:
      'rice bug, walang sangit, ear bug, earhead bug, ear head bug, gandhi bug, gundhi bug, ricebug, leptocorisa, walang sangit, sangit',
  },
  { kind: 'insects', taxon: 'hispa', words: 'hispa, rice hispa' },
  {
    kind: 'insects',
    taxon: 'gall_midge',
    words: 'gall midge, silver shoot, onion shoot, onion leaf, silvershoot, gall fly',
  },
  {
    kind: 'insects',
    taxon: 'whorl_maggot',
    words: 'whorl maggot, whorl maggots, hydrellia, leaf whorl maggot',
  },
  { kind: 'insects', taxon: 'thrips', words: 'thrips, thrip' },
  {
    kind: 'insects',
    taxon: 'armyworm',
    words:
      'armyworm, army worm, cutworm, cut worm, swarming caterpillar, fall armyworm, climbing cutworm, worm army',
  },
  {
    kind: 'insects',
    words: `insect, poka, uod, criquet, hopper, plant hopper, planthopper, leaf hopper, leafhopper, stink bug, stinkbug, caterpillar, grasshopper, locust, case worm, caseworm, mole cricket, aphid, mealybug, mealy bug, leaf miner, leafminer, water weevil, weevil, rww, chinch bug, chinch, black bug, beetle, mite, moth, larva, pest, stalk eyed fly, diopsid, worm, maggot, bug, root weevil, billbug, semilooper, looper, skipper, cricket, zigzag hopper, seed bug, leaf beetle, seed midge, midge, bloodworm, tadpole shrimp, termite, spittlebug, rice root aphid, white grub, grub`,
  },
  // Diseases
  {
    kind: 'disease',
    taxon: 'blast',
    words:
      'blast, leaf blast, neck blast, node blast, collar blast, neck rot, rotten neck, blast lesion|spot, grey|gray|brown|black neck, pyricularia, collar rot',
  },
  {
    kind: 'disease',
    taxon: 'sheath_blight',
    words:
      'sheath blight, shb, sh b, rhizoctonia, banded blight, snakeskin lesion, snake skin, sheathblight, sheath blite, sheath blight lesion',
  },
  { kind: 'disease', taxon: 'sheath_rot', words: 'sheath rot, shr, sheathrot' },
  {
    kind: 'disease',
    taxon: 'bacterial_leaf_blight',
    words: 'bacterial leaf? blight, blb, b l b, kresek, bacterial blight, leaf blight, xanthomonas, bb',
  },
  { kind: 'disease', taxon: 'brown_spot', words: 'brown spot, brown leaf spot, helminthosporium, bipolaris' },
  { kind: 'disease', taxon: 'false_smut', words: 'false smut, green smut, smut ball' },
  { kind: 'disease', taxon: 'tungro', words: 'tungro, rtd, tungro virus' },
  { kind: 'disease', taxon: 'bakanae', words: 'bakanae, foolish seedling, foolish plant, foot rot' },
  {
    kind: 'disease',
    words: `disease, sickness, diseased, fungus, fungal, mould, mold, mildew, stem rot, root rot, rot, blight, leaf scald, scald, narrow brown leaf? spot, leaf streak, bacterial leaf? streak, yellow mottle, rymv, mottle virus, lesion, virus, ragged stunt, grassy stunt, damping off, aggregate sheath spot, sheath spot, kernel smut, smut, leaf smut, panicle blight, bacterial panicle blight, grain rot, infected, infection, sick|sickly plant|leaf|one, hoja blanca, downy, crown rot, black sheath rot, straighthead, autumn decline, akiochi, leaf spot, cercospora, stackburn, eyespot, glume discoloration|discolouration, dirty panicle, grain discoloration`,
  },
  // Nutrition
  {
    kind: 'nutrient',
    words: `yellow, yellowing, yellowish, pale, paling, chlorosis, chlorotic, light green, nitrogen deficiency|deficient|hunger|hungry|starved|shortage, n deficiency|deficient|hungry|starved, hungry, starved, lush, too dark|green|lush, over fertilised|fertilized, too much nitrogen|n|urea, excess nitrogen|n, zinc deficiency|deficient, zn deficiency|deficient, deficiency, deficient, iron toxicity,
      bronzing, bronzed, rusty brown|leaf, brown like rust, rust brown|coloured|colored, orange leaf, khaira, short of? nitrogen|n|zinc|potash|food|feed, shortage|want of nitrogen|zinc|potash|n|phosphorus, lack nitrogen|n|zinc|potash|of, lacks nitrogen|n, dark and soft, rank, overfed, underfed, off color|colour, washed out leaf|colour|color, lost color|colour, losing color|colour, lose color|colour, potassium deficiency, k deficiency, phosphorus deficiency, p deficiency, sulphur|sulfur deficiency, purple leaf, reddish leaf, toxicity, interveinal, lime green, lemon, peaky, faded, fading, going off colour|color, run out of n|nitrogen|feed|steam, out of nitrogen|n, very dark green, dark dark green, lower leaf firing, firing, burning up for n, pallid, not enough nitrogen|n|zinc, leaf be? too soft, leaf|colour|color be? =light`,
  },
  // Water
  {
    kind: 'dry',
    words: `dry spot|patch|corner|end|area|soil|ground|side, be|looks|getting|is|are|bone|too|very|so|going|gone|went|all|quite|still|already =dry, =dry, drying out|up, dried out|up, crack, cracking, cracked, hairline crack, soil|ground crack, wilt, wilting, leaf|leaves roll|rolling|rolled|curl|curled|curling, rolled|rolling|curled leaf|leaves, leaf rolling, rolling, drought, drought stress, water stress, parched, thirsty, dusty, water be? nil|finish|gone, no standing? water, out of water, ran out of water, water be? not there|enough|reach|reaching, not enough water, short of water, water short|shortage, lack of water, water be? all? gone, no water on, soil be? hard, water be over, lost|losing its? water, moisture stress, desiccated, went dry, starved of water, high and dry, tank dry, fired up, sucking air, scarcity of water`,
  },
  {
    kind: 'flooded',
    words: `submerged, submergence, under the? water, underwater, waterlogged, water logged, water logging, waterlogging, flooded out|over, be|is|are =flooded, ponded|ponding, too much water, too deep, water be? too much|high|deep, drown, drowning, drowned out?, overtop, overtopped, overflow, inundated, inundation, swamped, can't|cannot|wo =drain|shed, can't|won't|cannot drain|shed it? water?, cannot|not|poorly|slow drain|draining|drained, be =under, covered by|with|in water, water be over the? top|leaf|plant|head|bund|levee|tip, over the tips, excess water, water have? cover, it has covered, inside water, drink water only, deep water|flooding, water stagnation, stagnant water, stagnation, standing in water, sitting in water, soaked, saturated, sodden, soggy, flash flood, flood damage, a flood`,
  },
  {
    kind: 'flooded',
    says: 'cleared',
    words:
      'flood|floodwater|flood water be|has|have gone|finished|over|receded|down now, the flood be finished|over|gone, no longer flooded|submerged|under water',
  },
  { kind: 'flooded', says: 'absent', words: 'not =flooded|=submerged|waterlogged' },
  {
    kind: 'seepage',
    words: `leak, leakage, leaky, seep, seepage, seepy, weep, weeping, levee|bund|dike|dyke|bank|border|ridge|berm blown|blew|broke|broken|burst|breached|washed out|through|away?, blown|blew|broken|burst|breached|washed out? levee|bund|dike|bank|dyke, breach, breached, blowout, blow out, washout, wash out, washed out, crab|crayfish|crawfish|crawdad|muskrat|mole|eel hole, crab make|made|making hole, boring the? bund|bond|levee, crab bore, hole in|through the? bund|levee|dike|bank|dyke|border, lose|losing|lost water, not|won't|can't|cannot|isn't hold|holding water, loses water, drop overnight, dropping|dropped overnight, fell fast, water go|going|goes out|through|under|away, water escape|escaping, percolation, percolating, water running|run|ran|runs out|through, bund be? broken|cut|open, piping, trickle|trickling, dribble, dripping, pissing out, undercut, sinkhole, sink hole, water loss`,
  },
  {
    kind: 'seepage',
    says: 'absent',
    words:
      'bund|levee|dike|bank|ail =holds|=tight, bund|levee|dike|bank|dyke|border be? sound|tight|holding|good|fine|ok|okay|intact|solid|firm, holding water fine|well|good|nicely, holding water, sound bund|levee|dike|bank, tight bund|levee',
  },
  // Lodging
  {
    kind: 'lodging',
    words: `lodge, lodging, lean, leaning, laid|lay|laying|lying|lies over|down|flat, gone|go|going|goes|went over|down|flat, fall|fallen|fell|falling over|down|flat, knock|knocked down|over|flat, flatten|flattened, flat patch|corner|area|spot|ground, be|is|are|has|have|gone|went|lies|all|percent|now|still flat, =flat, be|is|are|has|have|gone =down, # =down, blown|blew|blow down|over|flat, throw down, lie to the, fall about|again|more, fall to|on the? side|west|east|north|south|ground, goose necked?, goosenecked, tilt, tilting, tilted, bent over, bending over, on the ground, lying on the ground, =sleeping, sleep on the? ground|soil, slept, topple, tumbled, keel, keeled, collapsed, prostrate, has|have|had fall|fallen, fall|fallen on #, swept flat, tip over, tipped|tipping over, crop be? down, plant be? down, stand|standing crooked, starting to lean, push|pushed over|down|flat, beaten down|flat, straw be? down, flop, flopped, slump, slumped, laid`,
  },
  {
    kind: 'lodging',
    says: 'risk',
    words:
      'it|she|they|crop|rice|all will|may|might|can|could|go =sleep|=fall|=flop|=lie, weak stem|straw|culm|stalk, weak in the stem|straw, soft straw|stem|culm|stalk, straw be? soft|weak, stem be? soft|weak, top heavy, topheavy, heavy headed, slender culm',
  },
  {
    kind: 'lodging',
    says: 'absent',
    words:
      'standing|stand|stood|still upright|straight|erect|tall, upright, standing up well, straw be? stiff|strong, all erect, standing well|fine|firm',
  },
  // Others
  {
    kind: 'spray_injury',
    words: `scorch, scorched, scorching, herbicide injury|damage|burn|scorch|drift|effect|symptom, spray injury|damage|burn|drift|scorch, chemical|propanil|clomazone|command burn|injury|damage|drift, burn|burned|burnt by|from the? spray|herbicide|chemical|propanil, phytotoxic, phytotoxicity, phyto, bleach, bleached, bleaching, crop injury, injury by|from herbicide|spray|propanil, drift injury|damage|on, spray drift, drift, burned|burnt white, become|became|turn|turned burn|burnt|burned, leaf burn|burned|burnt by|from, dicamba damage, onion leaf|leafing from, twisted leaf|leaves from, chemical burn, tip be? burned|burnt white?, burned|burnt tip|leaf|patch|strip, burned, burnt, burn, become burn`,
    weak: true,
  },
  {
    kind: 'off_types',
    words: `off type, offtype, off typed, red rice, weedy rice, weedyrice, volunteer rice?, volunteer, wild rice, mixture, admixture, varietal mix|mixture, mixed variety|plant|seed, mixed with other|another variety|rice, foreign plant, wrong plant|variety, other variety, rogue plant, =rogues, rogue rice, tall one|plant|type, off plant, strange plant, different plant|variety, impurity, outlier plant, tall and early, tall red one, shattercane, =talls, awned plant|one|type, mix up of seed`,
  },
  {
    kind: 'weather_damage',
    words: `hail, hailstone, hailstorm damage, hailed, wind damage|burn|burnt|burned|shred|torn, shred, shredded, torn|tattered|ripped leaf|leaves by?, leaf|leaves tip? torn|tattered|ripped|shredded, cold damage|injury|stress|burn|shock, frost, frosted, frostbite, heat damage|stress|injury|burn|scald, sterile, sterility, unfilled|empty|blank grain|spikelet|floret, spikelet sterility, grain be empty, burned|burnt white? from|by hot? wind|sun|heat|cold, burnt|burned by|from the? sun|heat|cold|wind, sunburn, sun scorch|scald, sunscald, chill injury, chilled, cold snap got|hit|hurt, storm damage, freeze|frozen damage?, wind be? beat, tip be? burned|burnt white? by|from, lightning, blasted by wind, purple tip, blank floret, blanking`,
  },
];
