/** Many phrases in one tree keyed by word, so that a text is looked at once, whatever the size of the lexicon. */
export interface PhraseTree<Meaning> {
  next: Map<string, PhraseTree<Meaning>>;
  ends: Meaning[];
}

export const emptyTree = <Meaning>(): PhraseTree<Meaning> => ({ next: new Map(), ends: [] });

/**
 * Adds each phrase of a comma-separated list. In a phrase `a|b` is either word, `a?` may be missing, `=a` is that
 * very form and no other (`=weeds`); any other word stands for all its inflections.
 */
export function addPhrases<Meaning>(tree: PhraseTree<Meaning>, phrases: string, meaning: Meaning): void {
  for (const phrase of phrases.split(',')) {
    const slots = phrase.trim().split(/\s+/).filter(Boolean);
    if (slots.length > 0) addSlots(tree, slots, 0, meaning, false);
  }
}

function addSlots<Meaning>(
  tree: PhraseTree<Meaning>,
  slots: string[],
  at: number,
  meaning: Meaning,
  some: boolean,
): void {
  const slot = slots[at];
  if (slot === undefined) {
    if (some && !tree.ends.includes(meaning)) tree.ends.push(meaning);
    return;
  }
  const optional = slot.endsWith('?') && slot.length > 1;
  if (optional) addSlots(tree, slots, at + 1, meaning, some);
  for (const word of (optional ? slot.slice(0, -1) : slot).split('|')) {
    const branch = tree.next.get(word) ?? emptyTree();
    tree.next.set(word, branch);
    addSlots(branch, slots, at + 1, meaning, true);
  }
}

export interface PhraseFound<Meaning> {
  last: number;
  meanings: Meaning[];
}

/** What the phrase reader needs of a passage: the forms of each token and which token follows. */
export interface Readable {
  forms: readonly (readonly string[])[];
  /** The next token that is no joining mark (`top-dress`), or the length of the note. */
  following: Int32Array;
}

/** All phrases that start at `at`, longest first. */
export function phrasesAt<Meaning>(
  tree: PhraseTree<Meaning>,
  text: Readable,
  at: number,
): readonly PhraseFound<Meaning>[] {
  const forms = text.forms[at];
  if (!forms) return NOTHING;
  let starts = false;
  for (let index = 0; index < forms.length && !starts; index++) starts = tree.next.has(forms[index]!);
  if (!starts) return NOTHING;
  const found: PhraseFound<Meaning>[] = [];
  collect(tree, text, at, found);
  return found.length > 1 ? found.sort((a, b) => b.last - a.last) : found;
}

const NOTHING: readonly never[] = [];

function collect<Meaning>(
  tree: PhraseTree<Meaning>,
  text: Readable,
  at: number,
  found: PhraseFound<Meaning>[],
): void {
  const forms = text.forms[at];
  if (!forms) return;
  for (let index = 0; index < forms.length; index++) {
    const branch = tree.next.get(forms[index]!);
    if (!branch) continue;
    if (branch.ends.length > 0) found.push({ last: at, meanings: branch.ends });
    if (branch.next.size > 0) collect(branch, text, text.following[at]!, found);
  }
}
