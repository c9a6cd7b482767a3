/** The grade that a note gives a problem, from the words beside it. */
import { type Passage, wallBetween } from '../engine/passage.ts';
import { addPhrases, emptyTree, phrasesAt } from '../engine/phrase-tree.ts';
import { GRADE_OF_OTHERS, SEVERITY_WORDS } from '../lexicon/severity.ts';
import type { Severity } from '../record.ts';
import type { FindingMention } from '../rules/mentions.ts';

const TREE = emptyTree<Severity>();
for (const { severity, words } of SEVERITY_WORDS) addPhrases(TREE, words, severity);

export function findSeverity(
  passage: Passage,
  mentions: readonly FindingMention[],
  index: number,
): Severity | undefined {
  const mention = mentions[index]!;
  const before = Math.max(mention.first - 5, (mentions[index - 1]?.last ?? -1) + 1, 0);
  for (let at = mention.first - 1; at >= before; at--) {
    if (wallBetween(passage, at, mention.first) >= 1) break;
    const grade = gradeAt(passage, at, mention);
    if (grade) return grade;
  }
  const after = Math.min(
    mention.last + 5,
    (mentions[index + 1]?.first ?? passage.tokens.length) - 1,
    passage.tokens.length - 1,
  );
  for (let at = mention.last + 1; at <= after; at++) {
    if (wallBetween(passage, mention.last, at) >= 2 || passage.numberAt[at]) break;
    const grade = gradeAt(passage, at, mention);
    if (grade) return grade;
  }
  for (let at = mention.first; at < mention.last; at++) {
    const grade = gradeAt(passage, at, mention);
    if (grade) return grade;
  }
  return undefined;
}

function gradeAt(passage: Passage, at: number, mention: FindingMention): Severity | undefined {
  const hit = phrasesAt(TREE, passage, at)[0];
  if (!hit) return undefined;
  const next = passage.tokens[hit.last + 1];
  if (
    next &&
    GRADE_OF_OTHERS.has(next.lower) &&
    !(hit.last + 1 >= mention.first && hit.last + 1 <= mention.last)
  )
    return undefined;
  if (passage.tokens[at]!.lower === 'some' && isSingle(passage, at)) return undefined;
  if (/^(not|isn't|no|never)$/.test(passage.tokens[at - 1]?.lower ?? '')) return undefined;
  return hit.meanings[0];
}

/** `some tall plant`, `some eejit`: one of a kind. */
const isSingle = (passage: Passage, at: number): boolean =>
  /^(tall|kind|sort|day|one)$/.test(passage.tokens[at + 1]?.lower ?? '');
