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
    let branch = tree.next.get(word);
    if (!branch) tree.next.set(word, (branch = emptyTree()));
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
): PhraseFound<Meaning>[] {
  const found: PhraseFound<Meaning>[] = [];
  let fronts: { tree: PhraseTree<Meaning>; at: number }[] = [{ tree, at }];
  while (fronts.length > 0) {
    const onward: typeof fronts = [];
    for (const front of fronts) {
      const forms = text.forms[front.at];
      if (!forms) continue;
      for (const form of forms) {
        const branch = front.tree.next.get(form);
        if (!branch) continue;
        if (branch.ends.length > 0) found.push({ last: front.at, meanings: branch.ends });
        onward.push({ tree: branch, at: text.following[front.at]! });
      }
    }
    fronts = onward;
  }
  return found.reverse();
}
