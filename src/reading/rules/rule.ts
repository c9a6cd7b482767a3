/** A rule as a row, and the index that finds where rules apply without trying each of them at each word. */
import type { Passage } from '../engine/passage.ts';
import { compilePattern, type Matched, matchAt, type Pattern } from '../engine/pattern.ts';
import type { Mention } from './mentions.ts';

export interface Rule {
  id: string;
  finds: Mention['is'];
  /** One or more patterns (see engine/pattern.ts). */
  patterns: readonly string[];
  /** Pure; null where the match turns out to be something else. */
  make(match: Matched, passage: Passage): Mention | null;
  /** Notes in which the rule must find something, and notes in which it must not. They run as tests. */
  yes: readonly string[];
  no: readonly string[];
}

interface Indexed {
  rule: Rule;
  pattern: Pattern;
}
export interface RuleIndex {
  byWord: Map<string, Indexed[]>;
  anywhere: Indexed[];
}

export function indexRules(rules: readonly Rule[]): RuleIndex {
  const index: RuleIndex = { byWord: new Map(), anywhere: [] };
  for (const rule of rules) {
    for (const source of rule.patterns) {
      for (const pattern of compilePattern(source)) addPattern(index, { rule, pattern });
    }
  }
  return index;
}

function addPattern(index: RuleIndex, indexed: Indexed): void {
  if (!indexed.pattern.starts) index.anywhere.push(indexed);
  for (const word of indexed.pattern.starts ?? [])
    index.byWord.set(word, [...(index.byWord.get(word) ?? []), indexed]);
}

/** Everything that the rules find, in the order of the text. */
export function applyRules(index: RuleIndex, passage: Passage): Mention[] {
  const mentions: Mention[] = [];
  for (let at = 0; at < passage.tokens.length; at++) {
    const tried = new Set<Indexed>();
    const tryAll = (list: readonly Indexed[]): void => {
      for (const indexed of list) {
        if (tried.has(indexed)) continue;
        tried.add(indexed);
        const match = matchAt(indexed.pattern, passage, at);
        const mention = match && indexed.rule.make(match, passage);
        if (mention) mentions.push(mention);
      }
    };
    for (const form of passage.forms[at]!) {
      const list = index.byWord.get(form);
      if (list) tryAll(list);
    }
    if (passage.numberAt[at] || passage.plotAt[at] || passage.timeAt[at]) tryAll(index.anywhere);
  }
  return mentions;
}
