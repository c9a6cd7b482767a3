import { describe, expect, test } from 'vitest';
import { placeFit } from '../../src/followups/match.ts';

describe('two places', () => {
  test.each([
    ['north bund', 'north bund', '', 'same'],
    ['north bund', 'along the north bund', '', 'same'],
    ['North Bund', 'along the north bund by the gate', '', 'same'],
    ['north bund', 'south bund', '', 'other'],
    ['north bund', 'north corner', '', 'other'],
    ['north bund', undefined, '', 'unsaid'],
    ['north bund', undefined, 'weeded along the north bund yesterday', 'same'],
    ['north bund', undefined, 'weeded the south bund', 'unsaid'],
    [undefined, 'north bund', 'north bund', 'unsaid'],
    [undefined, undefined, 'anywhere', 'unsaid'],
  ])('%s and %s, with the words "%s", are %s', (a, b, words, expected) => {
    expect(placeFit(a, b, words)).toBe(expected);
  });
});
