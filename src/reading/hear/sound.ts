/** How alike two spellings sound: keys of double metaphone, and a distance over rough phonemes. */
import DoubleMetaphone from 'natural/lib/natural/phonetics/double_metaphone.js';

const coder = new DoubleMetaphone();
/** Longer words than this do not occur; the cut keeps the work per word bounded. */
const LONGEST = 32;

/** Primary and secondary key, once where they agree. `bund` and `bond` are both `PNT`. */
export function soundKeys(word: string): string[] {
  const [first = '', second = ''] = coder.process(word.slice(0, LONGEST).replace(/[^a-z]/g, ''));
  return first === second ? [first] : [first, second];
}

/** Spelling to rough phonemes, one character each; enough to compare with, not to pronounce by (own rules). */
const SPELLINGS: readonly (readonly [RegExp, string])[] = [
  [/[^a-z]/g, ''],
  [/^(kn|gn|pn)/, 'n'],
  [/^wr/, 'r'],
  [/^ps/, 's'],
  [/^x/, 'z'],
  [/wh/g, 'w'],
  [/tch/g, 'C'],
  [/ch(?=[lr])/g, 'k'],
  [/och(?=[ilo])/g, 'ok'],
  [/sch/g, 'sk'],
  [/ch/g, 'C'],
  [/[st]ion|ssion/g, 'Sn'],
  [/tur(?=e|ing)/g, 'Cr'],
  [/sh/g, 'S'],
  [/th/g, 'T'],
  [/ph/g, 'f'],
  [/igh/g, 'I'],
  [/(au|ou)gh(?=t)/g, 'o'],
  [/ough/g, 'o'],
  [/gh/g, 'g'],
  [/dge/g, 'J'],
  [/g(?=[ei])/g, 'J'],
  [/j/g, 'J'],
  [/c(?=[eiy])/g, 's'],
  [/ck|c|q/g, 'k'],
  [/ku(?=[aeio])/g, 'kw'],
  [/x/g, 'ks'],
  [/mb$/, 'm'],
  [/([bdgklmnprstfvz])\1/g, '$1'],
  [/([^aeiouy])le$/, '$1ul'],
  [/e$/, ''],
  [/(ee|ea|ie|ei)/g, 'E'],
  [/(oo|ou|ew|ue|ui)/g, 'U'],
  [/(ai|ay)/g, 'A'],
  [/(oa|ow|aw|au)/g, 'o'],
  [/y/g, 'i'],
];

const known = new Map<string, string>();

export function phonemes(word: string): string {
  const kept = known.get(word);
  if (kept !== undefined) return kept;
  let sounds = word.slice(0, LONGEST);
  for (const [spelling, sound] of SPELLINGS) sounds = sounds.replace(spelling, sound);
  if (known.size < 4000) known.set(word, sounds);
  return sounds;
}

const VOWELS = 'aeiouEUAI';
const isVowel = (sound: string): boolean => VOWELS.includes(sound);

/**
 * Cost of hearing one sound as another, both ways. Voiced and voiceless pairs, nasals, `l`/`r`, `b`/`v`, `f`/`p`,
 * `s`/`sh`, `z`/`j` and the sounds of `th` are those that recognisers and speakers of other mother tongues mix up
 * (memory: phonetics at large; sizes of the costs tried on recogniser output).
 */
const CLOSE: Record<string, number> = {};
for (const [pairs, cost] of [
  ['pb td kg fv sz SJ CJ sS', 0.35],
  ['mn lr bv fp wv zJ sT tT dT fT zT', 0.45],
  ['pt kt bd gd pk tC kC Jg SC bg nl', 0.7],
] as const)
  for (const pair of pairs.split(' ')) {
    CLOSE[pair.slice(0, 2)] = cost;
    CLOSE[pair[1]! + pair[0]!] = cost;
  }

function swapCost(a: string, b: string): number {
  if (a === b) return 0;
  if (isVowel(a) && isVowel(b)) return 0.3;
  return CLOSE[a + b] ?? 1;
}

const dropCost = (sound: string): number => (isVowel(sound) ? 0.5 : 'hrwd'.includes(sound) ? 0.6 : 0.9);

/** Likeness of two spellings by ear, 0 to 1. */
export function likeness(one: string, other: string): number {
  const a = phonemes(one);
  const b = phonemes(other);
  if (a.length === 0 || b.length === 0) return 0;
  let row = [0];
  for (const sound of b) row.push(row.at(-1)! + dropCost(sound));
  for (const sound of a) {
    const next = [row[0]! + dropCost(sound)];
    for (let at = 0; at < b.length; at++)
      next.push(
        Math.min(
          row[at]! + swapCost(sound, b[at]!),
          row[at + 1]! + dropCost(sound),
          next[at]! + dropCost(b[at]!),
        ),
      );
    row = next;
  }
  return Math.max(0, 1 - row.at(-1)! / Math.max(a.length, b.length));
}
