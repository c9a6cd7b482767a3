/** Times that hang on something to happen: an event of the crop, a piece of work, the weather, a figure being passed. */
import { longestAt, phrasesOf, treeOf } from '../numbers/word-tree.ts';
import type { ActionKind, Stage, Trigger } from '../record.ts';
import { STAGES } from '../record.ts';
import { nextWalk } from './next-walk.ts';
import { type TimeContext, wordAt } from './point.ts';
import { daysOf, readSpan } from './span-point.ts';
import { threshold } from './threshold-time.ts';
import { type EventAt, onTrigger, type TimedEvent, type TimeFound } from './time-found.ts';

type Side = 'after' | 'before' | 'at';

/** Words that lead to an event, longest first, and on which side of it the work lies. */
const CUES: readonly [words: string[], side: Side][] = (
  [
    ['as soon as', 'after'],
    ['soon as', 'after'],
    ['the day after', 'after'],
    ['right after', 'after'],
    ['straight after', 'after'],
    ['soon after', 'after'],
    ['only after', 'after'],
    ['just after', 'after'],
    ['immediately after', 'after'],
    ['directly after', 'after'],
    ['not until', 'after'],
    ['not till', 'after'],
    ['not before', 'after'],
    ['only when', 'after'],
    ['only once', 'after'],
    ['just before', 'before'],
    ['right before', 'before'],
    ['immediately before', 'before'],
    ['ahead of', 'before'],
    ['prior to', 'before'],
    ['earlier than', 'before'],
    ['in time for', 'before'],
    ['by the time', 'at'],
    ['at about', 'at'],
    ['after', 'after'],
    ['following', 'after'],
    ['once', 'after'],
    ['when', 'after'],
    ['whenever', 'after'],
    ['wen', 'after'],
    ['until', 'after'],
    ['till', 'after'],
    ['til', 'after'],
    ['post', 'after'],
    ['aftr', 'after'],
    ['afta', 'after'],
    ['before', 'before'],
    ['b4', 'before'],
    ['pre', 'before'],
    ['at', 'at'],
    ['on', 'at'],
    ['upon', 'at'],
    ['from', 'at'],
    ['by', 'at'],
    ['come', 'at'],
    ['around', 'at'],
    ['if', 'after'],
    ['in case', 'after'],
    ['should', 'after'],
    ['provided', 'after'],
  ] as const
).map(([words, side]): [string[], Side] => [words.split(' '), side]);

const CUES_BY_WORD = new Map<string, [words: string[], side: Side][]>();
for (const cue of CUES) {
  const first = cue[0][0] ?? '';
  CUES_BY_WORD.set(first, [...(CUES_BY_WORD.get(first) ?? []), cue]);
}

/** What may stand between the cue and the event: `once | the field is all | drained`. */
const BETWEEN = new Set(
  (
    "levees levee bunds checks bay paddy surface numbers count counts hoppers bugs damage disease lesions spots weeds rats insects snails the a an it it's its is are has have been be being we we've we're i i've i'm they they've they're he he's she she's you this that that's these those them em field fields plot plots ground soil " +
    'crop rice plants all full complete some more little good any there gets get got getting goes go put done finishing finish finished having proper decent bit of one our my their his her your first second third last next ' +
    'will shall does do did only really quite well just new whole both next said start starts started starting begin begins beginning reach reaches reached reaching enter enters show shows stage of completed complete over -'
  ).split(' '),
);
const MOST_BETWEEN = 6;

/** Events that every note words alike; stages and actions come from the lexicon through `eventAt`. */
const OWN_EVENTS: readonly [event: 'rain' | 'drained' | 'dry' | 'if_worse' | 'next_walk', phrases: string][] =
  [
    ['rain', 'rain, rains, raining, rained, the rains, shower, showers, a shower, rainfall, monsoon'],
    [
      'drained',
      'drained, drained off, drained down, drains, drains off, water is off, water off, water is out, water is let out, water is gone, water goes down, water is down, waters off, waters down, flood is off, water has gone, water is drained, drained out, water comes off, water is pulled, pull the water, water has come off, flood comes off, boards are pulled, boards are out, flood is pulled, water recedes, water runs off',
    ],
    [
      'dry',
      'dry, dries, dried, dries out, dries up, dried out, dries off, dried up, dry enough, drying, dries down, firm enough to walk, firm enough',
    ],
    [
      'if_worse',
      'worse, any worse, worsens, spreads, spread, spreading, increases, increase, increased, climbs, climb, rises, rise, grows, multiplies, multiply, goes up, go up, builds, builds up, build up, gets bad, worsen, out of hand, keeps going, continues, moves up, comes back, come back, more of them, reaches the threshold, passes the threshold, pass the threshold, reach the threshold, crosses the threshold, cross threshold, reach threshold, above threshold, over threshold, crosses the limit, passes the limit, crosses the line, becomes more, become more, become worse, becomes worse, gets heavier, gets thicker, jumps, more show up, show up, shows up, turn up, more come, moves, gets in, gets up',
    ],
  ];

const OWN = treeOf<TimedEvent>(
  OWN_EVENTS.flatMap(([event, phrases]) => phrasesOf(phrases, event as TimedEvent)),
);

/** One of our own events at this token, the longest wording of it. */
function ownEvent(context: TimeContext, at: number): { event: TimedEvent; last: number } | null {
  const found = longestAt(OWN, context.tokens, at);
  return found && { event: found.value, last: found.last };
}

/** `once it's drained`, `after weeding`, `at panicle initiation`, `two days after topdressing`, `if it passes ten a hill`. */
export function eventTime(context: TimeContext, at: number, eventAt: EventAt): TimeFound | null {
  return (
    nextWalk(context, at) ??
    threshold(context, at) ??
    spanFromEvent(context, at, eventAt) ??
    cuedEvent(context, at, eventAt) ??
    fusedEvent(context, at)
  );
}

function cuedEvent(context: TimeContext, at: number, eventAt: EventAt): TimeFound | null {
  for (const [words, side] of CUES_BY_WORD.get(wordAt(context, at)) ?? []) {
    if (!words.every((word, step) => wordAt(context, at + step) === word)) continue;
    const event = eventAfter(context, at + words.length, eventAt);
    if (!event) continue;
    if (
      /^(if|in|should|provided)$/.test(words[0] ?? '') &&
      event.event !== 'rain' &&
      event.event !== 'if_worse' &&
      event.event !== 'dry'
    )
      continue;
    if (event.event === 'if_worse' && !/^(if|once|when|should|in)$/.test(words[0] ?? '')) continue;
    const trigger = triggerOf(event.event, side);
    if (!trigger) continue;
    const daysAfter = words.join(' ') === 'the day after' ? 1 : undefined;
    return onTrigger(
      at,
      event.last,
      side === 'before' ? 'before-event' : side === 'at' ? 'at-event' : 'after-event',
      trigger,
      daysAfter,
    );
  }
  return null;
}

/** The first event within a few joining words, inside the clause. */
function eventAfter(
  context: TimeContext,
  from: number,
  eventAt: EventAt,
): { event: TimedEvent; last: number } | null {
  for (let index = from; index <= from + MOST_BETWEEN && index < context.tokens.length; index++) {
    const event = ownEvent(context, index) ?? eventAt(context.tokens, index);
    if (event) return event;
    if (!BETWEEN.has(wordAt(context, index)) && !isWaterBefore(context, index)) return null;
  }
  return null;
}

const isWaterBefore = (context: TimeContext, at: number): boolean =>
  /^(water|water's|flood|fields)$/.test(wordAt(context, at));

const STAGE_NAMES: ReadonlySet<string> = new Set(STAGES);

/** The vocabulary has `after:` and `before:` for work, none for what comes before a stage or before rain. */
function triggerOf(event: TimedEvent, side: Side): Trigger | null {
  if (
    event === 'drained' ||
    event === 'dry' ||
    event === 'rain' ||
    event === 'if_worse' ||
    event === 'next_walk'
  )
    return side === 'before' ? null : event;
  if (STAGE_NAMES.has(event)) return side === 'before' ? null : (event as Stage);
  return side === 'at' ? null : `${side}:${event as ActionKind}`;
}

const AFTER_SPAN: ReadonlyMap<string, 'after' | 'before'> = new Map([
  ['after', 'after'],
  ['following', 'after'],
  ['post', 'after'],
  ['past', 'after'],
  ['from', 'after'],
  ['aftr', 'after'],
  ['before', 'before'],
  ['b4', 'before'],
]);

/** `two days after topdressing`, `the day after the urea`, `a week before harvest`: the event and the days from it. */
function spanFromEvent(context: TimeContext, at: number, eventAt: EventAt): TimeFound | null {
  const start = /^(in|about|around|some|the|only|say|maybe|next)$/.test(wordAt(context, at)) ? at + 1 : at;
  const span = readSpan(context, start) ?? theDay(context, start);
  if (!span || span.unit === 'hour') return null;
  const side = AFTER_SPAN.get(wordAt(context, span.last + 1));
  if (!side) return null;
  const event = eventAfter(context, span.last + 2, eventAt);
  const trigger = event && triggerOf(event.event, side);
  if (!event || !trigger) return null;
  return onTrigger(at, event.last, 'days-from-event', trigger, daysOf(span.low, span.unit));
}

/** `the day after`, `the week after`: one of them. */
function theDay(context: TimeContext, at: number) {
  const word = wordAt(context, at);
  return word === 'day' || word === 'week' ? ({ low: 1, high: 1, unit: word, last: at } as const) : null;
}

/** American growers write it in one word: `preflood urea`, `preplant`, `postflood`. */
const FUSED: ReadonlyMap<string, Trigger> = new Map([
  ['preflood', 'before:irrigate'],
  ['postflood', 'after:irrigate'],
  ['preplant', 'before:plant'],
  ['postplant', 'after:plant'],
  ['preharvest', 'before:harvest'],
  ['postharvest', 'after:harvest'],
]);

function fusedEvent(context: TimeContext, at: number): TimeFound | null {
  const trigger = FUSED.get(wordAt(context, at));
  return trigger ? onTrigger(at, at, 'fused-event', trigger) : null;
}
