/** Items as sentences of the trade, for pages, the command line and printing. */
import { dayOf, daysBetween, dayWords } from './days.ts';
import { type Bucket, DONE_NOT_SEEN, type Due, type FollowUp, type Found } from './item.ts';
import { problemWords, workWords } from './words.ts';

export const BUCKET_WORDS: Record<Bucket, string> = {
  late: 'Late',
  today: 'Today',
  soon: 'Soon',
  waiting: 'Waiting for an event',
  to_look_again: 'To be looked at again',
  to_decide: 'To be decided',
  later: 'Later',
  settled: 'Settled',
};

export const FOUND_WORDS: Record<Found, string> = {
  fixed: 'fixed',
  partly: 'partly fixed',
  not_fixed: 'not fixed',
  seen: 'looked at',
};

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/** `Hand weeding in B2, north bund, against weeds`. */
export function titleOf({ kind, plot, place, problem }: FollowUp): string {
  const where = [plot ? ` in ${plot}` : ', plot not named', ...(place ? [`, ${place}`] : [])].join('');
  return `${capital(workWords(kind))}${where}${problem ? `, against ${problemWords(problem)}` : ''}`;
}

/** `Late by 3 days: due by Fri 14 Mar`, `Waits for panicle initiation, forecast Fri 14 Mar`, `No day given`. */
export function dueSentence(item: FollowUp, today: string): string {
  if (item.bucket === 'settled') return '';
  if (item.waitsFor) return waitingSentence(item, today);
  const { due } = item;
  if (!due) return item.state === 'put_off' ? 'Put off, no day given' : 'No day given';
  const days = `${spanWords(due.from, due.to, today)}${due.forecast ? ', a forecast date' : ''}`;
  const late = due.to < today ? `Late by ${count(daysBetween(due.to, today))}: ` : '';
  if (DONE_NOT_SEEN.includes(item.state)) return lookSentence(item, due, late, days);
  const said = due.because === 'the day that was said' ? '' : ` (${due.because})`;
  return `${late}${late ? 'due' : 'Due'} ${days}${said}`;
}

/** `Look again on Tue 22 Jul: count the hills that took`; what to look at is a noun or an order, so it stands by itself. */
function lookSentence({ lookAt }: FollowUp, { from, to }: Due, late: string, days: string): string {
  const what = lookAt ?? 'the result';
  if (!late) return `Look again ${days}: ${what}`;
  return `${late}to be looked at ${from === to ? 'since' : 'by'} ${dayWords(to)} (${what})`;
}

const count = (days: number): string => `${days} ${days === 1 ? 'day' : 'days'}`;

function spanWords(from: string, to: string, today: string): string {
  if (from === to) return to === today ? 'today' : `on ${dayWords(to)}`;
  return from <= today
    ? `by ${to === today ? 'today' : dayWords(to)}`
    : `${dayWords(from)} to ${dayWords(to)}`;
}

/** `Waits for panicle initiation, forecast Fri 14 Mar`; once that day is there, asks for a look at the crop. */
export function waitingSentence({ waitsFor, due, bucket }: FollowUp, today: string): string {
  if (!waitsFor) return '';
  if (!due) return `Waits for ${waitsFor.words}`;
  const day = dayWords(due.from);
  if (bucket === 'today' && due.from <= today)
    return `Waits for ${waitsFor.words}, forecast for ${day}: look whether it is there`;
  return `Waits for ${waitsFor.words}, ${due.because.startsWith('counted') ? `about ${day}` : `forecast ${day}`}`;
}

/** Where the item stands, with who said so. */
export function stateSentence(item: FollowUp): string {
  const last = item.steps.filter((step) => !step.undone && step.what !== 'remark').at(-1);
  const on = last ? dayWords(last.on) : dayWords(dayOf(item.openedAt));
  const done = item.doneOn ? dayWords(item.doneOn) : '';
  const by = last?.by ? ` (${last.by})` : '';
  switch (item.state) {
    case 'considered':
      return 'Considered, not decided';
    case 'open':
      return item.openedByHand ? 'Open, kept or put on the list by hand' : 'Open';
    case 'put_off':
      return `Put off on ${on}${by}`;
    case 'reported':
      return `Said to be done on ${done}; nobody has looked yet`;
    case 'to_look':
      return `Done on ${done}; nobody has looked at the result yet`;
    case 'closed':
      return `Looked at on ${on}${by}: ${item.found ? FOUND_WORDS[item.found] : 'looked at'}`;
    case 'dropped':
      return `Dropped on ${on}${by}${last?.words ? `: ${last.words}` : ''}`;
    case 'ruled_out':
      return `Ruled out on ${on}${by}`;
  }
}
