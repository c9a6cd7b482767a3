/** Words that often stand with a capital, or alone before a verb, and are no names of people. */
export const NOT_NAMES = new Set(
  `i the a an and but so then now no not yes ok okay today tomorrow yesterday tonight monday tuesday wednesday thursday friday saturday sunday mon tue tues wed thu thur thurs fri sat sun
   january february march april may june july august september october november december jan feb mar apr jun jul aug sep sept oct nov dec
   north south east west northern southern eastern western plot plots bay field block bund levee dike water weeds weed rats rat birds bird snails blast borer urea nitrogen spray traps trap net nets drain flood rain wind storm
   tillering booting heading flowering milk dough ripe harvest cut fill replant look check count keep watch leave let pull hold wait open close mend patch both all some few most many each every this that these those there here it its it's they them we us he she him her his our my your you
   if when once after before until while because since although though however maybe perhaps possibly probably still also only just even very too much more less least rest everything nothing anything something none one two three four five six seven eight nine ten
   leaf leaves plant plants stem stems hill hills panicle panicles tiller tillers grain heads head field fields crop rice stand growth colour color height spad lcc tube moisture yield moist soil surface seed seedlings nursery
   what why who how where which whose should could would will shall can might must do does did has have had is are was were be been being am get got go going gone come comes put set see saw said says say told tell ask asked
   good bad fine nice same next last first second third early late new old big small large little left right upper lower top bottom middle inside outside near far along around over under above below between during
   barnyard sedge sprangletop monochoria hopper hoppers brown green yellow white black red sheath neck stem false bacterial golden apple for to of in on at by with from as or nor than up down off out again back away already yet ago please sorry thanks thank morning afternoon evening night noon day week month year season
   need needs hand fresh soon stop start sample full must plus like hello hi dear kindly note round weather clear fine sunny cloudy canal bund road school mission tail upland french fish bamboo raised mulch
  that's it's there's who's what's he's she's here's let's which river cyclone fever army rats people plane pump gun side which year bund bond crop rice rain sun combine insects worms leaves tips
  zinc potash iron sulphate fertilizer fertiliser herbicide fungicide insecticide granule dry wet hot cold pale lodging lodged leaning flat missing gap gaps spotted nobody somebody everyone anyone everybody someone note walk round visit report sample samples machine combine tractor pump plane rig`.split(
    /\s+/,
  ),
);
