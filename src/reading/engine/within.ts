/** The part of a list in text order that starts between two tokens: what keeps the reader linear in length. */
export function within<One extends { first: number }>(
  list: readonly One[],
  from: number,
  to: number,
): readonly One[] {
  const start = firstAtOrAfter(list, from);
  let end = start;
  while (end < list.length && list[end]!.first <= to) end++;
  return start === 0 && end === list.length ? list : list.slice(start, end);
}

/** Index of the first entry that starts at `place` or later. */
export function firstAtOrAfter(list: readonly { first: number }[], place: number): number {
  let low = 0;
  let high = list.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (list[middle]!.first < place) low = middle + 1;
    else high = middle;
  }
  return low;
}
