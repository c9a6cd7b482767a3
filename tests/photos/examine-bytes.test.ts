import { describe, expect, test } from 'vitest';
import { examineBytes } from '../../src/photos/examine-bytes.ts';
import { fieldGps, fieldTime } from './written-exif.ts';
import {
  avif,
  box,
  checksum,
  endlessHeic,
  fieldPhoto,
  ftyp,
  heicWithExif,
  jpeg,
  picture,
  png,
  pngWith,
  tiff,
  webp,
} from './written-photos.ts';

const intake = async (bytes: Uint8Array) => (await examineBytes(bytes)).ingest;
const accept = { decision: 'accept', reason: '' };
const reject = (reason: string) => ({ decision: 'reject', reason });

test.each([
  ['jpeg', jpeg],
  ['png', png],
  ['webp', webp],
  ['avif', avif],
  ['tiff', tiff],
])('%s is taken in', async (kind, written) => {
  expect(await examineBytes(await written())).toMatchObject({ kind, ingest: accept, width: 48, height: 32 });
});

test.each<[string, Uint8Array, string]>([
  ['nothing', Buffer.alloc(0), 'empty-file'],
  ['words', Buffer.from('plot 7 was flooded again'), 'not-a-supported-image'],
  ['a GIF', Buffer.from('GIF89a\x01\0\x01\0\0\0\0;', 'latin1'), 'not-a-supported-image'],
  [
    'a film',
    Buffer.concat([ftyp('isom', 'mp42'), box('moov'), box('mdat', Buffer.alloc(40))]),
    'not-a-supported-image',
  ],
  ['a HEIC without a picture', heicWithExif({}), 'truncated-or-corrupt'],
])('refused: %s', async (_, bytes, reason) => {
  expect(await intake(bytes)).toEqual(reject(reason));
});

test('trap 1: the file that makes a reader stand still is refused, and nothing is read from it', async () => {
  expect(await examineBytes(endlessHeic())).toMatchObject({
    ingest: reject('truncated-or-corrupt'),
    width: null,
    position: { status: 'absent' },
  });
});

test('trap 5: a photo whose position the phone took out has none, and nothing is put in its place', async () => {
  const { position, time } = await examineBytes(await jpeg({ exif: fieldTime }));
  expect(position).toMatchObject({ status: 'absent', latitude: null, longitude: null, source: null });
  expect(time).toMatchObject({ status: 'ok', offset: null, utc: null });
});

describe('trap 7: a cut ISO media file is refused by its boxes, and still says where it was taken', () => {
  test('HEIC', async () => {
    const whole = heicWithExif({ exif: fieldTime, gps: fieldGps });
    const cut = await examineBytes(whole.subarray(0, whole.length - 4));
    expect(cut).toMatchObject({
      kind: 'heic',
      ingest: reject('truncated-or-corrupt'),
      position: { status: 'valid' },
    });
  });
  test('AVIF', async () => {
    const whole = await avif();
    expect(await intake(whole.subarray(0, whole.length - 1))).toEqual(reject('truncated-or-corrupt'));
  });
});

describe('trap 8: errors refuse a photo, warnings do not, and there is a limit of pixels', () => {
  test('stray bytes between two segments of a JPEG are a warning', async () => {
    const whole = await fieldPhoto();
    const tables = whole.indexOf(Buffer.from([0xff, 0xdb]));
    const strewn = Buffer.concat([whole.subarray(0, tables), Buffer.alloc(3), whole.subarray(tables)]);
    expect(await intake(strewn)).toEqual(accept);
  });
  test('a picture that ends early is an error', async () => {
    const whole = await picture(400, 300).jpeg({ quality: 95 }).toBuffer();
    expect(await intake(whole.subarray(0, Math.round(whole.length * 0.7)))).toEqual(
      reject('truncated-or-corrupt'),
    );
  });
  test.each([
    ['16384 by 16384 is one row too many', 0x4000, 0x4000],
    ['a side of three million, which only a damaged head claims', 3_538_992, 32],
  ])('%s', async (_, width, height) => {
    const giant = await png();
    giant.writeUInt32BE(width, 16);
    giant.writeUInt32BE(height, 20);
    expect(await intake(withHeaderChecksum(giant))).toEqual(reject('too-many-pixels'));
  });
});

describe('trap 9: what an aborted upload leaves is refused, at whatever byte it stopped', () => {
  test.each<[string, () => Promise<Buffer>]>([
    ['JPEG', fieldPhoto],
    ['PNG', () => pngWith('eXIf', { gps: fieldGps })],
    ['WebP', webp],
    ['AVIF', avif],
  ])('%s', { timeout: 60_000 }, async (_, written) => {
    const whole = await written();
    for (const share of [0.02, 0.2, 0.5, 0.8, 0.95]) {
      const { decision } = await intake(whole.subarray(0, Math.floor(whole.length * share)));
      expect(decision, `${share} of it`).toBe('reject');
    }
  });
});

function withHeaderChecksum(bytes: Buffer): Buffer {
  const fixed = Buffer.from(bytes);
  fixed.writeUInt32BE(checksum(fixed.subarray(12, 29)), 29);
  return fixed;
}
