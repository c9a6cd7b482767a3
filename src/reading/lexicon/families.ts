/** Word families that rules speak of by name. Phrases as in the other tables of the lexicon. */
import { addPhrases, emptyTree, type PhraseTree } from '../engine/phrase-tree.ts';

const WORDS = {
  be: "=is, =are, =was, =were, =be, =been, =being, =am, ='s, look, seem, appear, get, turn, become, go, stay, remain",
  water: 'water, flood, the flood, water level, level, flood water',
  weed: 'damo, red sprangletop, grasses, =weeds, =weed, grass, sedge, barnyard grass?, barnyardgrass, jungle rice, monochoria, sprangletop, water grass, escape, broadleaf, broad leaf, ludwigia, eclipta, nutsedge, fimbry, fimbristylis, flatsedge, umbrella sedge, duck salad, leptochloa, echinochloa',
  offtype:
    'off type, offtype, red rice, weedy rice, volunteer, wild rice, tall one, tall plant, =rogues, wrong plant, strange plant, mixture, awned one|plant, foreign plant',
  sick: 'sick|diseased|infected|bad|orange|stunted|yellow|affected plant|hill|one, bakanae plant?, tungro plant|hill, smutted panicle|head, sick one',
  snail: 'snail, kuhol, golden apple snail, apple snail, gas, egg, pink egg, egg mass',
  rodent: 'rat, mouse, rodent, burrow, hole, rat hole, bandicoot, rat burrow',
  bird: 'bird, quelea, sparrow, weaver, munia, maya, parrot, pigeon, blackbird, duck, geese',
  inlet:
    'inlet, intake, gate, valve, inlet gate|pipe|valve, sluice, canal, headgate, turnout, well, mogha, pipe, siphon',
  outlet:
    'outlet, drain, drain gate|pipe|board, outlet board|pipe|gate, board, boards, spillway, lower outlet, flash board, gate board, weir board, drainage, stop log',
  bund: 'bund, ail, galengan, pematang, pilapil, diguette, stop, levee, dike, dyke, bank, border, gate, inlet, outlet, ridge, berm, weir, embankment, hole, crab hole, crawfish hole, leak, breach, washout, seep, pipe, culvert, weir box, box, fence line, spillway',
  gap: 'gap, missing hill|row|plant|spot|one, skip, blank, empty place|spot|hill|space, hole, bare spot|patch|strip, missing, dead hill, misses, vacancy',
  trap: 'trap, snap trap, cage trap, live trap, kill trap, trapping, bait, rat bait, bait station, poison, rodenticide, plastic barrier|fence, barrier, fence, trap barrier, tbs, baiting, poison bait, rat poison, zinc phosphide, wax block, bait block',
  net: 'net, netting, scarecrow, cannon, propane cannon, gas gun, bird scarer, reflective tape, string with can, bird boy, bird net, banger, scare gun, rattle',
  fertiliser: `urea, abono, pupuk, engrais, en pee kay, em oh pee, dee ay pee, n p k, kali, nitrogen, n, fertilizer, fertiliser, potash, muriate, mop, dap, npk, ammonium sulphate|sulfate, ammonia, ammonium, zinc sulphate|sulfate, zinc, phosphate, p, k, manure, compost, top dressing|dress, topdressing, topdress, gypsum, sulphate, triple super, tsp, ssp, super, can, complete, basal, sulfur, sulphur, lime, ash, nitrate, zn, uan, side dress, panicle fertilizer, panicle fertiliser, poultry litter, chicken litter, litter`,
  product: `herbicide, 2 4 d, insecticide, fungicide, pesticide, propanil, clomazone, command, glyphosate, roundup, bispyribac, penoxsulam, pretilachlor, butachlor, quinclorac, spray, granule, dust, weedicide, weedkiller, weed killer, insecticidal, bt, neem, tricyclazole, azoxystrobin, validamycin, carbofuran, chlorantraniliprole, buprofezin, imidacloprid, chemical, medicine, pyrethroid, lambda, burndown, pre emergent, pre emerge, post emergent, residual, adjuvant`,
  tool: 'spray rig, ground rig, knapsack, sprayer, plane, drone, helicopter, boom',
  sample:
    'sample, leaf sample, soil sample, tissue sample, tissue test, soil test, plant sample, water sample, panicle sample, grain sample',
  instrument:
    'spad, spad reading|meter, tube, the tube, tube reading, lcc, leaf colour|color chart, chart, moisture, moisture meter, tiller count, count, height, plant height, tillers, panicle count, hopper count, yield sample, quadrat',
  it: 'it, them, this, that, these, those, em, these ones?, those ones?, the rest, rest, the whole thing, again, that one, this one, by hand, this in, that in',
  support:
    'tie up?, prop up?, stake up?, bundle up?, bunch up?, lift and tie, lifting and tying, lift up?, stand up?, raise up?',
  people: `crew, farm crew, gang, boys, the boys, boy, one boy, girls, women, the women, ladies, the ladies, men, labour, labor, labourers, laborers, labourer, workers, worker, team, technician, watchman, guard, guards, farmer, farmers, neighbour, neighbor, catchers, rat catchers, mason, driver, operator, tractor driver, tractor man, machine man, water man, waterman, ditch rider, gateman, irrigator, sprayman, spray man, pilot, pathology, entomology, pathologist, entomologist, agronomist, store, store keeper, storekeeper, supervisor, foreman, boss, manager, office, lab, officer, students, student, trainee, trainees, interns, intern, school children, children, pupils, class, hands, casuals, casual workers, pickers, scarers, bird boys, contractor, planting crew, transplanting gang, weeding gang, weeders, sprayers, chief, headman, sir, madam, uncle, cousin, adjuster, the adjuster, aunt, auntie, dealer, inspector, mechanic, extension officer, field hands, helpers, rat team, snail pickers, group, family, kids, wife, husband, brother, son, dad, daddy, mom, landlord, owner`,
  stagenoun: 'stage',
  good: 'good, fine, nice, ok, okay, clean, pretty',
  taller: '=taller, more =tall, =higher',
  shorter: '=shorter, more =short, less tall',
} as const;

export type FamilyName = keyof typeof WORDS;

export const FAMILIES = Object.fromEntries(
  Object.entries(WORDS).map(([name, phrases]) => {
    const tree = emptyTree<true>();
    for (const phrase of phrases.split(', ')) addPhrases(tree, phrase.replaceAll(',', ' '), true);
    return [name, tree];
  }),
) as unknown as Readonly<Record<FamilyName, PhraseTree<true>>>;
