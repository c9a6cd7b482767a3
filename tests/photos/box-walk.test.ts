import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { walkBoxes } from '../../src/photos/box-walk.ts';
import { box, endlessHeic, ftyp, heicWithExif } from './written-photos.ts';

const head = ftyp('heic', 'mif1');
const noLength = Buffer.from('\0\0\0\0free', 'latin1');
const long = (size: bigint, body: Buffer): Buffer => {
  const start = Buffer.from('\0\0\0\x01mdat\0\0\0\0\0\0\0\0', 'latin1');
  start.writeBigUInt64BE(size, 8);
  return Buffer.concat([start, body]);
};
const full = Buffer.from([0, 0, 0, 0]);

describe('trap 1: a file that makes a reader loop for ever is found before anything reads it', () => {
  test.each([
    ['a file type, then a box of no length (80 bytes)', endlessHeic(), 'stands-still'],
    ['inside the metadata', Buffer.concat([head, box('meta', full, noLength)]), 'stands-still'],
    [
      'inside the list of items',
      Buffer.concat([head, box('meta', full, box('iinf', full, Buffer.from([0, 1]), noLength))]),
      'stands-still',
    ],
    [
      'picture data to the end of the file, but inside another box',
      Buffer.concat([head, box('meta', full, Buffer.from('\0\0\0\0mdat', 'latin1'))]),
      'stands-still',
    ],
    [
      'shorter than its own head',
      Buffer.concat([head, Buffer.from('\0\0\0\x04free', 'latin1')]),
      'malformed',
    ],
    ['a long length of nothing', Buffer.concat([head, long(0n, Buffer.alloc(8))]), 'stands-still'],
    [
      'a box inside that is larger than the box around it',
      Buffer.concat([
        head,
        box('meta', full, Buffer.from('\0\0\x10\0hdlr', 'latin1')),
        box('free', Buffer.alloc(8192)),
      ]),
      'cut',
    ],
  ])('%s', (_, bytes, fault) => {
    expect(walkBoxes(bytes)).toMatchObject({ sound: false, fault });
  });
});

describe('trap 7: a cut file is found, although a decoder would make two thirds of a picture of it', () => {
  const whole = heicWithExif({});
  test('the whole file is sound', () => expect(walkBoxes(whole)).toEqual({ sound: true }));
  test('every cut of it is found', () => {
    for (let length = 1; length < whole.length; length++) {
      // Behind the file type alone a box ends, and nothing has been promised yet.
      const isWholeBoxes = length === head.length;
      expect(walkBoxes(whole.subarray(0, length)).sound, `cut to ${length}`).toBe(isWholeBoxes);
    }
  });
});

test.each([
  [
    'picture data that says: to the end of the file',
    Buffer.concat([head, box('meta', full), Buffer.from('\0\0\0\0mdat12345', 'latin1')]),
  ],
  ['a long length', Buffer.concat([head, long(24n, Buffer.alloc(8))])],
  [
    'boxes that nobody knows',
    Buffer.concat([head, box('abcd', Buffer.alloc(3)), box('uuid', Buffer.alloc(16))]),
  ],
])('sound: %s', (_, bytes) => expect(walkBoxes(bytes)).toEqual({ sound: true }));

describe('whatever the bytes', () => {
  test('random ones end in a verdict', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 400 }), (bytes) => {
        expect(typeof walkBoxes(bytes).sound).toBe('boolean');
      }),
    );
  });
  test('good ones with bytes changed end in a verdict', () => {
    const whole = heicWithExif({});
    fc.assert(
      fc.property(fc.array(fc.tuple(fc.nat(whole.length - 1), fc.nat(255)), { maxLength: 8 }), (changes) => {
        const bytes = Buffer.from(whole);
        for (const [at, value] of changes) bytes[at] = value;
        expect(typeof walkBoxes(bytes).sound).toBe('boolean');
      }),
    );
  });
  test('a deep nest and a long row end too', () => {
    let nest: Buffer = box('meta', full);
    for (let depth = 0; depth < 2000; depth++) nest = box('meta', full, nest);
    expect(walkBoxes(nest).sound).toBe(true);
    expect(walkBoxes(Buffer.concat(Array.from({ length: 20_000 }, () => box('free')))).sound).toBe(true);
  });
});
