import { describe, expect, test } from 'vitest';
import { kindOf } from '../../src/photos/kind.ts';
import { avif, box, ftyp, heicWithExif, jpeg, png, tiff, webp } from './written-photos.ts';

describe('trap 2: magic bytes decide, never the name or the declared type', () => {
  test('each kind, from its first 64 bytes', async () => {
    const kinds = await Promise.all([jpeg(), png(), webp(), avif(), tiff()]);
    expect(kinds.map((bytes) => kindOf(bytes.subarray(0, 64)))).toEqual([
      'jpeg',
      'png',
      'webp',
      'avif',
      'tiff',
    ]);
  });

  test.each([
    ['what an iPhone writes', ['heic', 'mif1'], 'heic'],
    ['with a tone map beside the picture', ['heic', 'mif1', 'MiHB', 'tmap'], 'heic'],
    ['ten bits', ['heix', 'mif1'], 'heic'],
    ['any codec, then HEVC', ['mif1', 'heic'], 'heic'],
    ['any codec, then AV1', ['mif1', 'avif'], 'avif'],
    ['AV1 in a sequence', ['avis', 'avif'], 'avif'],
    ['a film', ['isom', 'mp42'], null],
    ['a film of a phone', ['qt  ', 'qt  '], null],
  ])('brands: %s', (_, brands, kind) => {
    expect(kindOf(Buffer.concat([ftyp(...brands), box('mdat')]))).toBe(kind);
  });

  test('a HEIC by content is one whatever it is called', () => {
    expect(kindOf(heicWithExif({}))).toBe('heic');
  });

  test.each([
    ['nothing', ''],
    ['one byte', '\xff'],
    ['words', 'plot 7 was flooded again'],
    ['GIF', 'GIF89a\x01\x00\x01\x00'],
    ['PDF', '%PDF-1.7\n'],
    ['SVG', '<svg xmlns="http://www.w3.org/2000/svg"/>'],
    ['a sound in the same wrapper as WebP', 'RIFF\x24\x00\x00\x00WAVEfmt '],
    ['a head that ends early', '\x00\x00\x00\x18ftyp'],
  ])('no photo: %s', (_, text) => {
    expect(kindOf(Buffer.from(text, 'latin1'))).toBeNull();
  });
});
