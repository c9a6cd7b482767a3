import type { Figure } from './figure.ts';
import { type Surroundings, wordOf } from './surroundings.ts';

const REACH = 18;

/** `Heading 50 no 60%`, `twelve no wait thirteen`, `5, no, I counted once more, 9 of 150`: the earlier figure is taken back. */
export function isTakenBack(around: Surroundings, figures: Figure[], index: number): boolean {
  const figure = figures[index] as Figure;
  const next = figures[index + 1];
  if (
    next &&
    next.number.first - figure.shape.last <= REACH &&
    takesBack(around, figure.shape.last + 1, next.number.first)
  )
    return true;
  return repeats(around, figures, index);
}

function takesBack(around: Surroundings, from: number, to: number): boolean {
  for (let index = from; index < to; index++) {
    const word = wordOf(around, index);
    const next = wordOf(around, index + 1);
    if (around.isPlot(index)) return false;
    if (
      word === 'no' &&
      (index + 1 === to ||
        /^(,|wait|i|make|sorry|it's|that's|its|hang|hold|um|uh|actually|correction|no)$/.test(next))
    )
      return true;
    if (/^(sorry|correction|rather|scratch)$/.test(word) && index + 4 >= to) return true;
    if (word === 'wait' && index + 8 >= to) return true;
    if ((word === 'i' && next === 'mean') || (word === 'make' && /^(it|that)$/.test(next))) return true;
  }
  return false;
}

/** `no wait thirteen, yeah thirteen`: said again, counted once. */
function repeats(around: Surroundings, figures: Figure[], index: number): boolean {
  const before = figures[index - 1];
  if (before && takesBack(around, before.shape.last + 1, (figures[index] as Figure).number.first))
    return false;
  const figure = figures[index] as Figure;
  if (!before || Math.abs(before.number.value) !== figure.number.value) return false;
  return /^(yes|yeah|yep|yup|aye|ya|means|meaning)$/.test(wordOf(around, figure.number.first - 1));
}
