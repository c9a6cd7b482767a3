/** Crop ages in days, with what they count from. */
import type { Passage } from '../engine/passage.ts';
import { addPhrases, emptyTree, phrasesAt } from '../engine/phrase-tree.ts';
import type { AgeMention } from './mentions.ts';

const SINCE: readonly { words: string; since: AgeMention['since'] | 'planting' }[] = [
  {
    words:
      'dat, d a t, dap, days? after|from|since|past|post transplant|transplanting|transplanted|tp, days? after the? transplant|transplanting, from|since transplant|transplanting, after transplant|transplanting|transplanted|tp, post transplanting, dee ay tee, d after transplanting, since transplanted, since it was transplanted, in the field since transplanting, since we transplanted, after it was transplanted, after|since|from transplant',
    since: 'transplanting',
  },
  {
    words:
      'das, d a s, after seed|seeding|sowing|sown|drilling|emergence|sewing, from|since seeding|sowing|seeded|sown|drilling, dee ay ess, post seeding|sowing, since it was sown|seeded|drilled, after drill, since drilled, after it was sown, dee a s, after|since we|they|i drilled|sowed|seeded|drill|sow|seed it?, after the sowing|seeding|drilling',
    since: 'sowing',
  },
  {
    words:
      'after planting|planted|plant, since planting|planted, from planting, old, post planting, after we planted, in the ground, since it was planted',
    since: 'planting',
  },
];
const SINCE_TREE = emptyTree<AgeMention['since'] | 'planting'>();
for (const { words, since } of SINCE) addPhrases(SINCE_TREE, words.replaceAll('days? ', ''), since);

/** A number, a unit of days or weeks, and what it counts from; or `27 days in the field` beside a date of planting. */
export function findAges(passage: Passage): AgeMention[] {
  const found: AgeMention[] = [];
  for (const number of passage.numbers) {
    if (number.form !== 'cardinal' || number.value <= 0 || number.value > 200) continue;
    const age = ageFrom(passage, number);
    if (age && !isPlanned(passage, age)) found.push(age);
  }
  return found;
}

function ageFrom(passage: Passage, number: Passage['numbers'][number]): AgeMention | null {
  let at = passage.following[number.last]!;
  const unit = passage.tokens[at]?.lower ?? '';
  const perUnit = /^(week|weeks|wk|wks)$/.test(unit) ? 7 : 1;
  const hasUnit =
    /^(day|days|d|week|weeks|wk|wks|dys)$/.test(unit) &&
    !(unit === 'd' && passage.tokens[at + 1]?.lower === 'a');
  if (hasUnit) at = passage.following[at]!;
  for (let skip = 0; skip < 3 && at < passage.tokens.length; skip++) {
    const hit = phrasesAt(SINCE_TREE, passage, at)[0];
    if (hit) {
      const since = hit.meanings[0]!;
      const abbreviated = /^(dat|das|dap|d|dee)$/.test(passage.tokens[at]!.lower);
      if (!hasUnit && !abbreviated) return null;
      if (since === 'planting' && passage.tokens[at]!.lower === 'old' && !aboutCrop(passage, number.first))
        return null;
      return {
        is: 'age',
        days: number.value * perUnit,
        since: since === 'planting' ? (isSown(passage, number.first) ? 'sowing' : 'transplanting') : since,
        first: number.first,
        last: hit.last,
        rule: `age-${since}`,
      };
    }
    if (!hasUnit || !/^(now|old|already|today|,|in)$/.test(passage.tokens[at]!.lower)) break;
    at = passage.following[at]!;
  }
  return hasUnit ? ageInField(passage, number, at, perUnit) : null;
}

/** `transplanted on 2 January and therefore 27 days in the field`. */
function ageInField(
  passage: Passage,
  number: Passage['numbers'][number],
  at: number,
  perUnit: number,
): AgeMention | null {
  if (
    passage.tokens[at]?.lower !== 'in' ||
    passage.tokens[at + 1]?.lower !== 'the' ||
    !/^(field|ground|water|paddy)$/.test(passage.tokens[at + 2]?.lower ?? '')
  )
    return null;
  return {
    is: 'age',
    days: number.value * perUnit,
    since: 'transplanting',
    first: number.first,
    last: at + 2,
    rule: 'age-in-the-field',
  };
}

const aboutCrop = (passage: Passage, at: number): boolean => {
  for (let near = Math.max(0, at - 4); near < at; near++)
    if (/^(rice|crop|stand|plot|it|it's)$/.test(passage.tokens[near]!.lower)) return true;
  return false;
};
const isSown = (passage: Passage, at: number): boolean => {
  for (let near = Math.max(0, at - 12); near < at + 12 && near < passage.tokens.length; near++)
    if (/^(seeded|drilled|sown|drill|direct-seeded|broadcast)$/.test(passage.tokens[near]!.lower))
      return true;
  return false;
};

/** `granule 5 days after transplanting`, `ducks go in 21 days after transplanting`: a time for work, no age. */
const isPlanned = (passage: Passage, age: AgeMention): boolean => {
  for (let near = age.first - 1; near >= Math.max(0, age.first - 9); near--) {
    if (passage.walls[near + 1]! >= 2) return false;
    if (
      /^(plan|go|goes|spray|apply|granule|herbicide|urea|topdress|weed|will|count|drain|replant|put|until|due|at)$/.test(
        passage.tokens[near]!.lower,
      )
    )
      return !/^at$/.test(passage.tokens[near]!.lower);
  }
  return false;
};
