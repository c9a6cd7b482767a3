import geodesic from 'geographiclib-geodesic';
import { Temporal } from 'temporal-polyfill';
import { describe, expect, test } from 'vitest';
import { readSeason } from '../../sample-notes/read-season.ts';

const { farm, season, people, crews, varieties, fields, plots } = readSeason();
const trial = plots.filter(({ treatment }) => treatment);

describe('the sample season hangs together', () => {
  test('plot codes and the places in the walk are each given once', () => {
    expect(new Set(plots.map(({ code }) => code)).size).toBe(plots.length);
    expect(plots.map(({ walk }) => walk)).toEqual(plots.map((_, index) => index + 1));
    expect(fields.map(({ code }) => code)).toEqual([...new Set(plots.map(({ field }) => field))]);
  });

  test('no name stands for two plots', () => {
    const names = plots.flatMap(({ code, names }) =>
      [code, ...(names ?? [])].map((name) => name.toLowerCase()),
    );
    expect(new Set(names).size).toBe(names.length);
  });

  test('crews are led by people of the farm, crops are of its varieties', () => {
    for (const { leader } of crews) expect(people.map(({ name }) => name)).toContain(leader);
    for (const { crop } of plots)
      expect(varieties).toContainEqual({ name: crop.variety, daysToMaturity: crop.daysToMaturity });
  });

  test.each(plots)('$code: sown, planted and ripe within the season, in that order', ({ crop }) => {
    const days = [season.from, crop.sown, ...(crop.planted ? [crop.planted] : []), season.today];
    expect(days).toEqual([...days].sort());
    const ripe = Temporal.PlainDate.from(crop.sown).add({ days: crop.daysToMaturity }).toString();
    expect(ripe <= season.to && ripe > season.today).toBe(true);
    if (crop.establishment === 'transplanted')
      expect(daysBetween(crop.sown, crop.planted!)).toBeOneOf([21, 22, 23, 26]);
    else expect(crop.planted).toBeUndefined();
  });

  test('replicates were planted on different days, a few days apart', () => {
    const planted = [1, 2, 3].map((block) => [...new Set(ofBlock(block).map(({ crop }) => crop.planted!))]);
    expect(planted.every((days) => days.length === 1)).toBe(true);
    expect(new Set(planted.flat()).size).toBe(3);
    expect(daysBetween(planted[0]![0]!, planted[2]![0]!)).toBeLessThanOrEqual(7);
  });

  test('each block holds every treatment once, in an order of its own', () => {
    const orders = [1, 2, 3].map((block) => ofBlock(block).map(({ treatment }) => JSON.stringify(treatment)));
    for (const order of orders) expect([...order].sort()).toEqual([...orders[0]!].sort());
    for (const order of orders) expect(new Set(order).size).toBe(4);
    expect(new Set(orders.map((order) => order.join())).size).toBe(3);
  });

  test('what the protocol wants is written beside each plot that it holds for', () => {
    for (const { treatment, protocol } of trial) {
      if (treatment!.nitrogen === '0N') expect(protocol?.[0]).toMatch(/meant to be yellow/);
      if (treatment!.weeding === 'none') expect(protocol?.[0]).toMatch(/meant to be weedy/);
      if (treatment!.water === 'safe AWD') expect(protocol?.[0]).toMatch(/15 cm/);
    }
  });
});

describe('the sample plots lie as they are said to', () => {
  test.each(plots)('$code: boundary and size agree within 1 %', ({ boundary, size }) => {
    const areaM2 = size.widthM * size.lengthM;
    expect(Math.abs(measured(boundary).area - areaM2)).toBeLessThan(areaM2 / 100);
    expect(measured(boundary).perimeter).toBeCloseTo(2 * (size.widthM + size.lengthM), 0);
  });

  test.each(plots)(
    '$code: the boundary starts at the corner and its length runs along the bearing',
    (plot) => {
      const [corner, far] = plot.boundary;
      expect(corner).toEqual([plot.corner.longitude, plot.corner.latitude]);
      const side = geodesic.Geodesic.WGS84.Inverse(corner![1], corner![0], far![1], far![0]);
      expect(side.s12).toBeCloseTo(plot.size.lengthM, 1);
      expect(Math.abs(side.azi1! - plot.corner.bearingDeg)).toBeLessThan(0.2);
    },
  );

  test('no plot overlaps another', () => {
    const inFrame = plots.map(({ code, boundary }) => ({ code, corners: boundary.map(alongAndAcross) }));
    for (const a of inFrame)
      for (const b of inFrame) {
        if (a.code >= b.code) continue;
        const apart = ([0, 1] as const).some(
          (axis) =>
            Math.max(...a.corners.map((at) => at[axis])) < Math.min(...b.corners.map((at) => at[axis])) ||
            Math.max(...b.corners.map((at) => at[axis])) < Math.min(...a.corners.map((at) => at[axis])),
        );
        expect(apart, `${a.code} and ${b.code}`).toBe(true);
      }
  });

  test('the time zone exists and keeps the hours of the longitude', () => {
    const offset = Temporal.PlainDate.from(season.today).toZonedDateTime(farm.timeZone).offset;
    expect(Math.abs(Number.parseInt(offset, 10) - farm.longitude / 15)).toBeLessThan(1);
  });
});

const ofBlock = (block: number) => trial.filter(({ replicate }) => replicate === block);
const daysBetween = (from: string, to: string) => Temporal.PlainDate.from(from).until(to).days;

function measured(boundary: [number, number][]) {
  const polygon = geodesic.Geodesic.WGS84.Polygon(false);
  for (const [longitude, latitude] of boundary) polygon.AddPoint(latitude, longitude);
  return polygon.Compute(true, true) as { area: number; perimeter: number };
}

/** Metres along and across the common bearing, from the farm's own corner. */
function alongAndAcross([longitude, latitude]: [number, number]): [number, number] {
  const away = geodesic.Geodesic.WGS84.Inverse(farm.latitude, farm.longitude, latitude, longitude);
  const turned = ((away.azi1! - plots[0]!.corner.bearingDeg) * Math.PI) / 180;
  return [away.s12! * Math.cos(turned), away.s12! * Math.sin(turned)];
}
