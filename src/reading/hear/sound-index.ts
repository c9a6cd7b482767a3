/** Trade words and terms by how they sound, so that a word costs a few lookups however long the lists grow. */
import { FIELD_WORDS } from './clues.ts';
import { likeness, soundKeys } from './sound.ts';
import { TRADE_TERMS, TRADE_WORDS, type TradeClass, wordsOf } from './trade-words.ts';

export interface TradeSound {
  /** The words to read, two for a term that was run together. */
  meant: string[];
  joined: string;
  kind: TradeClass;
}

const singles: TradeSound[] = Object.entries(TRADE_WORDS).flatMap(([kind, words]) =>
  wordsOf(words).map((word) => ({ meant: [word], joined: word, kind: kind as TradeClass })),
);
const terms: TradeSound[] = TRADE_TERMS.map(({ term, kind }) => ({
  meant: wordsOf(term),
  joined: term.replaceAll(' ', ''),
  kind,
}));

export const TRADE_SINGLES: ReadonlySet<string> = new Set(singles.map(({ joined }) => joined));
const TERM_WORDS: ReadonlySet<string> = new Set(terms.flatMap(({ meant }) => meant));
const JOINED: ReadonlySet<string> = new Set([...singles, ...terms].map(({ joined }) => joined));

/** Whether a word is of the trade or of the field as it stands, also with an ending; such a word is no mishearing. */
export function isFieldWord(word: string): boolean {
  const bare = word.replace(/'s$/, '');
  return [bare, `${bare}s`, bare.replace(/s$/, ''), bare.replace(/(ing|ed)$/, '')].some(
    (form) => TRADE_SINGLES.has(form) || TERM_WORDS.has(form) || FIELD_WORDS.has(form),
  );
}

/** Whether letters run together are a trade word or term exactly. */
export const isTradeJoined = (letters: string): boolean => JOINED.has(letters);

const byKey = new Map<string, TradeSound[]>();
for (const sound of [...singles, ...terms])
  for (const key of new Set(soundKeys(sound.joined).flatMap(keyAndNeighbours))) {
    const there = byKey.get(key);
    if (there) there.push(sound);
    else byKey.set(key, [sound]);
  }

/** The trade word most like these letters by ear, with the likeness, 0 to 1; keys may differ in one sound. */
export function nearestTradeWord(letters: string): { sound: TradeSound; like: number } | undefined {
  let best: { sound: TradeSound; like: number } | undefined;
  for (const key of new Set(soundKeys(letters).flatMap(keyAndNeighbours)))
    for (const sound of byKey.get(key) ?? []) {
      if (Math.abs(sound.joined.length - letters.length) > 3) continue;
      const like = likeness(letters, sound.joined);
      if (like > (best?.like ?? 0)) best = { sound, like };
    }
  return best;
}

/** A key and, where it is long enough to bear it, each key with one sound left out. */
function keyAndNeighbours(key: string): string[] {
  if (key.length < 4) return key === '' ? [] : [key];
  return [key, ...Array.from(key, (_, at) => key.slice(0, at) + key.slice(at + 1))];
}
