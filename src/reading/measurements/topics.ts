/** What a figure may be about. A topic without a quantity of its own (`crack`, `planting-depth`) keeps its figures from being taken for another's. */
import { phrasesOf, treeOf } from '../numbers/word-tree.ts';

export type Topic =
  | 'cover'
  | 'moisture'
  | 'heading'
  | 'white-heads'
  | 'dead-hearts'
  | 'lodged'
  | 'weeds'
  | 'missing'
  | 'rats'
  | 'disease'
  | 'insects'
  | 'snails'
  | 'off-types'
  | 'problem'
  | 'tillers'
  | 'panicles'
  | 'hills'
  | 'tube'
  | 'water'
  | 'rain'
  | 'rows'
  | 'spacing'
  | 'gap'
  | 'crop'
  | 'height'
  | 'crack'
  | 'part-length'
  | 'planting-depth'
  | 'bund'
  | 'spad'
  | 'leaf-colour'
  | 'burrows'
  | 'yield'
  | 'temperature'
  | 'patch'
  | 'gathered'
  | 'sweep'
  | 'predators';

export const TOPICS = treeOf<Topic>([
  ...phrasesOf('cover, covered, covers, covering, ground cover, cover of weeds', 'cover' as Topic),
  ...phrasesOf(
    "moisture, mc, moisture content, grain moisture, moisture's, m c, moist, humidity of the grain",
    'moisture' as Topic,
  ),
  ...phrasesOf(
    'heading, headed, headed out, heads, heads out, in head, head out, heads coming, panicles out, ears out, panicle emergence, ear emergence, exserted, panicles emerged, panicles showing, headin, ears are out, start to come out, starting to come out, started coming out, coming out, just come out',
    'heading' as Topic,
  ),
  ...phrasesOf(
    'white head, white heads, whitehead, whiteheads, white panicle, white panicles, white ear, white ears, empty heads, white eads, wh',
    'white-heads' as Topic,
  ),
  ...phrasesOf('dead heart, dead hearts, deadheart, deadhearts, dh, dead shoots', 'dead-hearts' as Topic),
  ...phrasesOf(
    'lodged, lodging, flat, flattened, laid down, laid over, lying, fallen, fallen over, fell over, fell, gone over, gone flat, went down, went flat, went over, blown over, blown down, on the ground, is down, are down, leaning, leans, leaned, lodge, lodgd, lodgin, laid, knocked down, knocked over, toppled, thrown down, brought down, pushed over, beaten down, bent over, tipped over, lies, lie, fall, falls, pushed down, come down, came down',
    'lodged' as Topic,
  ),
  ...phrasesOf(
    `weed, weeds, weedy, weed cover, grass, grasses, barnyard grass, barnyard, barnyardgrass, cockspur, echinochloa, jungle rice, junglerice, sprangletop, leptochloa, sedge, sedges, umbrella sedge, flatsedge, nutsedge, cyperus, fimbristylis, fimbry, fringerush,
     monochoria, pickerel weed, duck salad, ducksalad, ludwigia, water primrose, primrose, eclipta, false daisy, broadleaf, broadleaves, broadleafs, watergrass, water grass, algae, azolla, duckweed, water hyacinth, morning glory, crabgrass, alligator weed, redstem, hemp sesbania, sesbania, indigo, arrowhead, jointvetch`,
    'weeds' as Topic,
  ),
  ...phrasesOf(
    'missing, missing hill, missing hills, hills missing, not there, skipped, skip hill, skip hills, skips, empty hills, empty places, vacant, blank hills, blanks, did not take, no hill, not standing, unplanted, gone missing, hills gone, died off, misses, missed, floated off, floated away, pulled out by, did not survive, not survived, lacking',
    'missing' as Topic,
  ),
  ...phrasesOf(
    'rat, rats, rodent, rodents, mouse, mice, cut, cuts, cut by rats, gnawed, rat cut, rat damage, fresh cut, fresh cuts, chewed off, cut tillers, cut hills, cutting, cuttings, bandicoot, bandicoots, field mice',
    'rats' as Topic,
  ),
  ...phrasesOf(
    `blast, leaf blast, neck blast, blight, sheath blight, shb, sheath rot, rot, brown spot, false smut, smut, tungro, bakanae, foolish seedling, blb, bacterial leaf blight, leaf blight, lesion, lesions, diseased, infected, infection, disease, virus, kresek, streak, stem rot, scald, leaf scald, symptoms, symptom, bls, spots, necks, grey necks, gray necks, infected hills, rtv`,
    'disease' as Topic,
  ),
  ...phrasesOf(
    `bph, b p h, wbph, w b p h, glh, g l h, hopper, hoppers, plant hopper, plant hoppers, planthopper, planthoppers, brown planthopper, brown hopper, brown hoppers, leafhopper, leafhoppers, green leafhopper, green hopper, white backed, borer, borers, stem borer, bug, bugs, rice bug, rice bugs, stink bug, stink bugs, gandhi bug, ear bug, black bug, black bugs,
     leaf folder, leaf folders, leaffolder, leaf roller, folder, folders, hispa, gall midge, midge, silver shoot, silver shoots, onion shoot, onion shoots, thrips, maggot, maggots, whorl maggot, armyworm, armyworms, army worm, army worms, cutworm, cutworms, worm, worms, caterpillar, caterpillars, insect, insects, larva, larvae, grub, grubs,
     nymph, nymphs, jassid, jassids, weevil, weevils, water weevil, chinch bug, chinch bugs, grasshopper, grasshoppers, aphid, aphids, moth, moths, egg mass, egg masses, adults, beetle, beetles, mite, mites, folded leaves, rolled leaves, caseworm, caseworms, stinkbug, stinkbugs, scars, hoppas`,
    'insects' as Topic,
  ),
  ...phrasesOf(
    'snail, snails, golden apple snail, golden snail, golden kuhol, apple snail, apple snails, gas, g a s, kuhol, golden snails, golden apple',
    'snails' as Topic,
  ),
  ...phrasesOf(
    'off-type, off-types, off type, off types, offtype, offtypes, weedy rice, red rice, volunteer, volunteers, rogues, rogue, mixtures, talls',
    'off-types' as Topic,
  ),
  ...phrasesOf(
    `yellow, yellowing, pale, burnt, burned, scorched, bleached, drowned, drown, drowned out, under water, submerged, flooded, dried up, dried, dead, dying, damaged, damage, affected, hopperburn, hopper burn, stunted, eaten, torn, shredded, nibbled, bird, birds, sick, hurt, killed, orange, reddish, wilted, wilting, grazed, trampled, hopper burnt, hopper burned, washed out, washed away, cracked, cracking, ruined, lost, gone, burn, hopperburnt, rusty, blackbirds, sparrows, geese, ducks, hogs, pigs, cattle, hail, hailed, uneven, died, floating, floated, afloat, uprooted, chlorosis, yellowed, brown, bare, droughted, underwater, dry`,
    'problem' as Topic,
  ),
  ...phrasesOf(
    'tiller, tillers, tiller count, tillers per hill, tillering count, stems, stem count, culms, shoots, tilers, tiller number, effective tillers, productive tillers, tillering',
    'tillers' as Topic,
  ),
  ...phrasesOf(
    'panicle, panicles, panicle count, ears, ear count, panicle number, bearing heads, head count',
    'panicles' as Topic,
  ),
  ...phrasesOf(
    'hill, hills, stools, clumps, hill count, hill density, hills per square metre',
    'hills' as Topic,
  ),
  ...phrasesOf(
    'tube, tubes, field tube, awd, awd tube, awd pipe, pani pipe, panipipe, water tube, pipe, pvc, piezometer, water table, perched water, perforated tube, awd tubes, field water tube, observation well, well tube, water level in the tube, tube reading',
    'tube' as Topic,
  ),
  ...phrasesOf(
    "water, waters, water's, wtr, wtr lvl, h2o, water lvl, water'll, valve, board, flood, flood's, floodwater, standing water, standing, ponded, ponding, water depth, water level, flooded to, paddy water, flood depth, tubig, pani, eau, deep water, submergence, pond",
    'water' as Topic,
  ),
  ...phrasesOf(
    'rain, rains, rained, rainfall, gauge, gage, rain gauge, raingauge, shower, showers, storm, drizzle, downpour, thunderstorm, typhoon, rained on, in the gauge, in gauge, precipitation, ulan, cloudburst',
    'rain' as Topic,
  ),
  ...phrasesOf(
    'row, rows, row spacing, between rows, between the rows, row to row, inter row, interrow, rows apart, drill rows, drill row, row distance, line to line, row width',
    'rows' as Topic,
  ),
  ...phrasesOf(
    'spacing, planted at, planting distance, distance of planting, plant spacing, spaced, hill spacing, hill to hill, plant to plant, between hills, between the hills, within row, in the row, planting pattern, hills apart, hill distance, espacement',
    'spacing' as Topic,
  ),
  ...phrasesOf(
    'gap, gaps, skip, bare strip, bare spot, bare patch, empty strip, empty row, strip, nothing came up, missed strip, a miss, blank, blank strip, hole in the stand, opening, bald, bald spot, void, missing strip, missed pass',
    'gap' as Topic,
  ),
  ...phrasesOf(
    'plant, plants, rice, crop, seedling, seedlings, stand, canopy, plants measure, she, culm, flag leaf tip',
    'crop' as Topic,
  ),
  ...phrasesOf(
    'height, tall, high, taller, shorter, short, straw, plant height, ht, heigth, hight, canopy height, plant ht, tallest',
    'height' as Topic,
  ),
  ...phrasesOf('crack, cracks, cracks are, fissure, fissures, hairline', 'crack' as Topic),
  ...phrasesOf(
    'panicle of, panicle is, young panicle, panicle length, lesion length, root, roots, root length, leaf length, flag leaf is, leaf blade, internode, internodes, stubble, mud, muck, nodes, cone, lesion is, leaf age, topsoil, plough layer, residue, straw layer, silt, deep mud, rut, ruts, footprint',
    'part-length' as Topic,
  ),
  ...phrasesOf(
    'planting depth, sowing depth, seeding depth, deep placement, under the soil, into the soil, seeded at, placed at, drill depth, depth of planting, drilled at, drilled, in the mud, soil depth, drilled it, seed depth, planted too deep, planted deep',
    'planting-depth' as Topic,
  ),
  ...phrasesOf(
    'bund, bunds, levee, levees, dike, dikes, dyke, pilapil, fence, net, boundary, headland',
    'bund' as Topic,
  ),
  ...phrasesOf(
    'spad, s p a d, spad reading, spad value, spad meter, chlorophyll meter, spads, chlorophyll, meter reading, spade reading, spad readings',
    'spad' as Topic,
  ),
  ...phrasesOf(
    'lcc, l c c, leaf colour, leaf color, leaf colour chart, leaf color chart, colour chart, color chart, leaf colour card, leaf color card, colour card, color card, chart, leaf chart, lcc reading, lcc score, leaf colour chart reading, leaf colour score, colour score, color score, leaf collar chart, card',
    'leaf-colour' as Topic,
  ),
  ...phrasesOf(
    'burrow, burrows, active burrows, active holes, active hole, live burrows, live burrow, live holes, rat holes, rat hole, burrow holes, open burrows, fresh burrows, new burrows, open holes, fresh holes, new holes, burrow, active burrow, rat burrows',
    'burrows' as Topic,
  ),
  ...phrasesOf(
    'yield, yields, yielded, yielding, ran, made, crop cut, crop cuts, harvest, harvested, threshed, combine, wagon, bin, gave, grain, grain yield, weighed out, cut out, thrashed, came out, came off, dry weight, scale, scales, averaged, cutting and threshing, out yields, rough rice, paddy weight, scale ticket, elevator, weighbridge, outyields',
    'yield' as Topic,
  ),
  ...phrasesOf(
    'max, maximum, min, minimum, temp, temps, temperature, thermometer, air temp, air temperature, mercury, hi, shade temperature, max temp, min temp, max temperature, heat, hot, degrees, high of, low of, weather station, temperatur',
    'temperature' as Topic,
  ),
  ...phrasesOf(
    'patch, patches, circle, circles, ring, hopper burnt patch, spot, hopperburn patch, area',
    'patch' as Topic,
  ),
  ...phrasesOf(
    'removed, pulled, pulling, took out, taken out, rogued, roguing, picked, picked up, dug out, pull out, pulled out, roged, yanked, weeded out',
    'gathered' as Topic,
  ),
  ...phrasesOf('sweep, sweeps, net sweeps, sticky trap, light trap, trap catch, per sweep', 'sweep' as Topic),
  ...phrasesOf(
    'spider, spiders, ladybird, ladybirds, ladybug, ladybugs, natural enemy, natural enemies, dragonfly, dragonflies, damselfly, damselflies, beneficials, predators, wolf spider, wolf spiders, mirid, mirids',
    'predators' as Topic,
  ),
]);
