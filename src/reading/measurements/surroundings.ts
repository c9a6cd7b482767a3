import { longestAt } from '../numbers/word-tree.ts';
import type { Token } from '../text.ts';
import { TOPICS, type Topic } from './topics.ts';

export interface TopicFound {
  topic: Topic;
  first: number;
  last: number;
}

/** A note's words as the figures see them: which clause and stretch each token lies in, and what is spoken of where. */
export interface Surroundings {
  tokens: Token[];
  isPlot: (index: number) => boolean;
  /** Number of the clause of each token: marks and turning words end one. */
  clause: number[];
  /** Number of the stretch of each token: as clauses, and each plot begins one, for notes without marks. */
  stretch: number[];
  topics: TopicFound[];
  /** For each token, the index in `topics` of the first that starts at or after it. */
  topicFrom: number[];
}

const CLAUSE_MARKS = new Set([',', ';', ':', '.', '!', '?', '(', ')', '—', '–', '…', '\n']);
const TURNING_WORDS = new Set([
  'but',
  'while',
  'whereas',
  'because',
  'so',
  'although',
  'though',
  'yet',
  'since',
  'then',
]);
const DENIALS = new Set([
  'no',
  'nil',
  'not',
  'without',
  'never',
  'nay',
  'none',
  'neither',
  'nor',
  "isn't",
  "aren't",
  "ain't",
]);

export function surroundingsOf(tokens: Token[], isPlot: (index: number) => boolean): Surroundings {
  const clause: number[] = [];
  const stretch: number[] = [];
  let clauses = 0;
  let stretches = 0;
  tokens.forEach((token, index) => {
    const before = tokens[index - 1];
    if (before && before.sentence !== token.sentence) clauses++;
    if (CLAUSE_MARKS.has(token.text) || TURNING_WORDS.has(token.lower)) clauses++;
    if (isPlot(index) && !isPlot(index - 1)) stretches++;
    clause.push(clauses);
    stretch.push(clauses + stretches);
  });
  const topics = findTopics(tokens.map(withoutPossessive), isPlot);
  return { tokens, isPlot, clause, stretch, topics, topicFrom: firstTopicFrom(tokens, topics) };
}

/** `the colour's four`, `water's down`: the thing itself. */
const withoutPossessive = (token: Token): Token =>
  token.lower.endsWith("'s") ? { ...token, lower: token.lower.slice(0, -2) } : token;

/** Topics left to right; one that is said to be absent (`no dead hearts`) is not what a figure is about. */
function findTopics(tokens: Token[], isPlot: (index: number) => boolean): TopicFound[] {
  const topics: TopicFound[] = [];
  for (let at = 0; at < tokens.length; ) {
    const found =
      isPlot(at) || isPartOfCompound(tokens, at) || isSampleSize(tokens, at)
        ? null
        : longestAt(TOPICS, tokens, at);
    if (found && !isDenied(tokens, at)) topics.push({ topic: found.value, first: at, last: found.last });
    at = found ? found.last + 1 : at + 1;
  }
  return topics;
}

/** `ten-hill means`, `three-row strip`: a measure of something else. */
const isPartOfCompound = (tokens: Token[], at: number): boolean =>
  tokens[at - 1]?.text === '-' &&
  tokens[at - 1]?.end === tokens[at]?.start &&
  tokens[at - 2]?.end === tokens[at - 1]?.start &&
  /^(\d|two$|three$|four$|five$|six$|ten$|single$|double$)/.test(tokens[at - 2]?.lower ?? '');

/** `the mean of ten hills`: how many were looked at. */
const isSampleSize = (tokens: Token[], at: number): boolean =>
  /^(hill|hills|plants|panicles|stools)$/.test(tokens[at]?.lower ?? '') &&
  tokens[at - 2]?.lower === 'of' &&
  /^(mean|average|avg|sample|count)$/.test(tokens[at - 3]?.lower ?? '');

function isDenied(tokens: Token[], at: number): boolean {
  const one = tokens[at - 1]?.lower ?? '';
  const two = tokens[at - 2]?.lower ?? '';
  return (
    DENIALS.has(one) ||
    (DENIALS.has(two) && /^(more|fresh|new|any|sign|single|of|a|weed|insect|clear|live|active)$/.test(one))
  );
}

function firstTopicFrom(tokens: Token[], topics: TopicFound[]): number[] {
  const from: number[] = [];
  let next = topics.length;
  for (let index = tokens.length - 1; index >= 0; index--) {
    while (next > 0 && (topics[next - 1]?.first ?? -1) >= index) next--;
    from[index] = next;
  }
  return from;
}

/** How far a word about a figure may stand: further is another matter. */
const REACH = 40;

/** Topics of these kinds around tokens `first` to `last`, nearest first within: same stretch, same clause, same sentence, the sentence before. */
export function nearestTopic(
  around: Surroundings,
  first: number,
  last: number,
  wanted: ReadonlySet<Topic>,
  widest: 'stretch' | 'clause' | 'sentence' | 'before' = 'before',
): TopicFound | null {
  const { tokens, clause, stretch } = around;
  let best: TopicFound | null = null;
  let bestRank = Number.POSITIVE_INFINITY;
  const start = around.topicFrom[Math.max(0, first - REACH)] ?? 0;
  for (let index = start; index < around.topics.length; index++) {
    const topic = around.topics[index] as TopicFound;
    if (topic.first > last + REACH) break;
    if (!wanted.has(topic.topic)) continue;
    const before = topic.last < first;
    const distance = before ? first - topic.last : Math.max(0, topic.first - last);
    const level = levelOf(tokens, clause, stretch, topic.first, first, before);
    if (level === null || level > WIDEST[widest]) continue;
    const rank = level * 1000 + distance + (before ? 0 : level === 0 ? 1.5 : 400);
    if (rank < bestRank) [best, bestRank] = [topic, rank];
  }
  return best;
}

const WIDEST = { stretch: 0, clause: 1, sentence: 2, before: 3 } as const;

function levelOf(
  tokens: Token[],
  clause: number[],
  stretch: number[],
  at: number,
  from: number,
  before: boolean,
): number | null {
  if (stretch[at] === stretch[from]) return 0;
  if (clause[at] === clause[from]) return 1;
  if (tokens[at]?.sentence === tokens[from]?.sentence) return 2;
  const apart = (tokens[from]?.sentence ?? 0) - (tokens[at]?.sentence ?? 0);
  return before && apart <= 2 ? 3 : null;
}

/** True where one of these topics lies in the stretch of token `at`. */
export const speaksOf = (
  around: Surroundings,
  at: number,
  topic: Topic,
  widest: 'stretch' | 'clause' | 'sentence' = 'stretch',
): boolean => nearestTopic(around, at, at, new Set([topic]), widest) !== null;

export const wordOf = (around: Surroundings, index: number): string => around.tokens[index]?.lower ?? '';
