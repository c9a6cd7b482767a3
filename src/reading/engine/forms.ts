/**
 * The dictionary forms that a word may stand for: `weeding` -> `weed`, `leaning` -> `lean`, `berries` -> `berry`.
 * Candidates, not a parse: a form that is no word simply meets nothing in the lexicon.
 */
import {
  IRREGULAR_FORMS,
  IRREGULAR_TENSES,
  NOT_INFLECTED,
  SHORT_SPELLINGS,
} from '../lexicon/irregular-forms.ts';

/** How a verb stands: told as past (`ed`), under way (`ing`), third person or plural (`s`), or bare. */
export type Tense = 'base' | 's' | 'ed' | 'ing';

const CLITIC = /'(?:s|ll|re|ve|d|m)$|s'$/;

export function formsOf(lower: string): string[] {
  const forms = [lower, `=${lower}`];
  const plain = CLITIC.test(lower) ? lower.replace(CLITIC, lower.endsWith("s'") ? 's' : '') : lower;
  if (plain !== lower) forms.push(plain);
  const spelled = SHORT_SPELLINGS.get(plain);
  if (spelled) forms.push(spelled, `=${spelled}`);
  const irregular = IRREGULAR_FORMS.get(spelled ?? plain);
  if (irregular) forms.push(irregular);
  if (plain.length < 4 || NOT_INFLECTED.has(plain)) return forms;
  pushInflections(plain, forms);
  if (plain.length > 4 && plain.endsWith('in')) pushDroppedG(plain, forms);
  return forms;
}

export function tenseOf(lower: string): Tense {
  const irregular = IRREGULAR_TENSES.get(lower);
  if (irregular) return irregular;
  if (/ing$/.test(lower)) return 'ing';
  if (/ed$/.test(lower) && !/[^aeiou]?eed$/.test(lower)) return 'ed';
  return /[^s]s$/.test(lower) ? 's' : 'base';
}

function pushInflections(word: string, forms: string[]): void {
  if (word.endsWith('ies')) forms.push(`${word.slice(0, -3)}y`, word.slice(0, -1));
  else if (word.endsWith('es')) forms.push(word.slice(0, -1), word.slice(0, -2));
  else if (word.endsWith('s') && !word.endsWith('ss')) forms.push(word.slice(0, -1));
  else if (word.endsWith('ied')) forms.push(`${word.slice(0, -3)}y`, word.slice(0, -1));
  else if (word.endsWith('ing')) pushStem(word.slice(0, -3), forms);
  else if (word.endsWith('ed')) pushStem(word.slice(0, -2), forms);
}

/** `callin`, `nothin`, `goin`. */
function pushDroppedG(word: string, forms: string[]): void {
  forms.push(`${word}g`, `=${word}g`);
  pushInflections(`${word}g`, forms);
}

function pushStem(stem: string, forms: string[]): void {
  if (stem.length < 2) return;
  forms.push(stem, `${stem}e`);
  if (stem.at(-1) === stem.at(-2)) forms.push(stem.slice(0, -1));
}
