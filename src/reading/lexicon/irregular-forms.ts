/** Words whose forms do not follow from their ending. Plain English; the farm's own verbs first. */
import type { Tense } from '../engine/forms.ts';

/** `base: past past-participle`. */
const VERBS = `
go: went gone
fall: fell fallen
blow: blew blown
break: broke broken
eat: ate eaten et
bite: bit bitten
dig: dug
sow: sown
fly: flew flown
take: took taken
see: saw seen
find: found
send: sent
tell: told
sweep: swept
feed: fed
grow: grew grown
come: came
run: ran
throw: threw thrown
shoot: shot
begin: began begun
do: did done
make: made
get: got gotten
leave: left
hold: held
keep: kept
lose: lost
stand: stood
bend: bent
sink: sank sunk
rise: rose risen
drown: drowned
show: shown
give: gave given
bring: brought
lay: laid
lie: lain
sleep: slept
weigh: weighed
write: wrote written
drive: drove driven
spread: spread
put: put
cut: cut
let: let
set: set
shut: shut
burst: burst
hit: hit
have: had
be: was were been is are am being
say: said
think: thought
hear: heard
meet: met
pay: paid
tear: torn tore
wear: worn
freeze: froze frozen
choose: chose chosen
build: built
lead: led
stick: stuck
hang: hung
spill: spilt
burn: burnt
smell: smelt
catch: caught
read: read
wet: wet
split: split
plough: plowed
`;

/** `singular: plural`. */
const NOUNS = `
mouse: mice
goose: geese
child: children
woman: women
man: men
leaf: leaves
larva: larvae
half: halves
foot: feet
grass: grasses
axis: axes
louse: lice
`;

const pairs = (text: string): [string, string][] =>
  text
    .trim()
    .split('\n')
    .flatMap((line) => {
      const [base = '', rest = ''] = line.split(':');
      return rest
        .trim()
        .split(' ')
        .map((form): [string, string] => [form, base]);
    });

export const IRREGULAR_FORMS: ReadonlyMap<string, string> = new Map([...pairs(VERBS), ...pairs(NOUNS)]);

/** `put`, `cut`, `let` and their like are the same in both tenses: left out here, the words around decide. */
const SAME_IN_BOTH = new Set([
  'put',
  'cut',
  'let',
  'set',
  'shut',
  'spread',
  'burst',
  'hit',
  'read',
  'wet',
  'split',
]);

export const IRREGULAR_TENSES: ReadonlyMap<string, Tense> = new Map<string, Tense>([
  ...pairs(VERBS)
    .filter(([form]) => !SAME_IN_BOTH.has(form))
    .map(([form]): [string, Tense] => [form, 'ed']),
  ...[
    'weed',
    'seed',
    'feed',
    'need',
    'bed',
    'red',
    'shed',
    'reed',
    'bleed',
    'speed',
    'breed',
    'ahead',
    'spring',
    'string',
    'thing',
    'nothing',
    'anything',
    'something',
    'everything',
    'morning',
    'evening',
    'king',
    'ring',
    'during',
    'wing',
  ].map((word): [string, Tense] => [word, 'base']),
  ['reseed', 'base'],
]);

/** Words that only look inflected. */
export const NOT_INFLECTED: ReadonlySet<string> = new Set(
  'this his was has thus bus gas dias less grass moss cross across loss always perhaps besides during morning evening nothing something anything thing ring spring string king wing need seed weed feed bed shed red reed united hundred'.split(
    ' ',
  ),
);

/** How people write words on a phone. */
export const SHORT_SPELLINGS: ReadonlyMap<string, string> = new Map([
  ['r', 'are'],
  ['u', 'you'],
  ['ur', 'your'],
  ['w', 'with'],
  ['wo', 'without'],
  ['b4', 'before'],
  ['abt', 'about'],
  ['cuz', 'because'],
  ['chk', 'check'],
  ['chkd', 'checked'],
  ['thx', 'thanks'],
  ['shud', 'should'],
  ['shld', 'should'],
  ['wud', 'would'],
  ['cud', 'could'],
  ['tho', 'though'],
  ['thru', 'through'],
  ['prolly', 'probably'],
  ['prob', 'probably'],
  ['fert', 'fertilizer'],
  ['irrig', 'irrigate'],
  ['lite', 'light'],
  ['lil', 'little'],
  ['yr', 'year'],
  ['gona', 'gonna'],
  ['wanna', 'want'],
]);
