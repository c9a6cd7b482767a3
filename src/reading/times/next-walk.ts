/** The writer's own next round. */
import { type TimeContext, wordAt } from './point.ts';
import { onTrigger, type TimeFound } from './time-found.ts';

const WALKS = new Set(
  'walk round visit trip rounds inspection look walkthrough walkround tour scouting lap loop walkabout'.split(
    ' ',
  ),
);
const NEXT_TIME_TAIL = new Set(
  "we i you walk walking come go round visit are am im through pass be here there by look out were in round im past i'm we're around it the this".split(
    ' ',
  ),
);

/** `on the next walk`, `next round`, `next time we walk it`, `when I come back round`. */
export function nextWalk(context: TimeContext, at: number): TimeFound | null {
  let index = at;
  while (
    /^(on|at|in|the|my|our|by|till|until|for|during|their|his|her|your)$/.test(wordAt(context, index)) &&
    index < at + 3
  )
    index++;
  if (!/^(next|nxt|following|coming)$/.test(wordAt(context, index))) return null;
  const word = wordAt(context, index + 1);
  if (WALKS.has(word)) return onTrigger(at, index + 1, 'next-walk', 'next_walk');
  if (/^(field|weekly|plot)$/.test(word) && WALKS.has(wordAt(context, index + 2)))
    return onTrigger(at, index + 2, 'next-walk', 'next_walk');
  if (word !== 'time') return null;
  let last = index + 1;
  while (NEXT_TIME_TAIL.has(wordAt(context, last + 1)) && last < index + 6) last++;
  return onTrigger(at, last, 'next-walk', 'next_walk');
}
