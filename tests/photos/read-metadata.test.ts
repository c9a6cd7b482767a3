import fc from 'fast-check';
import sharp from 'sharp';
import { beforeAll, describe, expect, test, vi } from 'vitest';
import { facts } from '../../src/photos/examined.ts';
import { readMetadata } from '../../src/photos/read-metadata.ts';
import { fieldGps, fieldLatitude, fieldLongitude, fieldTime, tag } from './written-exif.ts';
import { avif, endlessHeic, fieldPhoto, heicWithExif, jpeg, pngWith, webp } from './written-photos.ts';

const read = async (bytes: Uint8Array) => facts(await readMetadata(bytes));
const field = { exif: fieldTime, gps: fieldGps };
const inTheField = { status: 'valid', latitude: fieldLatitude, longitude: fieldLongitude, source: 'exif' };
const onTheWalk = {
  status: 'ok',
  wall: '2026-07-14T06:31:07',
  offset: '+08:00',
  utc: '2026-07-13T22:31:07Z',
};

describe('trap 6: each kind gives the same place and time, by one route or the other', () => {
  test.each<[string, () => Promise<Buffer> | Buffer]>([
    ['JPEG', fieldPhoto],
    ['PNG, chunk eXIf', () => pngWith('eXIf', field)],
    ['PNG, older text chunk', () => pngWith('zTXt', field)],
    ['WebP, which exifr alone refuses', webp],
    ['AVIF', avif],
    ['HEIC', () => heicWithExif(field)],
  ])('%s', async (_, bytes) => {
    const { position, time } = await read(await bytes());
    expect(position).toMatchObject(inTheField);
    expect(time).toMatchObject(onTheWalk);
  });

  test('a photo without any of it', async () => {
    expect(await read(await jpeg())).toMatchObject({
      position: { status: 'absent' },
      time: { status: 'absent' },
    });
  });
});

test('trap 3: strings come as they are written, blanks and all', async () => {
  const blank = {
    [tag.dateTimeOriginal]: { ascii: '    :  :     :  :  ' },
    [tag.offsetTimeOriginal]: { ascii: '   :  ' },
  };
  const { exif } = await readMetadata(
    await jpeg({ exif: { ...blank, [tag.createDate]: { ascii: '2026:02:30 10:00:00' } } }),
  );
  expect(exif).toMatchObject({
    DateTimeOriginal: '    :  :     :  :  ',
    OffsetTimeOriginal: '   :  ',
    CreateDate: '2026:02:30 10:00:00',
  });
});

describe('trap 4: what phones write where the position was taken out', () => {
  const zero: [number, number][] = [
    [0, 1],
    [0, 1],
    [0, 1],
  ];
  const none: [number, number][] = [
    [0, 0],
    [0, 0],
    [0, 0],
  ];
  const gps = (rationals: [number, number][], north = '', east = '') => ({
    [tag.latitudeRef]: { ascii: north, bytes: 2 },
    [tag.latitude]: { rationals },
    [tag.longitudeRef]: { ascii: east, bytes: 2 },
    [tag.longitude]: { rationals },
  });
  test.each([
    ['blank refs and zeros', gps(zero), 'removed'],
    ['blank refs and 0/0', gps(none), 'invalid'],
    ['refs and zeros', gps(zero, 'N', 'E'), 'null-island'],
  ])('%s', async (_, tags, status) => {
    const { position, positionWords } = await read(await jpeg({ gps: tags }));
    expect(position).toMatchObject({ status, latitude: null, longitude: null });
    expect(positionWords).toMatch(
      status === 'null-island' ? /no position yet/ : /phone took the position out/,
    );
  });
  test('a position needs no words', async () => {
    expect((await read(await fieldPhoto())).positionWords).toBeNull();
  });
});

test('one tag of an unknown type does not hide the others', async () => {
  const { position, time } = await read(
    await jpeg({
      exif: { 33434: { nonsense: 0 }, ...fieldTime },
      gps: { ...fieldGps, [tag.altitudeRef]: { nonsense: 99 } },
    }),
  );
  expect(position).toMatchObject(inTheField);
  expect(time).toMatchObject(onTheWalk);
});

test('XMP is read where EXIF gives nothing', async () => {
  const xmp = `<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#"><rdf:Description xmlns:e="http://ns.adobe.com/exif/1.0/" e:GPSLatitude="14,10.2N"><e:GPSLongitude>121,15.06E</e:GPSLongitude><e:DateTimeOriginal>2026-07-14T06:31:07+08:00</e:DateTimeOriginal></rdf:Description></rdf:RDF></x:xmpmeta>`;
  for (const bytes of [
    await jpeg(null, xmp),
    await sharp(await jpeg())
      .withXmp(xmp)
      .webp()
      .toBuffer(),
  ]) {
    expect(await read(bytes)).toMatchObject({
      position: { ...inTheField, source: 'xmp', exif_status: 'absent' },
      time: onTheWalk,
    });
  }
});

describe('cut files keep what did arrive', () => {
  test('a JPEG cut in its picture', async () => {
    const whole = await fieldPhoto();
    expect((await read(whole.subarray(0, whole.length - 200))).position).toMatchObject(inTheField);
  });
  test('a HEIC cut in the last of its tags', async () => {
    const whole = heicWithExif({ gps: fieldGps });
    expect((await read(whole.subarray(0, whole.length - 8))).position.latitude).toBe(fieldLatitude);
  });
  test('a JPEG whose block of tags claims more than there is', async () => {
    const whole = Buffer.from(await fieldPhoto());
    whole.writeUInt16BE(0xf000, 4);
    expect((await read(whole)).position.status).toBe('absent');
  });
});

describe('whatever the bytes, an answer', () => {
  // exifr grumbles on the console about some of the changed files; its words are no part of the answer.
  beforeAll(() => {
    vi.spyOn(console, 'warn').mockImplementation(() => {});
  });

  test('trap 1: the file that makes a reader stand still is not even given to it', async () => {
    expect(await read(endlessHeic())).toMatchObject({
      position: { status: 'absent' },
      time: { status: 'absent' },
    });
  });

  test('a tag that claims three thousand million values is not believed, the others are', async () => {
    const bytes = Buffer.from(await fieldPhoto());
    const longitude = bytes.indexOf(Buffer.from('0400050003000000', 'hex'));
    bytes.writeUInt32LE(0xbb000003, longitude + 4);
    const { position, time } = await read(bytes);
    expect(position).toMatchObject({ status: 'invalid', altitude_m: 21 });
    expect(time).toMatchObject(onTheWalk);
  });

  test('random bytes behind each kind of head', { timeout: 60_000 }, async () => {
    const heads = [
      [0xff, 0xd8, 0xff, 0xe1],
      [0x49, 0x49, 0x2a, 0],
      [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a],
      [],
    ];
    await fc.assert(
      fc.asyncProperty(fc.constantFrom(...heads), fc.uint8Array({ maxLength: 200 }), async (head, body) => {
        expect((await read(Uint8Array.from([...head, ...body]))).position).toBeDefined();
      }),
      { numRuns: 60 },
    );
  });

  test('good files with bytes changed', { timeout: 60_000 }, async () => {
    const wholes = [await fieldPhoto(), await pngWith('zTXt', field), heicWithExif(field)];
    const changes = fc.array(fc.tuple(fc.nat(400), fc.nat(255)), { minLength: 1, maxLength: 6 });
    await fc.assert(
      fc.asyncProperty(fc.constantFrom(...wholes), changes, async (whole, changed) => {
        const bytes = Buffer.from(whole);
        for (const [at, value] of changed) bytes[at % bytes.length] = value;
        expect((await read(bytes)).time).toBeDefined();
      }),
      { numRuns: 120 },
    );
  });
});
