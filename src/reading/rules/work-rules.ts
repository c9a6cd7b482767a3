/** Work: one rule a row of the lexicon's works, for its verbs, for `object first`, and for its nouns. */
import { tenseOf } from '../engine/forms.ts';
import type { Passage } from '../engine/passage.ts';
import type { Matched } from '../engine/pattern.ts';
import { WORKS, type WorkRow } from '../lexicon/works.ts';
import type { ActionMention } from './mentions.ts';
import type { Rule } from './rule.ts';

const lines = (patterns: string): string[] =>
  patterns
    .split('\n')
    .map((line) => line.trim())
    .filter(Boolean);

export const WORK_RULES: readonly Rule[] = WORKS.flatMap((row): Rule[] => [
  ...ruleOf(row, 'verb', row.verb),
  ...ruleOf(row, 'object first', row.objectFirst),
  ...ruleOf(row, 'noun', row.noun),
]);

function ruleOf(row: WorkRow, form: ActionMention['form'], patterns: string | undefined): Rule[] {
  if (!patterns) return [];
  const id = form === 'verb' ? row.id : `${row.id}-${form === 'noun' ? 'noun' : 'object-first'}`;
  const make = (match: Matched, passage: Passage): ActionMention => ({
    is: 'action',
    kind: row.kind,
    form,
    tense: tenseOfMatch(match, passage, form),
    first: match.first,
    last: match.last,
    rule: id,
  });
  const isMain = form === (row.verb ? 'verb' : 'noun');
  return [
    {
      id,
      finds: 'action',
      patterns: lines(patterns),
      make,
      yes: isMain ? row.yes : [],
      no: isMain ? row.no : [],
    },
  ];
}

function tenseOfMatch(match: Matched, passage: Passage, form: ActionMention['form']): ActionMention['tense'] {
  if (form === 'object first') {
    for (let at = match.last; at > match.first; at--) {
      const tense = tenseOf(passage.tokens[at]!.lower);
      if (tense === 'ed' || tense === 'ing') return tense;
    }
    return tenseOf(passage.tokens[match.last]!.lower);
  }
  for (let at = match.first; at <= match.last; at++)
    if (/^(went|gone|flew|flown)$/.test(passage.tokens[at]!.lower)) return 'ed';
  const word = passage.tokens[match.first]!.lower;
  return word === 'hand' || word === 'top' || word === 'side' || word === 'spot' || word === 'gap'
    ? tenseOf(passage.tokens[passage.following[match.first]!]?.lower ?? word)
    : tenseOf(word);
}
