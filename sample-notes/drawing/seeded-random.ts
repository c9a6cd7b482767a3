/** A small generator of our own, so that each photo comes out the same on every machine. */
export interface SeededRandom {
  /** From `low` (included) to `high` (excluded). */
  between(low: number, high: number): number;
  chance(probability: number): boolean;
}

/** Weyl steps through 32-bit space, mixed by two multiply-and-shift rounds; the seed is hashed from its letters. */
export function seededRandom(seed: string): SeededRandom {
  let state = [...seed].reduce(
    (hash, letter) => Math.imul(hash ^ letter.charCodeAt(0), 0x01000193),
    0x811c9dc5,
  );
  const next = () => {
    state = (state + 0x9e3779b9) | 0;
    let mixed = Math.imul(state ^ (state >>> 16), 0x21f0aaad);
    mixed = Math.imul(mixed ^ (mixed >>> 15), 0x735a2d97);
    return ((mixed ^ (mixed >>> 15)) >>> 0) / 2 ** 32;
  };
  return {
    between: (low, high) => low + (high - low) * next(),
    chance: (probability) => next() < probability,
  };
}
