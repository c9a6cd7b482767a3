import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type HearContext, hear } from '../../../src/reading/hear/hear.ts';
import { KNOWN_MISHEARINGS } from '../../../src/reading/hear/known-mishearings.ts';
import { NO_FARM_WORDS } from '../../../src/reading/record.ts';
import { tokenise } from '../../../src/reading/text.ts';

const dictated: HearContext = {
  channel: 'dictated',
  plots: [{ code: 'B2', names: ['the late strip'] }],
  farmWords: NO_FARM_WORDS,
};
const typed: HearContext = { ...dictated, channel: 'typed' };
const lowers = (text: string, context = dictated) =>
  hear(tokenise(text), context).tokens.map((token) => token.lower);

describe("a farm's own words", () => {
  const farmWords = {
    mishearings: [{ said: 'lamb pang', meant: 'lampang' }],
    people: ['Titus Rodgers'],
    varieties: ['Armworm Gold'],
  };

  test('two words said for one meant become one token over both', () => {
    const { tokens, heard } = hear(tokenise('the lamb pang is ripe'), { ...dictated, farmWords });
    expect(tokens.map((token) => token.lower)).toEqual(['the', 'lampang', 'is', 'ripe']);
    expect(heard).toEqual([
      { said: 'lamb pang', meant: 'lampang', why: "among this farm's own words", start: 4, end: 13 },
    ]);
  });

  test('people and varieties are not taken for trade words', () => {
    expect(lowers('armworm leaves are cut by larvae')).toContain('armyworm');
    expect(hear(tokenise('armworm leaves are cut by larvae'), { ...dictated, farmWords }).heard).toEqual([]);
  });
});

describe('evidence', () => {
  test('names the sound and the words around', () => {
    const { heard } = hear(tokenise('the bond is leaking'), dictated);
    expect(heard[0]?.why).toBe('sounds like "bund" (PNT / PNT), near "leaking"');
  });

  test('names the words that fix the place of a small one', () => {
    const { heard } = hear(tokenise('leaf color is for, no urea'), dictated);
    expect(heard[0]).toMatchObject({ said: 'for', meant: 'four' });
    expect(heard[0]?.why).toContain('in "is for"');
  });
});

describe('typed notes', () => {
  test.each([
    ['tillerng ok in T2', 'tillering'],
    ['some leptocloa at the inlet', 'leptochloa'],
    ['t3r2 topdresed yest', 'topdressed'],
    ['brown planthoper 8 a hill', 'planthopper'],
    ['herbicde on monday', 'herbicide'],
    ['seedligns float', 'seedlings'],
  ])('%s', (note, meant) => {
    expect(lowers(note, typed)).toContain(meant);
  });

  test.each([
    'the bond is leaking',
    'logging after the storm',
    'boating on Sunday, pudding for lunch',
    'rouged lips, weeping willow, bolting horses, a legion of lodgers',
    'he is hooting, looting and rooting; the levers and lovers',
    'puddles and paddles, a racoon, welding',
  ])('plain English stays: %s', (note) => {
    expect(hear(tokenise(note), typed).heard).toEqual([]);
  });
});

describe('any note', () => {
  const words = KNOWN_MISHEARINGS.flatMap(({ said, near = 'field' }) => [
    ...said.split('|'),
    ...near.split(' '),
  ]);
  const note = fc
    .array(
      fc.oneof(
        fc.constantFrom(...words),
        fc.constantFrom('.', ',', '-', 'B2', '15', 'no', "can't"),
        fc.string(),
      ),
      {
        maxLength: 30,
      },
    )
    .map((parts) => parts.join(' '));
  const context = fc.constantFrom(dictated, typed);

  test('offsets stay inside the text and in order, indexes count up, changes quote the note', () => {
    fc.assert(
      fc.property(note, context, (text, given) => {
        const { tokens, heard } = hear(tokenise(text), given);
        tokens.forEach((token, at) => {
          expect(token.index).toBe(at);
          expect(token.start).toBeGreaterThanOrEqual(tokens[at - 1]?.start ?? 0);
          expect(token.end).toBeGreaterThan(token.start);
          expect(token.end).toBeLessThanOrEqual(text.length);
        });
        for (const { said, start, end } of heard)
          expect(text.slice(start, end).replace(/\s+/g, ' ')).toBe(said);
      }),
    );
  });

  test('hearing twice is hearing once', () => {
    fc.assert(
      fc.property(note, context, (text, given) => {
        const once = hear(tokenise(text), given);
        const twice = hear(once.tokens, given);
        expect(twice.heard).toEqual([]);
        expect(twice.tokens).toEqual(once.tokens);
      }),
    );
  });

  test('figures, products and negations stand', () => {
    const fixed = [
      'fifteen',
      'fifty',
      '15',
      'can',
      "can't",
      'not',
      'butachlor',
      'pretilachlor',
      'without',
      'B2',
    ];
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...fixed, ...words)), (parts) => {
        const text = parts.join(' ');
        const after = lowers(text);
        for (const word of fixed)
          expect(after.filter((one) => one === word.toLowerCase()).length).toBe(
            tokenise(text).filter((token) => token.lower === word.toLowerCase()).length,
          );
      }),
    );
  });

  test('hostile lengths end', { timeout: 60_000 }, () => {
    for (const piece of ['bond leaking ', 'a', 'b p h ', 'leaf fold and ', '- ', 'lud vigia flower '])
      expect(() => hear(tokenise(piece.repeat(1000)), dictated)).not.toThrow();
  });

  test('a text far longer than any note is heard to its end', { timeout: 60_000 }, () => {
    const { tokens } = hear(tokenise(`the bond is leaking ${'. '.repeat(150_000)}`), dictated);
    expect(tokens.length).toBe(150_004);
    expect(tokens[1]?.lower).toBe('bund');
  });
});
