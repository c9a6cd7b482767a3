import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { positionFact } from '../../src/photos/position-fact.ts';
import type { GpsTags } from '../../src/photos/raw-tags.ts';

const north = {
  GPSLatitudeRef: 'N',
  GPSLatitude: [14, 10, 12],
  GPSLongitudeRef: 'E',
  GPSLongitude: [121, 15, 3.6],
};
const of = (gps: GpsTags, xmp: string | null = null) => positionFact({ exif: {}, gps, xmp });
const packet = (fields: string): string =>
  `<x:xmpmeta><rdf:Description xmlns:exif="http://ns.adobe.com/exif/1.0/" ${fields}/></x:xmpmeta>`;

describe('trap 4: finite, in range, with both refs, and not exactly 0, 0', () => {
  test.each<[string, GpsTags, string]>([
    ['north and east', north, 'valid'],
    ['nothing written', {}, 'absent'],
    ['an empty block', { GPSAltitude: 12 }, 'absent'],
    [
      'an object of undefined values is no position',
      {
        GPSLatitude: undefined,
        GPSLongitude: undefined,
        GPSLatitudeRef: undefined,
        GPSLongitudeRef: undefined,
      },
      'invalid',
    ],
    ['0/0', { ...north, GPSLatitude: [Number.NaN, Number.NaN, Number.NaN] }, 'invalid'],
    ['seconds of 0/0', { ...north, GPSLatitude: [14, 10.2, Number.NaN] }, 'invalid'],
    ['1/0', { ...north, GPSLongitude: [Number.POSITIVE_INFINITY, 0, 0] }, 'invalid'],
    ['95 degrees north', { ...north, GPSLatitude: [95, 30, 0] }, 'invalid'],
    ['181 degrees east', { ...north, GPSLongitude: [181, 0, 0] }, 'invalid'],
    ['latitude alone', { GPSLatitude: [14, 10, 12], GPSLatitudeRef: 'N' }, 'invalid'],
    ['no refs', { GPSLatitude: [14, 10, 12], GPSLongitude: [121, 15, 3.6] }, 'ambiguous-no-ref'],
    ['one ref', { ...north, GPSLongitudeRef: undefined }, 'ambiguous-no-ref'],
    ['a ref that is none', { ...north, GPSLatitudeRef: 'E' }, 'ambiguous-no-ref'],
    ['0, 0 with refs: no fix', { ...north, GPSLatitude: [0, 0, 0], GPSLongitude: [0, 0, 0] }, 'null-island'],
    [
      '0, 0 with blank refs: the phone removed it',
      {
        GPSLatitudeRef: undefined,
        GPSLatitude: [0, 0, 0],
        GPSLongitudeRef: undefined,
        GPSLongitude: [0, 0, 0],
      },
      'removed',
    ],
    ['on the equator', { ...north, GPSLatitude: [0, 0, 0] }, 'valid'],
    ['one number instead of three', { ...north, GPSLatitude: 14.17 }, 'valid'],
    ['text', { ...north, GPSLatitude: '14 10 12' }, 'valid'],
    ['words', { ...north, GPSLatitude: 'unknown' }, 'invalid'],
  ])('%s', (_, gps, status) => {
    const fact = of(gps);
    expect(fact.status).toBe(status);
    expect(fact.latitude === null, 'a position only where it is valid').toBe(status !== 'valid');
  });

  test.each([
    ['N', 'E', 14.17, 121.251],
    ['S', 'E', -14.17, 121.251],
    ['N', 'W', 14.17, -121.251],
    ['s', 'w', -14.17, -121.251],
  ])('%s %s', (latitudeRef, longitudeRef, latitude, longitude) => {
    expect(of({ ...north, GPSLatitudeRef: latitudeRef, GPSLongitudeRef: longitudeRef })).toMatchObject({
      latitude,
      longitude,
    });
  });

  test('decimal commas with commas between: 52 degrees 50 minutes 34.0118 seconds', () => {
    expect(of({ ...north, GPSLatitude: '52,00000,50,00000,34,01180' }).latitude).toBe(52.8427811);
  });

  test.each<[string, GpsTags, object]>([
    ['above', { GPSAltitude: 21, GPSAltitudeRef: new Uint8Array([0]) }, { altitude_m: 21 }],
    ['below the sea', { GPSAltitude: 2.8093, GPSAltitudeRef: new Uint8Array([1]) }, { altitude_m: -2.809 }],
    [
      'an overflow',
      { GPSAltitude: 4294967284, GPSAltitudeRef: new Uint8Array([0]) },
      { altitude_m: null, altitude_status: 'implausible' },
    ],
    [
      'deeper than any shore',
      { GPSAltitude: 600, GPSAltitudeRef: new Uint8Array([1]) },
      { altitude_m: null, altitude_status: 'implausible' },
    ],
  ])('altitude: %s', (_, gps, want) => expect(of({ ...north, ...gps })).toMatchObject(want));

  test('altitude: none where none is written, or 0/0', () => {
    expect(of(north)).not.toHaveProperty('altitude_m');
    expect(of({ ...north, GPSAltitude: Number.NaN })).not.toHaveProperty('altitude_m');
  });

  test('accuracy and direction, where they are numbers', () => {
    expect(
      of({ ...north, GPSHPositioningError: 4.79, GPSImgDirection: 174.1, GPSImgDirectionRef: 'T' }),
    ).toMatchObject({ accuracy_m: 4.79, direction_deg: 174.1, direction_ref: 'T' });
    expect(of({ ...north, GPSHPositioningError: Number.NaN, GPSImgDirection: 400 })).toMatchObject({
      accuracy_m: null,
      direction_deg: null,
      direction_ref: null,
    });
  });

  test.each([
    ['degrees and minutes', 'exif:GPSLatitude="14,10.2S" exif:GPSLongitude="121,15.06E"', -14.17, 121.251],
    [
      'degrees, minutes, seconds',
      'exif:GPSLatitude="14,10,12N" exif:GPSLongitude="121,15,3.6W"',
      14.17,
      -121.251,
    ],
    ['plain numbers with a sign', 'exif:GPSLatitude="-14.17" exif:GPSLongitude="121.251"', -14.17, 121.251],
  ])('XMP where EXIF gives nothing: %s', (_, fields, latitude, longitude) => {
    expect(of({}, packet(fields))).toMatchObject({
      status: 'valid',
      source: 'xmp',
      exif_status: 'absent',
      latitude,
      longitude,
    });
  });

  test('fractions in XMP without N and E stay ambiguous', () => {
    expect(
      of({}, packet('exif:GPSLatitude="14/1 10/1 12/1" exif:GPSLongitude="121/1 15/1 36/10"')).status,
    ).toBe('ambiguous-no-ref');
  });

  test('EXIF that is usable wins over XMP; EXIF that is not says so', () => {
    const xmp = packet('exif:GPSLatitude="1,0N" exif:GPSLongitude="2,0E"');
    expect(of(north, xmp)).toMatchObject({ source: 'exif', latitude: 14.17 });
    expect(of({ ...north, GPSLatitude: [Number.NaN] }, xmp)).toMatchObject({
      source: 'xmp',
      exif_status: 'invalid',
      latitude: 1,
    });
  });
});

test('whatever stands in the tags: no throw, and valid means in range', () => {
  const anything = fc.oneof(
    fc.double(),
    fc.string(),
    fc.array(fc.oneof(fc.double(), fc.integer()), { maxLength: 5 }),
    fc.constant(undefined),
    fc.constantFrom('N', 'S', 'E', 'W'),
    fc.uint8Array({ maxLength: 3 }),
    fc.object(),
  );
  const names = [
    'GPSLatitudeRef',
    'GPSLatitude',
    'GPSLongitudeRef',
    'GPSLongitude',
    'GPSAltitudeRef',
    'GPSAltitude',
    'GPSImgDirection',
    'GPSImgDirectionRef',
    'GPSHPositioningError',
  ];
  fc.assert(
    fc.property(
      fc.dictionary(fc.constantFrom(...names), anything),
      fc.option(fc.string({ maxLength: 300 })),
      (gps, xmp) => {
        const fact = positionFact({ exif: {}, gps, xmp });
        if (fact.status === 'valid')
          expect(Math.abs(fact.latitude!) <= 90 && Math.abs(fact.longitude!) <= 180).toBe(true);
        else expect(fact.latitude).toBeNull();
      },
    ),
  );
});
