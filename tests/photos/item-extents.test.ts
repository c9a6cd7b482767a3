import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { walkBoxes } from '../../src/photos/box-walk.ts';
import { itemPastTheEnd } from '../../src/photos/item-extents.ts';
import { avif, box, ftyp } from './written-photos.ts';

/** An iloc box in version 0 with 4-byte offsets and lengths, one extent an item. */
const iloc = (...items: [offset: number, length: number][]): Buffer =>
  box(
    'iloc',
    Buffer.from([0, 0, 0, 0, 0x44, 0x00, 0, items.length]),
    ...items.map(([offset, length], n) => {
      const place = Buffer.alloc(14);
      place.writeUInt16BE(n + 1, 0);
      place.writeUInt16BE(1, 4);
      place.writeUInt32BE(offset, 6);
      place.writeUInt32BE(length, 10);
      return place;
    }),
  );
const heic = (places: Buffer, data: Buffer): Buffer =>
  Buffer.concat([ftyp('heic', 'mif1'), box('meta', Buffer.alloc(4), places), data]);
const openEnded = Buffer.concat([Buffer.from('\0\0\0\0mdat', 'latin1'), Buffer.alloc(100)]);

describe('trap 7: a cut that boxes alone do not show', () => {
  const size = heic(iloc([0, 0]), openEnded).length;

  test('items that lie within the file', () => {
    expect(walkBoxes(heic(iloc([size - 100, 100]), openEnded))).toEqual({ sound: true });
  });
  test.each<[string, [number, number]]>([
    ['one byte past the end, behind data whose length is left open', [size - 100, 101]],
    ['beginning past the end', [size + 1, 0]],
    ['so long that the sum runs over', [0xffff_ffff, 0xffff_ffff]],
  ])('%s', (_, place) => {
    expect(walkBoxes(heic(iloc(place), openEnded))).toMatchObject({
      sound: false,
      fault: 'cut',
      words: expect.stringContaining('past the end'),
    });
  });
  test('the second of two', () => {
    expect(walkBoxes(heic(iloc([10, 5], [10, 5000]), openEnded))).toMatchObject({ fault: 'cut' });
  });
  test('the list itself is cut', () => {
    const list = Buffer.from(iloc([10, 5]).subarray(8, 20));
    expect(itemPastTheEnd(viewOf(list), 0, list.length)).toMatch(/cut/);
  });
});

test('what a real encoder writes is in order', async () => {
  expect(walkBoxes(await avif())).toEqual({ sound: true });
});

test('extents that take no bytes, 65,535 an item: no work without end', () => {
  const list = Buffer.concat([Buffer.from([0, 0, 0, 0, 0, 0, 0xff, 0xff]), Buffer.alloc(6 * 65_535, 0xff)]);
  for (let at = 8; at < list.length; at += 6) list.writeUInt16BE(0, at + 2);
  expect(itemPastTheEnd(viewOf(list), 0, list.length)).toBeNull();
});

test('whatever the bytes: words or null', () => {
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 200 }), (bytes) => {
      const found = itemPastTheEnd(viewOf(bytes), 0, bytes.length);
      expect(found === null || found.length > 0).toBe(true);
    }),
  );
});

const viewOf = (bytes: Uint8Array): DataView =>
  new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
