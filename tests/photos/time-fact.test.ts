import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { ExifTags, GpsTags } from '../../src/photos/raw-tags.ts';
import { timeFact } from '../../src/photos/time-fact.ts';

const of = (exif: ExifTags, gps: GpsTags = {}, xmp: string | null = null) => timeFact({ exif, gps, xmp });
const walk = { DateTimeOriginal: '2026:07:14 06:31:07' };
const gpsAt = (date: string, ...clock: number[]): GpsTags => ({ GPSDateStamp: date, GPSTimeStamp: clock });
const packet = (fields: string): string =>
  `<rdf:Description xmlns:exif="http://ns.adobe.com/exif/1.0/" xmlns:xmp="http://ns.adobe.com/xap/1.0/" xmlns:photoshop="http://ns.adobe.com/photoshop/1.0/" ${fields}/>`;

describe('trap 3: raw strings, wall time and offset apart, no UTC where the offset is not known', () => {
  test('a wall time alone', () => {
    expect(of(walk)).toEqual({
      status: 'ok',
      wall: '2026-07-14T06:31:07',
      source: 'ExifIFD:DateTimeOriginal',
      offset: null,
      offset_source: null,
      utc: null,
      flags: [],
    });
  });

  test('the answer does not depend on the zone of the server', () => {
    const zone = process.env.TZ;
    const answers = ['UTC', 'Asia/Manila', 'America/Chicago'].map((tz) => {
      process.env.TZ = tz;
      return of({ DateTimeOriginal: '2026:03:08 02:30:00', OffsetTimeOriginal: '+08:00' });
    });
    process.env.TZ = zone ?? '';
    if (zone === undefined) delete process.env.TZ;
    expect(answers[0]).toMatchObject({ wall: '2026-03-08T02:30:00', utc: '2026-03-07T18:30:00Z' });
    expect(answers[1]).toEqual(answers[0]);
    expect(answers[2]).toEqual(answers[0]);
  });

  test.each<[string, ExifTags, GpsTags, string | null, string | null]>([
    [
      'in the string',
      { DateTimeOriginal: '2026:07:14 06:31:07+08:00', OffsetTimeOriginal: '+07:00' },
      {},
      '+08:00',
      'ExifIFD:DateTimeOriginal (inline)',
    ],
    [
      'its own tag',
      { ...walk, OffsetTimeOriginal: '+08:00' },
      gpsAt('2026:07:13', 23, 31, 5),
      '+08:00',
      'ExifIFD:OffsetTimeOriginal',
    ],
    [
      'the tag of CreateDate goes with CreateDate',
      { CreateDate: '2026:07:14 06:31:07', OffsetTimeOriginal: '+09:00', OffsetTimeDigitized: '+08:00' },
      {},
      '+08:00',
      'ExifIFD:OffsetTimeDigitized',
    ],
    [
      'GPS, to the quarter of an hour',
      walk,
      gpsAt('2026:07:13', 22, 33, 50),
      '+08:00',
      'inferred from GPS UTC',
    ],
    [
      'GPS in a zone of three quarters',
      { DateTimeOriginal: '2026:07:14 06:31:07' },
      gpsAt('2026:07:14', 0, 46, 0),
      '+05:45',
      'inferred from GPS UTC',
    ],
    ['OffsetTime belongs to the edit', { ...walk, OffsetTime: '+08:00' }, {}, null, null],
    ['blanks are no offset', { ...walk, OffsetTimeOriginal: '   :  ' }, {}, null, null],
    ['no place keeps +23:00', { ...walk, OffsetTimeOriginal: '+23:00' }, {}, null, null],
    ['GPS an old fix, seven minutes off', walk, gpsAt('2026:07:13', 22, 38, 30), null, null],
    ['GPS of another day', walk, gpsAt('2026:07:11', 22, 31, 5), null, null],
    ['GPS without its date', walk, { GPSTimeStamp: [22, 31, 5] }, null, null],
    ['GPS of 0/0', walk, gpsAt('2026:07:13', Number.NaN, Number.NaN, Number.NaN), null, null],
  ])('offset: %s', (_, exif, gps, offset, source) => {
    expect(of(exif, gps)).toMatchObject({ status: 'ok', offset, offset_source: source });
    if (offset === null) expect(of(exif, gps).utc).toBeNull();
  });

  test.each([
    '0000:00:00 00:00:00',
    '    :  :     :  :  ',
    '2026:02:30 10:00:00',
    '2026:13:01 10:00:00',
    '2026:07:14 24:10:00',
    '2026:07:14',
    'yesterday',
    '',
  ])("no date: '%s'", (written) => {
    expect(of({ DateTimeOriginal: written })).toMatchObject({
      status: 'invalid',
      wall: null,
      utc: null,
      flags: [`ExifIFD:DateTimeOriginal: unusable value '${written}'`],
    });
  });

  test('an unusable date gives way to the next', () => {
    expect(of({ DateTimeOriginal: '0000:00:00 00:00:00', CreateDate: '2026:07:14 06:31:07' })).toMatchObject({
      status: 'ok',
      source: 'ExifIFD:CreateDate',
      flags: ["ExifIFD:DateTimeOriginal: unusable value '0000:00:00 00:00:00'"],
    });
  });

  test('a leap day is a date', () => {
    expect(of({ DateTimeOriginal: '2024:02:29 23:59:59' }).wall).toBe('2024-02-29T23:59:59');
    expect(of({ DateTimeOriginal: '2025:02:29 23:59:59' }).status).toBe('invalid');
  });

  test('fractions stay as they are written and do not shift the second', () => {
    expect(of({ ...walk, SubSecTimeOriginal: '075', OffsetTimeOriginal: '+08:00' })).toMatchObject({
      wall: '2026-07-14T06:31:07.075',
      utc: '2026-07-13T22:31:07Z',
    });
    expect(of({ ...walk, SubSecTimeOriginal: 'x' }).wall).toBe('2026-07-14T06:31:07');
  });

  test('another zone in OffsetTime is told', () => {
    expect(of({ ...walk, OffsetTimeOriginal: '+08:00', OffsetTime: '+02:00' }).flags).toEqual([
      'OffsetTime +02:00 differs from OffsetTimeOriginal +08:00 (edit zone)',
    ]);
  });

  test.each([
    [
      'its own date first',
      'xmp:CreateDate="2026-07-14T09:00:00" photoshop:DateCreated="2026-07-14T08:00:00" exif:DateTimeOriginal="2026-07-14T07:00:00+08:00"',
      'XMP-exif:DateTimeOriginal',
      '2026-07-13T23:00:00Z',
    ],
    [
      'then the one of the picture',
      'xmp:CreateDate="2026-07-14T09:00:00" photoshop:DateCreated="2026-07-14T08:00:00Z"',
      'XMP-photoshop:DateCreated',
      '2026-07-14T08:00:00Z',
    ],
    ['then the one of the file', 'xmp:CreateDate="2026-07-14T09:00"', 'XMP-xmp:CreateDate', null],
  ])('XMP: %s', (_, fields, source, utc) => {
    expect(of({}, {}, packet(fields))).toMatchObject({ status: 'ok', source, utc });
  });
});

test('whatever stands in the tags: no throw, and UTC exactly where there is an offset', () => {
  const value = fc.oneof(
    fc.string(),
    fc.constantFrom('2026:07:14 06:31:07', '+08:00', '2026:07:13'),
    fc.integer(),
    fc.array(fc.double(), { maxLength: 4 }),
    fc.constant(undefined),
  );
  const exif = fc.dictionary(
    fc.constantFrom(
      'DateTimeOriginal',
      'CreateDate',
      'OffsetTime',
      'OffsetTimeOriginal',
      'OffsetTimeDigitized',
      'SubSecTimeOriginal',
    ),
    value,
  );
  const gps = fc.dictionary(fc.constantFrom('GPSDateStamp', 'GPSTimeStamp'), value);
  fc.assert(
    fc.property(exif, gps, fc.option(fc.string({ maxLength: 200 })), (exifTags, gpsTags, xmp) => {
      const fact = timeFact({ exif: exifTags, gps: gpsTags, xmp });
      expect(fact.utc === null).toBe(fact.offset === null);
      expect(fact.wall === null).toBe(fact.status !== 'ok');
    }),
  );
});
