/** `Sheath blight line by line: R1 up to leaf 2. R3 none.`: named once, then the plots and how each stands. */
import { type Passage, wallBetween } from '../engine/passage.ts';
import type { FindingMention } from './mentions.ts';

/** Words beside a plot that say how it stands without naming the problem again. */
const HOW_IT_STANDS =
  /^(none|nil|zero|no|light|slight|mild|moderate|medium|heavy|severe|bad|worst|few|some|odd|scattered|climb|climbs|up|down|per|percent|%|hills?|hill|clean|clear|free|thick|everywhere|plenty|many|spots?|worse|low|high)$/;
const NOTHING = /^(none|nil|zero|clean|clear|free)$/;

/** The heading gives way to one mention in each plot that follows, up to the next problem that is named. */
export function withTopics(passage: Passage, problems: FindingMention[]): FindingMention[] {
  const topic = problems[0];
  if (!topic || !isHeading(passage, topic)) return problems;
  const end = problems[1]?.first ?? passage.tokens.length;
  const spread = passage.plots
    .filter(({ first, role }) => role === 'subject' && first > topic.last && first < end)
    .flatMap(({ last }) => mentionBehind(passage, topic, last, end) ?? []);
  return spread.length > 1 ? [...spread, ...problems.slice(1)] : problems;
}

/** Before any plot is named, at the head of the note, and closed by a colon or a stop. */
function isHeading(passage: Passage, { first, last }: FindingMention): boolean {
  if (first > 4) return false;
  for (let at = last + 1; at < passage.tokens.length && at <= last + 9; at++) {
    if (passage.plotOver[at]) return passage.walls[at]! >= 3 || passage.tokens[at - 1]?.text === ':';
    if (passage.plotOver[at - 1]) return false;
  }
  return false;
}

function mentionBehind(
  passage: Passage,
  topic: FindingMention,
  plot: number,
  end: number,
): FindingMention | null {
  for (let at = plot + 1; at < end && at <= plot + 8; at++) {
    if (passage.plotOver[at] || (at > plot + 2 && wallBetween(passage, plot + 1, at) >= 3)) return null;
    const { lower } = passage.tokens[at]!;
    if (!HOW_IT_STANDS.test(lower) && !passage.numberAt[at]) continue;
    const says = NOTHING.test(lower) || lower === '0' ? 'absent' : undefined;
    return {
      ...topic,
      first: at,
      last: at,
      sign: false,
      weak: false,
      ...(says && { says, rule: 'none-of-it' }),
    };
  }
  return null;
}
