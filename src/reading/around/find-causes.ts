/** The words that name what a problem comes from: behind a link (`because`, `from`, `owing to`), or an element in its sentence. */
import { type Passage, wallBetween } from '../engine/passage.ts';
import { addPhrases, emptyTree, phrasesAt } from '../engine/phrase-tree.ts';
import { CAUSE_LINKS, CAUSES_WITHOUT_LINK, ELEMENTS, RISK_LINKS } from '../lexicon/causes.ts';
import type { FindingStatus } from '../record.ts';
import type { FindingMention } from '../rules/mentions.ts';
import { wordsBetween } from '../settle/draft.ts';

const LINKS = emptyTree<'clause' | 'phrase'>();
addPhrases(LINKS, CAUSE_LINKS.clause, 'clause');
addPhrases(LINKS, CAUSE_LINKS.phrase, 'phrase');
const RISKS = emptyTree<'clause' | 'phrase'>();
addPhrases(RISKS, RISK_LINKS, 'clause');
const PLAIN = emptyTree<true>();
addPhrases(PLAIN, CAUSES_WITHOUT_LINK, true);
const ELEMENT = emptyTree<true>();
addPhrases(ELEMENT, ELEMENTS, true);

interface Place {
  first: number;
  last: number;
}

export function findCauses(
  passage: Passage,
  mention: FindingMention,
  status: FindingStatus,
  where: Place | null,
): string | undefined {
  const found =
    (status === 'risk' ? linked(passage, mention, RISKS) : null) ??
    linked(passage, mention, LINKS) ??
    (mention.kind === 'nutrient' ? element(passage, mention) : null) ??
    plain(passage, mention, status, where);
  if (!found || (where && found.first <= where.last && found.last >= where.first)) return undefined;
  return wordsBetween(passage, found.first, found.last);
}

/** In the same sentence, behind the finding first; up to twelve words of the linked clause. */
function linked(passage: Passage, mention: FindingMention, links: typeof LINKS): Place | null {
  for (let at = mention.last + 1; at <= mention.last + 18 && at < passage.tokens.length; at++) {
    if (wallBetween(passage, mention.last, at) === 3 || passage.plotOver[at]?.role === 'subject') break;
    const place = linkAt(passage, at, links, mention);
    if (place) return place;
  }
  for (let at = mention.first - 1; at >= mention.first - 14 && at >= 0; at--) {
    if (wallBetween(passage, at, mention.first) === 3) break;
    const place = linkAt(passage, at, links, mention);
    if (place && place.last < mention.first) return place;
    if (place && place.first < mention.first) return { first: place.first, last: mention.first - 1 };
  }
  return null;
}

function linkAt(passage: Passage, at: number, links: typeof LINKS, mention: FindingMention): Place | null {
  const hit = phrasesAt(links, passage, at)[0];
  if (!hit) return null;
  const first = passage.tokens[hit.last + 1]?.kind === 'mark' ? hit.last + 2 : hit.last + 1;
  if (
    first >= passage.tokens.length ||
    passage.walls[first] === 3 ||
    passage.walls[hit.last + 1] === 3 ||
    passage.timeAt[at]
  )
    return null;
  if (isNoCause(passage, at, first, mention)) return null;
  const kind = hit.meanings[0]!;
  let last = first;
  const most = kind === 'clause' ? 12 : 7;
  while (last + 1 < passage.tokens.length && last - first < most && !endsCause(passage, last + 1, mention))
    last++;
  return { first, last };
}

/** `from the kiln side`, `from 2,200 hills`, `after weeding`, `on 40`: places, counts and times. */
function isNoCause(passage: Passage, at: number, first: number, mention: FindingMention): boolean {
  const link = passage.tokens[at]!.lower;
  const next = passage.tokens[first]!.lower;
  if (passage.plotOver[first] || passage.timeAt[first]) return true;
  if (link === 'after' && !/^(lodging|weather_damage|seepage|flooded)$/.test(mention.kind)) return true;
  if (link !== 'from' && link !== 'since') return false;
  if (
    passage.numberAt[first] ||
    /^(that|this|there|here|now|then|day|where|what|when|inside|outside|today|yesterday|\d.*)$/.test(next)
  )
    return true;
  const words = passage.tokens
    .slice(first, first + 4)
    .map(({ lower }) => lower)
    .join(' ');
  return (
    /\b(side|end|corner|bund|levee|edge|inlet|middle|road|nursery|traps?|spray|netting)\b/.test(words) &&
    mention.kind !== 'nutrient'
  );
}

const endsCause = (passage: Passage, at: number, mention: FindingMention): boolean =>
  passage.walls[at]! >= 2 ||
  (passage.walls[at]! >= 1 && !/^(and|or)$/.test(passage.tokens[at]!.lower)) ||
  (passage.tokens[at]!.kind === 'mark' && /^[,.;:!?()—–]$/.test(passage.tokens[at]!.text)) ||
  (at >= mention.first && at <= mention.last) ||
  passage.plotAt[at]?.role === 'subject' ||
  (passage.timeAt[at] !== undefined && passage.timeAt[at]!.rule !== 'note-day');

/** `I think zinc`, `not enough nitrogen`, `zinc or just cold`. */
function element(passage: Passage, mention: FindingMention): Place | null {
  for (
    let at = Math.max(0, mention.first - 10);
    at <= mention.last + 16 && at < passage.tokens.length;
    at++
  ) {
    const hit = phrasesAt(ELEMENT, passage, at)[0];
    if (!hit) continue;
    const [low, high] = at < mention.first ? [at, mention.first] : [mention.last, at];
    if (at > mention.last + 1 && sentencesBetween(passage, low, high) > 1) continue;
    if (at < mention.first && wallBetween(passage, low, high) === 3) continue;
    if (
      /^(kg|kilo|kilos|pounds|lb|bag|bags|of|no|more|apply|put|hold)$/.test(
        passage.tokens[at - 1]?.lower ?? '',
      ) ||
      passage.tokens[at]!.lower === 'urea'
    )
      continue;
    return { first: at, last: hit.last };
  }
  return null;
}

const sentencesBetween = (passage: Passage, low: number, high: number): number =>
  passage.wallsTo.sentence[high]! - passage.wallsTo.sentence[low]!;

/** `the wind last night laid down a third`, `Saturday drizzle`: weather and machines in the finding's own sentence. */
function plain(
  passage: Passage,
  mention: FindingMention,
  status: FindingStatus,
  where: Place | null,
): Place | null {
  if (
    !['lodging', 'weather_damage', 'spray_injury', 'seepage', 'flooded', 'dry'].includes(mention.kind) &&
    status !== 'risk'
  )
    return null;
  for (
    let at = Math.max(0, mention.first - 12);
    at <= mention.last + 12 && at < passage.tokens.length;
    at++
  ) {
    const hit = phrasesAt(PLAIN, passage, at)[0];
    if (!hit || (at <= mention.last && hit.last >= mention.first)) continue;
    if (where && at <= where.last && hit.last >= where.first) continue;
    const [low, high] = at < mention.first ? [at, mention.first] : [mention.last, at];
    if (wallBetween(passage, low, high) === 3) continue;
    if (/^(no|not)$/.test(passage.tokens[at - 1]?.lower ?? '')) continue;
    let first = at;
    while (
      first > 0 &&
      passage.walls[first] === 0 &&
      /^(the|a|hot|cold|yesterday's|sunday|monday|tuesday|wednesday|thursday|friday|saturday|strong|big|last|night's|heavy|.*day's|north|this)$/.test(
        passage.tokens[first - 1]!.lower,
      )
    )
      first--;
    return { first, last: hit.last };
  }
  return null;
}
