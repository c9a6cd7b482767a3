import type { Mishearing } from './mishearing-rows.ts';

/**
 * Small words that cannot stand where they do, read as the number or the negation that they sound like; nothing else
 * may turn a word into a number or a negation, and no number into another. Both sides of a row hold the words that
 * fix the place, so that only the odd one changes.
 */
const ENDS = '$ and but so with also then no not is has was are had needs looks shows yesterday today';
const FIGURE = 'score depth chart colour color lcc count average reads reading';
const UNITS =
  'percent % centimeter centimeters centimetre centimetres cm inches inch millimeters millimetres mm kilos kg';

const NUMBERS = {
  said: ['for', 'fore', 'to', 'too', 'won', 'ate', 'tree', 'free', 'tin', 'sex', 'sicks', 'fife'],
  meant: ['four', 'four', 'two', 'two', 'one', 'eight', 'three', 'three', 'ten', 'six', 'six', 'five'],
};

/** `plot for` to `plot four` for each of the words said; `{}` marks the place. */
const numbers = (frames: string[], only?: string): Pick<Mishearing, 'said' | 'meant'> => {
  const pairs = NUMBERS.said
    .map((said, at) => [said, NUMBERS.meant[at]!] as const)
    .filter(([said]) => only === undefined || only.split(' ').includes(said));
  const fill = (side: 0 | 1) =>
    frames.flatMap((frame) => pairs.map((pair) => frame.replace('{}', pair[side]))).join('|');
  return { said: fill(0), meant: fill(1) };
};

const DETERMINERS =
  'the this that a an each every my our your his her one another whole any same next last seed fish french school water';

export const SMALL_WORDS: readonly Mishearing[] = [
  {
    ...numbers(['plot {}', 'replicate {}', 'replication {}', 'rep {}'], 'for fore won ate'),
    after: ENDS,
    unlessBefore: DETERMINERS,
    all: true,
  },
  {
    ...numbers(['plot {}', 'replicate {}', 'replication {}', 'rep {}'], 'to too'),
    after: 'is has was had needs looks shows $',
    unlessBefore: DETERMINERS,
    all: true,
  },
  {
    ...numbers(['plots {} and', 'treatments {} and', 'reps {} and'], 'for to too won'),
    after: '# for',
    all: true,
  },
  { ...numbers(['treatments {}', 'plots {}'], 'won'), sure: true },
  {
    ...numbers(
      ['is {}', 'was {}', 'at {}', 'score {}', 'chart {}', 'lcc {}', 'says {}'],
      'for fore to won ate',
    ),
    after: '$ and but so no last',
    near: FIGURE,
    all: true,
    unlessAfter: '-',
  },
  {
    ...numbers(['point {}'], 'for to too won ate'),
    before: '#',
    sure: true,
    unlessAfter: 'another the each that any a an',
  },
  { ...numbers(['and {}'], 'for fore won ate'), before: '#', after: '$', all: true, unless: 'us me them' },
  {
    ...numbers(['{} percent', '{} %', '{} per cent'], 'too won ate tree tin sex sicks fife'),
    sure: true,
    unlessBefore: '# ^ up down',
  },
  {
    ...numbers(['{} percent', '{} %', '{} per cent'], 'for to free'),
    before: 'is at about only was around nearly almost say maybe roughly some',
    all: true,
  },
  {
    ...numbers(['{}'], 'for to too won ate'),
    before: 'is at about only was around nearly almost depth reads',
    after: UNITS,
    all: true,
  },
  {
    ...numbers(
      ['{} out of', '{} in ten', '{} in 10', '{} per hill', '{} of ten', '{} of twenty', '{} per square'],
      'for to too won ate',
    ),
    before: 'swept counted count found is about only around got say maybe',
    sure: true,
  },
  {
    ...numbers(
      ['twenty {}', 'thirty {}', 'forty {}', 'fifty {}', 'sixty {}', 'seventy {}', 'eighty {}', 'ninety {}'],
      'for to too won ate',
    ),
    after: 'days dat das centimeters centimetres cm percent kilos kilo hills plants tillers',
    all: true,
  },

  {
    said: 'ate|for',
    meant: 'eight|four',
    before: 'counted count found got saw only',
    after: 'hills tillers burrows barrows plants snails rats panicles hoppers tailors heels',
    all: true,
    unlessBefore: 'rats snails',
  },
  {
    said: 'know',
    meant: 'no',
    after:
      'lodging logging lodge rats rat weeds weed weeding worth sign signs need bph insects insect pests snails snail blast blight spray spraying gaps gap birds bird disease damage hoppers difference fresh burrows barrows tungro thrips borer borers hispa off-types seepage leak leaks cracks change standing sheath neck stem leaf false brown hopper',
    unlessBefore:
      "i you we they who to don't do didn't let must could would should please will i'll you'll we'll cannot can't not doesn't does he she may might already people farmers everyone",
    sure: true,
  },
  {
    said: 'nay',
    meant: 'no',
    sure: true,
    after:
      'weeds weed rats rat lodging logging snails birds blast gaps gap disease damage insects water need spray spraying bother sign change standing sheath neck off',
  },
  {
    said: 'know off type|know off types|nay off types',
    meant: 'no off type|no off types|no off types',
    sure: true,
  },
  {
    said: 'knot|naught',
    meant: 'not',
    after: 'yet seen worth needed lodged sure bad much ready ripe started spraying necessary',
    sure: true,
    unlessBefore: 'a the one',
  },
  { said: 'new', meant: 'no', before: '^', after: 'lodging rats weeds bph', all: true },

  {
    said: 'two',
    meant: 'to',
    before: 'need needs have has going about ready want wants asked told time',
    after:
      'spray drain irrigate replant topdress topdress weed check mend pull close open cut put apply count transplant flood be',
    all: true,
  },
];
