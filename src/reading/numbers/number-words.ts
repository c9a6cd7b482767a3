/** The words that are numbers. Plain English; the sound-alikes are those of the annotation guide's dictated notes. */

export const UNITS: ReadonlyMap<string, number> = new Map(
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'
    .split(' ')
    .map((word, value) => [word, value]),
);

export const TENS: ReadonlyMap<string, number> = new Map([
  ['twenty', 20],
  ['thirty', 30],
  ['forty', 40],
  ['fourty', 40],
  ['fifty', 50],
  ['sixty', 60],
  ['seventy', 70],
  ['eighty', 80],
  ['ninety', 90],
]);

export const MULTIPLES: ReadonlyMap<string, number> = new Map([
  ['hundred', 100],
  ['thousand', 1000],
  ['lakh', 100000],
]);

const ORDINAL_STEMS =
  'zeroth first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth thirteenth fourteenth fifteenth sixteenth seventeenth eighteenth nineteenth';

export const ORDINALS: ReadonlyMap<string, number> = new Map([
  ...ORDINAL_STEMS.split(' ').map((word, value): [string, number] => [word, value]),
  ['twentieth', 20],
  ['thirtieth', 30],
]);

/** What one part is called when a whole is cut into so many: `a third`, `two fifths`. */
export const PARTS: ReadonlyMap<string, number> = new Map([
  ['half', 2],
  ['halves', 2],
  ['quarter', 4],
  ['quarters', 4],
  ['third', 3],
  ['thirds', 3],
  ...[4, 5, 6, 7, 8, 9, 10, 12, 20].flatMap((parts): [string, number][] => {
    const word = [...ORDINALS].find(([, value]) => value === parts)?.[0] ?? '';
    return [
      [word, parts],
      [`${word}s`, parts],
    ];
  }),
]);

export const VULGAR_FRACTIONS: ReadonlyMap<string, number> = new Map([
  ['½', 1 / 2],
  ['¼', 1 / 4],
  ['¾', 3 / 4],
  ['⅓', 1 / 3],
  ['⅔', 2 / 3],
  ['⅕', 1 / 5],
  ['⅛', 1 / 8],
]);

/** Small words that sound like a number; read as one only where the small word itself cannot stand. */
export const SOUND_ALIKES: ReadonlyMap<string, number> = new Map([
  ['won', 1],
  ['to', 2],
  ['too', 2],
  ['for', 4],
  ['fore', 4],
  ['ate', 8],
]);

/** After these a preposition is out of place, so a sound-alike in front of them is the number. */
export const UNIT_BEFORE_WHICH_ONLY_A_NUMBER_STANDS: ReadonlySet<string> = new Set(
  'percent inch inches cm centimeter centimeters centimetre centimetres mm per degrees litres liters'.split(
    ' ',
  ),
);

/** Things that are counted hill by hill: what may stand between the two figures of a share. */
export const COUNTED_THINGS: ReadonlySet<string> = new Set(
  (
    'hill hills tiller tillers stem stems culm culms panicle panicles plant plants stool stools clump clumps bunch bunches heads head ears ear ' +
    'stalks stalk stands stand blank blanks misses skips seedlings seedling white dead cut missing gone not there are is were hearts heart bad sick affected infected hit chewed eaten empty damaged of the tall'
  ).split(' '),
);
