import { describe, expect, test } from 'vitest';
import { hear } from '../../../src/reading/hear/hear.ts';
import { NO_FARM_WORDS } from '../../../src/reading/record.ts';
import { tokenise } from '../../../src/reading/text.ts';

describe("a farm's own words", () => {
  test('two words said for one meant become one token over both', () => {
    const farmWords = { ...NO_FARM_WORDS, mishearings: [{ said: 'bee see', meant: 'basmati' }] };
    const { tokens, heard } = hear(tokenise('the bee see is ripe'), {
      channel: 'dictated',
      plots: [],
      farmWords,
    });
    expect(tokens.map((token) => token.lower)).toEqual(['the', 'basmati', 'is', 'ripe']);
    expect(heard).toEqual([
      { said: 'bee see', meant: 'basmati', why: "among this farm's own words", start: 4, end: 11 },
    ]);
  });
});
