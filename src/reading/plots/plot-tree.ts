/** All ways to say the plots of one note, in one tree: codes in any spelling, names, and names of groups. */

import { emptyTree, type PhraseTree } from '../engine/phrase-tree.ts';
import type { PlotNamed } from '../record.ts';
import { figuresSaid, lettersNamed } from './spoken-codes.ts';

export interface PlotMeant {
  codes: string[];
  /** `number`: the code is a bare figure, which may as well be a count. `group`: stands for several plots. */
  said: 'code' | 'number' | 'name' | 'group' | 'part';
}

const GENERIC = new Set(
  'plot plots field fields bay bays block blocks strip strips lot lots cut check acre acres paddy ground side place'.split(
    ' ',
  ),
);
const GROUP_NOUNS =
  'plot plots bay bays block blocks field fields check checks rep reps replication replications strips both ones paddies plot'.split(
    ' ',
  );
const NUMBER_WORDS: Readonly<Record<string, string>> = {
  one: '1',
  two: '2',
  three: '3',
  four: '4',
  five: '5',
  six: '6',
  seven: '7',
  eight: '8',
  nine: '9',
  ten: '10',
  forty: '40',
  eighty: '80',
  twenty: '20',
  thirty: '30',
  fifty: '50',
};
const FIGURES = new Map(Object.entries(NUMBER_WORDS).map(([word, figure]) => [figure, word]));

/** Notes of one farm come one after the other with the same plots: their tree is built once. */
const BUILT = new Map<string, PhraseTree<PlotMeant>>();
const MOST_BUILT = 16;

export function plotTree(plots: PlotNamed[]): PhraseTree<PlotMeant> {
  const key = JSON.stringify(plots.map(({ code, names }) => [code, names]));
  const built = BUILT.get(key);
  if (built) return built;
  if (BUILT.size >= MOST_BUILT) BUILT.clear();
  const tree = buildTree(plots);
  BUILT.set(key, tree);
  return tree;
}

function buildTree(plots: PlotNamed[]): PhraseTree<PlotMeant> {
  const tree = emptyTree<PlotMeant>();
  for (const { code } of plots) addCode(tree, code);
  addNames(tree, plots);
  addCodeGroups(tree, plots);
  return tree;
}

/** Letters and figures of a code: `T1R2` -> `t 1 r 2`, `North-1` -> `north 1`. */
const partsOf = (code: string): string[] => code.toLowerCase().match(/\p{L}+|\d+/gu) ?? [];

const isFigures = (part: string): boolean => /^\d+$/.test(part);

function addCode(tree: PhraseTree<PlotMeant>, code: string): void {
  const parts = partsOf(code);
  if (parts.length === 0) return;
  const bare = parts.length === 1 && isFigures(parts[0]!);
  const meant: PlotMeant = { codes: [code], said: bare ? 'number' : 'code' };
  for (const way of waysToSay(parts)) addWords(tree, way, meant);
}

/** Parts said one by one, or written together with their neighbours (`t1 r2`, `t1r2`). */
function waysToSay(parts: string[]): string[][] {
  if (parts.length === 0) return [[]];
  if (parts.length > 6) return [[parts.join('')]];
  const ways: string[][] = [];
  for (let together = 2; together <= parts.length; together++) {
    const word = parts.slice(0, together).join('');
    for (const rest of waysToSay(parts.slice(together))) ways.push([word, ...rest]);
  }
  for (const first of waysToSayPart(parts, 0)) {
    for (const rest of parts.length > 1 ? restWays(parts, 1) : [[]]) ways.push([...first, ...rest]);
  }
  return ways;
}

function restWays(parts: string[], at: number): string[][] {
  const said = waysToSayPart(parts, at);
  if (at + 1 >= parts.length) return said;
  const onward = restWays(parts, at + 1);
  const ways = said.flatMap((first) => onward.map((rest) => [...first, ...rest]));
  for (const rest of at + 2 < parts.length ? restWays(parts, at + 2) : [[]])
    ways.push([parts[at]! + parts[at + 1]!, ...rest]);
  return ways;
}

const waysToSayPart = (parts: string[], at: number): string[][] => {
  const part = parts[at]!;
  return isFigures(part) ? figuresSaid(part, at > 0 && !isFigures(parts[at - 1]!)) : lettersNamed(part);
};

function addNames(tree: PhraseTree<PlotMeant>, plots: PlotNamed[]): void {
  const stems = new Map<string, Set<string>>();
  const tails = new Map<string, Set<string>>();
  for (const { code, names } of plots) {
    for (const name of names) {
      const words = wordsOfName(name);
      if (words.length === 0) continue;
      addWords(tree, words, { codes: [code], said: 'name' });
      note(tails, words.at(-1)!, code);
      if (GENERIC.has(words.at(-1)!) && words.length > 1) {
        const short = words.slice(0, -1);
        addWords(tree, short, { codes: [code], said: short.length > 1 ? 'name' : 'part' });
      }
      if (words.length > 1 && (words.at(-1)! in NUMBER_WORDS || isFigures(words.at(-1)!)))
        note(stems, words.slice(0, -1).join(' '), code);
    }
  }
  for (const [noun, codes] of tails) {
    if (codes.size !== 2) continue;
    for (const lead of [['both'], ['two'], ['the', 'two']])
      addWords(tree, [...lead, `${noun}s`], { codes: [...codes], said: 'group' });
  }
  for (const [stem, codes] of stems) {
    const words = stem.split(' ');
    const meant: PlotMeant = { codes: [...codes], said: 'group' };
    if (codes.size < 2) continue;
    addWords(tree, [...words.slice(0, -1), `${words.at(-1)}s`], meant);
    for (const noun of GROUP_NOUNS) addWords(tree, [...words, noun], meant);
    addWords(tree, ['both', ...words], meant);
  }
}

const note = (map: Map<string, Set<string>>, key: string, code: string): void => {
  map.set(key, (map.get(key) ?? new Set()).add(code));
};

const wordsOfName = (name: string): string[] => {
  const words =
    name
      .toLowerCase()
      .replaceAll('’', "'")
      .match(/[\p{L}\p{M}']+|\d+/gu) ?? [];
  return words[0] === 'the' && words.length > 1 ? words.slice(1) : words;
};

/** `the T1s`, `both T1s`, `t two plots`, `B block`, `the north checks`: codes that begin alike. */
function addCodeGroups(tree: PhraseTree<PlotMeant>, plots: PlotNamed[]): void {
  const groups = new Map<string, string[]>();
  for (const { code } of plots) {
    const parts = partsOf(code);
    for (let length = 1; length < parts.length; length++) {
      const key = parts.slice(0, length).join(' ');
      groups.set(key, [...(groups.get(key) ?? []), code]);
    }
  }
  for (const [key, codes] of groups) {
    const parts = key.split(' ');
    const meant: PlotMeant = { codes, said: 'group' };
    const ways = waysToSay(parts);
    for (const way of ways) {
      for (const noun of GROUP_NOUNS) addWords(tree, [...way, noun], meant);
      const last = way.at(-1)!;
      if (codes.length > 1 && (parts.length > 1 || key.length > 1)) {
        addWords(tree, [...way.slice(0, -1), `${last}s`], meant);
        addWords(tree, [...way.slice(0, -1), `${last}'s`], meant);
      }
    }
    if (parts.length > 1 || key.length > 1) for (const way of ways) addWords(tree, ['both', ...way], meant);
  }
}

/** Also without apostrophes (`grandpas forty`), with words joined or split (`air strip`), and figures as words. */
function addWords(tree: PhraseTree<PlotMeant>, words: string[], meant: PlotMeant): void {
  let fronts = [tree];
  for (const word of words) {
    const onward: PhraseTree<PlotMeant>[] = [];
    for (const front of fronts) for (const variant of variantsOf(word)) onward.push(branch(front, variant));
    fronts = onward;
    if (fronts.length > 64) break;
  }
  for (const front of fronts) if (!front.ends.some((end) => same(end, meant))) front.ends.push(meant);
  if (meant.said === 'name') {
    for (let at = 0; at + 1 < words.length; at++) {
      const joined = [...words.slice(0, at), words[at]! + words[at + 1]!, ...words.slice(at + 2)];
      let front = tree;
      for (const word of joined) front = branch(front, word);
      if (!front.ends.some((end) => same(end, meant))) front.ends.push(meant);
    }
  }
}

const variantsOf = (word: string): string[] => {
  const variants = [word];
  if (word.includes("'")) variants.push(word.replaceAll("'", ''));
  const other = NUMBER_WORDS[word] ?? FIGURES.get(word);
  if (other) variants.push(other);
  return variants;
};

const branch = (tree: PhraseTree<PlotMeant>, word: string): PhraseTree<PlotMeant> => {
  const next = tree.next.get(word) ?? emptyTree<PlotMeant>();
  tree.next.set(word, next);
  return next;
};

const same = (a: PlotMeant, b: PlotMeant): boolean => a.said === b.said && a.codes.join() === b.codes.join();
