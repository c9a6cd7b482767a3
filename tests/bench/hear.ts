/**
 * How many trade words the hearing of misheard words brings back, and how many right words it spoils.
 * Usage: tsx tests/bench/hear.ts PAIRS.jsonl TERMS.txt [--show] [--final]
 * PAIRS: one `{engine, cond, id, ref, hyp}` a line; TERMS: one trade term a line. A third of the sentences, chosen by
 * a hash of their id, is measured only with `--final`.
 */
import { readFileSync } from 'node:fs';
import { hear } from '../../src/reading/hear/hear.ts';
import { NO_FARM_WORDS } from '../../src/reading/record.ts';
import { tokenise } from '../../src/reading/text.ts';

interface Pair {
  engine: string;
  cond: string;
  id: string;
  ref: string;
  hyp: string;
}

const [pairsFile, termsFile] = process.argv.slice(2);
if (!pairsFile || !termsFile) throw new Error('name the file of pairs and the file of terms');
const show = process.argv.includes('--show');
const final = process.argv.includes('--final');

const pairs: Pair[] = readFileSync(pairsFile, 'utf8')
  .trim()
  .split('\n')
  .map((line) => JSON.parse(line));
const terms = readFileSync(termsFile, 'utf8')
  .trim()
  .split('\n')
  .map((term) => term.trim());

interface Tally {
  clips: number;
  terms: number;
  before: number;
  after: number;
  right: number;
  spoiled: number;
  changes: number;
  /** Changes whose words are not in the reference, whatever stood there before. */
  wrong: number;
}
const tallies = new Map<string, Tally>();

for (const pair of pairs) {
  if ((hash(pair.id) % 3 === 0) !== final) continue;
  const tokens = tokenise(pair.hyp);
  const { tokens: meant, heard } = hear(tokens, {
    channel: 'dictated',
    plots: [],
    farmWords: NO_FARM_WORDS,
  });
  const ref = words(pair.ref);
  const said = words(pair.hyp);
  const after = words(meant.map((token) => token.lower).join(' '));
  const spoiled = spoiledWords(ref, said, after);
  for (const key of [`${pair.engine} ${pair.cond}`, 'all']) {
    const tally = tallies.get(key) ?? {
      clips: 0,
      terms: 0,
      before: 0,
      after: 0,
      right: 0,
      spoiled: 0,
      changes: 0,
      wrong: 0,
    };
    const wanted = terms.filter((term) => holds(ref, term));
    tally.clips++;
    tally.terms += wanted.length;
    tally.before += wanted.filter((term) => holds(said, term)).length;
    tally.after += wanted.filter((term) => holds(after, term)).length;
    tally.right += common(ref, said);
    tally.spoiled += spoiled;
    tally.changes += heard.length;
    tally.wrong += heard.filter((one) => !holds(ref, one.meant)).length;
    tallies.set(key, tally);
  }
  if (show)
    for (const one of heard)
      console.log(
        `${spoiled > 0 ? '!! ' : holds(ref, one.meant) ? '' : '?? '}${pair.engine} ${pair.id} [${one.said} => ${one.meant}] ref: ${pair.ref}`,
      );
  if (show) {
    const lost = terms.filter((term) => holds(ref, term) && !holds(after, term));
    if (lost.length > 0) console.log(`-- ${pair.engine} ${pair.id} lost ${lost.join(', ')}: ${pair.hyp}`);
  }
}

console.log(final ? 'Final third of the sentences' : 'Two thirds of the sentences');
for (const [key, t] of [...tallies].sort()) {
  const cut = t.terms - t.before === 0 ? 0 : (t.after - t.before) / (t.terms - t.before);
  console.log(
    `${key.padEnd(28)} clips ${t.clips}, trade words ${t.terms}: ${percent(t.before, t.terms)} before, ` +
      `${percent(t.after, t.terms)} after, missed cut by ${(100 * cut).toFixed(1)} %; changes ${t.changes} (${t.wrong} not in the reference), ` +
      `right words spoiled ${t.spoiled} of ${t.right} (${percent(t.spoiled, t.right)})`,
  );
}

/** FNV-1a over the id. */
function hash(id: string): number {
  let value = 2166136261;
  for (const letter of id) value = Math.imul(value ^ letter.charCodeAt(0), 16777619) >>> 0;
  return value;
}

function words(text: string): string[] {
  return text
    .toLowerCase()
    .replace(/colour/g, 'color')
    .replace(/sulphate/g, 'sulfate')
    .replace(/[^\w\s']/g, ' ')
    .split(/\s+/)
    .filter(Boolean);
}

/** Whether a term stands in the words, written together or apart. */
function holds(text: readonly string[], term: string): boolean {
  const joined = term.replaceAll(' ', '');
  for (let from = 0; from < text.length; from++) {
    let letters = '';
    for (let to = from; to < text.length && letters.length < joined.length; to++) {
      letters += text[to];
      if (letters === joined) return true;
    }
  }
  return false;
}

/** Words that the reference and a text have in common, in order. */
function common(ref: readonly string[], text: readonly string[]): number {
  let row = new Array<number>(text.length + 1).fill(0);
  for (const word of ref) {
    const next = [0];
    text.forEach((other, at) => {
      next.push(word === other ? row[at]! + 1 : Math.max(row[at + 1]!, next[at]!));
    });
    row = next;
  }
  return row.at(-1)!;
}

/** Right words that the repair took away; written together or apart counts as the same. */
function spoiledWords(ref: readonly string[], said: readonly string[], after: readonly string[]): number {
  return Math.max(0, common(letters(ref), letters(said)) - common(letters(ref), letters(after))) > 0 &&
    common(ref, after) < common(ref, said)
    ? common(ref, said) - common(ref, after)
    : 0;
}

function letters(text: readonly string[]): string[] {
  return Array.from(text.join(''));
}

function percent(part: number, whole: number): string {
  return whole === 0 ? '-' : `${((100 * part) / whole).toFixed(2)} %`;
}
