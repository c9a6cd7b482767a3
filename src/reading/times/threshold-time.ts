/** Work on a condition that a figure is passed: `if it passes ten a hill`, `at 10 we spray`. */
import { type TimeContext, wordAt } from './point.ts';
import { onTrigger, type TimeFound } from './time-found.ts';

const IF_WORDS = new Set(['if', 'once', 'when', 'should', 'in']);
const PASSES = new Set(
  'pass passes passed reach reaches reached exceed exceeds hit hits cross crosses top tops climb climbs rise rises go goes get gets come comes more over above beyond past become becomes exceeding than count reading > jump jumps at'.split(
    ' ',
  ),
);
const PLAIN_LIFT = new Set('over above past exceeding beyond > more than'.split(' '));
const FIGURE_REACH = 9;

/** `if it passes ten a hill`, `if more than 5 percent`, `at 10 we spray`, `over 15 then spray`: work on a condition. */
export function threshold(context: TimeContext, at: number): TimeFound | null {
  const word = wordAt(context, at);
  if (IF_WORDS.has(word)) return opensCondition(context, at) ? figurePassed(context, at) : null;
  const lifted = PLAIN_LIFT.has(word) || word === 'at' || word === 'from';
  if (!lifted || PLAIN_LIFT.has(wordAt(context, at - 1))) return null;
  const start = word === 'more' && wordAt(context, at + 1) === 'than' ? at + 2 : at + 1;
  const number = context.numberAt.get(start);
  if (!number) return null;
  let index = number.last + 1;
  while (
    /^(per|a|an|hill|hills|percent|%|one|\/|or|more|up|,|in|net|sweep|each|of|the|tillers)$/.test(
      wordAt(context, index),
    ) &&
    index < number.last + 6
  )
    index++;
  const then = wordAt(context, index) === 'then';
  const orders =
    /^(we|i|you|they|he|she|it)$/.test(wordAt(context, then ? index + 1 : index)) &&
    ORDERS.has(wordAt(context, then ? index + 2 : index + 1));
  return orders ||
    (then && ORDERS.has(wordAt(context, index + 1))) ||
    (word !== 'at' && ORDERS.has(wordAt(context, index)))
    ? onTrigger(at, index - 1, 'threshold', 'if_worse')
    : null;
}

const ORDERS = new Set(
  "spray treat act bait trap drain pull dig must will should can start go'll have".split(' '),
);

/** `in case it …`, `should it …`: not `in the …`, nor `we should …`. */
function opensCondition(context: TimeContext, at: number): boolean {
  const word = wordAt(context, at);
  const next = wordAt(context, at + 1);
  return word === 'in'
    ? next === 'case'
    : word !== 'should' || /^(it|they|the|numbers|that|counts)$/.test(next);
}

function figurePassed(context: TimeContext, at: number): TimeFound | null {
  let passes = false;
  for (let index = at + 1; index <= at + FIGURE_REACH; index++) {
    const token = context.tokens[index];
    if (!token || /^[.,;:!?]$/.test(token.text)) return null;
    if (PASSES.has(token.lower)) passes = true;
    const number = context.numberAt.get(index);
    if (passes && number && number.form !== 'ordinal')
      return onTrigger(at, number.last, 'threshold', 'if_worse');
  }
  return null;
}
