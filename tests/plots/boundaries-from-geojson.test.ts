import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boundariesFromGeoJson } from '../../src/plots/boundaries-from-geojson.ts';

const SQUARE = [
  [120.72, 15.51],
  [120.721, 15.51],
  [120.721, 15.511],
  [120.72, 15.511],
  [120.72, 15.51],
];
const feature = (properties: object, coordinates: unknown = [SQUARE], type = 'Polygon') => ({
  type: 'Feature',
  properties,
  geometry: { type, coordinates },
});
const read = (value: unknown) => boundariesFromGeoJson(JSON.stringify(value));
const collection = (...features: object[]) => read({ type: 'FeatureCollection', features });

describe('Outlines out of GeoJSON', () => {
  test.each([
    ['code', { code: 'E1', name: 'other' }, 'E1'],
    ['plot', { plot: 'E2' }, 'E2'],
    ['NAME in capitals', { NAME: ' E3 ' }, 'E3'],
    ['a number', { id: 14 }, '14'],
  ])('are named by %s', (_how, properties, name) => {
    const found = collection(feature(properties));
    expect(found).toMatchObject({ problems: [], boundaries: [{ name }] });
  });

  test('are opened: the repeated last corner is left out', () => {
    const found = read(feature({ name: 'E1' }));
    expect('boundaries' in found && found.boundaries[0]!.boundary).toEqual(SQUARE.slice(0, 4));
  });

  test.each([
    ['several pieces', feature({ name: 'E1' }, [[SQUARE], [SQUARE]], 'MultiPolygon'), /several pieces/],
    ['no name', feature({}), /Outline 1 has no name/],
    ['two corners', feature({ name: 'E1' }, [SQUARE.slice(0, 2)]), /fewer than three corners/],
    ['metres', feature({ name: 'E1' }, [SQUARE.map(([x, y]) => [x! * 3000, y! * 1e5])]), /not in degrees/],
    ['latitude first', feature({ name: 'E1' }, [SQUARE.map(([x, y]) => [y, x])]), /longitude comes first/],
    ['a bow tie', feature({ name: 'E1' }, [[SQUARE[0], SQUARE[2], SQUARE[1], SQUARE[3]]]), /crosses itself/],
    ['words for numbers', feature({ name: 'E1' }, [[['a', 'b']]]), /no pairs of numbers/],
  ])('are refused with %s, in words', (_what, one, words) => {
    const found = collection(one);
    expect(found).toMatchObject({ boundaries: [] });
    expect('problems' in found && found.problems.join()).toMatch(words);
  });

  test('other features are passed by; one bad outline leaves the good ones', () => {
    const point = { type: 'Feature', properties: {}, geometry: { type: 'Point', coordinates: [120, 15] } };
    const found = collection(point, feature({}), feature({ name: 'E2' }));
    expect(found).toMatchObject({
      boundaries: [{ name: 'E2' }],
      problems: [expect.stringMatching(/Outline 2 has no name/)],
    });
  });

  test.each([
    ['no JSON', 'plots, with, commas', /not GeoJSON/],
    ['a list', '[1, 2]', /not GeoJSON/],
    [
      'another system',
      JSON.stringify({
        type: 'FeatureCollection',
        crs: { properties: { name: 'EPSG:32651' } },
        features: [],
      }),
      /other than WGS 84/,
    ],
    ['nothing in it', '{"type":"FeatureCollection","features":[]}', /no outline/],
  ])('a file with %s is refused whole', (_what, text, words) => {
    const found = boundariesFromGeoJson(text);
    expect('refused' in found && found.refused).toMatch(words);
  });

  test('nothing that is JSON makes it throw', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        boundariesFromGeoJson(JSON.stringify(value));
        boundariesFromGeoJson(JSON.stringify({ type: 'FeatureCollection', features: [value] }));
        boundariesFromGeoJson(JSON.stringify(feature({ name: 'E1' }, value)));
      }),
      { numRuns: 200 },
    );
  });
});
