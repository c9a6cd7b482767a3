import { type ReadPoint, type TimeContext, wordAt } from './point.ts';

/** A time of the clock says only that it is today: `at 06:00`, `by 10.30`, `two o'clock`, `6 am`, `5 pm sharp`, `1400 hrs`. */
export const clockPoint: ReadPoint = (context, at) => {
  const start = /^(at|by|around|about|before|from|till|until)$/.test(wordAt(context, at)) ? at + 1 : at;
  const last = clockEnd(context, start);
  return last === null
    ? null
    : { last, rule: 'clock', toCome: [context.day, context.day], done: [context.day, context.day] };
};

/** Index of the last token of a clock time that starts at `at`, or null. */
export function clockEnd(context: TimeContext, at: number): number | null {
  const number = context.numberAt.get(at);
  if (number?.form !== 'cardinal' || number.value > 2400) return null;
  const word = wordAt(context, at);
  const next = number.last + 1;
  const withMinutes =
    /^\d{1,2}$/.test(word) && wordAt(context, next) === ':' && /^\d\d$/.test(wordAt(context, next + 1))
      ? next + 2
      : null;
  const half = withMinutes ?? next;
  const unit = wordAt(context, half);
  if (/^(am|pm|o'clock|oclock)$/.test(unit) && number.value <= 12) return half;
  if (/^(hrs|hours|h)$/.test(unit) && number.value >= 100) return half;
  if (number.value <= 12 && /^(a|p)$/.test(wordAt(context, half)) && wordAt(context, half + 1) === 'm')
    return half + 1;
  if (number.value <= 12 && wordAt(context, half) === 'o' && wordAt(context, half + 1) === 'clock')
    return half + 1;
  return withMinutes ? withMinutes - 1 : null;
}
