/**
 * Prints corner and boundary of each plot for pasting into season.yaml: the trial is three blocks of four plots,
 * laid end to end and numbered to and fro as they are walked; the seed fields lie to the west of it.
 * Run with `npx tsx sample-notes/lay-out-plots.ts`.
 */
import geodesic from 'geographiclib-geodesic';

const FARM_CORNER = { latitude: 15.5107, longitude: 120.7203 };
/** Direction of the long side, clockwise from north; the width runs at right angles, to the right of it. */
const BEARING_DEG = 12;
const PLOT = { widthM: 5, lengthM: 20 };
const BUND_M = 0.6;
const CHANNEL_M = 1.5;

interface Place {
  code: string;
  acrossM: number;
  alongM: number;
  widthM: number;
  lengthM: number;
}

const trialPlots: Place[] = Array.from({ length: 12 }, (_, index) => {
  const block = Math.floor(index / 4);
  const column = block % 2 === 0 ? index % 4 : 3 - (index % 4);
  return {
    code: `E${index + 1}`,
    acrossM: column * (PLOT.widthM + BUND_M),
    alongM: block * (PLOT.lengthM + CHANNEL_M),
    ...PLOT,
  };
});
const seedFields: Place[] = [
  { code: 'W1', acrossM: -26, alongM: 0, widthM: 24, lengthM: 30 },
  { code: 'W2', acrossM: -26, alongM: 31.5, widthM: 24, lengthM: 31.5 },
];

for (const place of [...trialPlots, ...seedFields]) {
  const corner = cornerOf(place);
  const boundary = boundaryOf(corner, place).map(([longitude, latitude]) => `[${longitude}, ${latitude}]`);
  console.log(`  - code: ${place.code}`);
  console.log(
    `    corner: { latitude: ${corner.latitude.toFixed(7)}, longitude: ${corner.longitude.toFixed(7)}, bearingDeg: ${BEARING_DEG} }`,
  );
  console.log(`    boundary: [${boundary.join(', ')}]`);
}

function cornerOf({ acrossM, alongM }: Place) {
  return step(step(FARM_CORNER, BEARING_DEG, alongM), BEARING_DEG + 90, acrossM);
}

/** The four corners, clockwise from the plot's own corner: [longitude, latitude] to 7 decimals (about 1 cm). */
function boundaryOf(corner: typeof FARM_CORNER, { widthM, lengthM }: Place): [string, string][] {
  const farLeft = step(corner, BEARING_DEG, lengthM);
  const farRight = step(farLeft, BEARING_DEG + 90, widthM);
  const nearRight = step(corner, BEARING_DEG + 90, widthM);
  return [corner, farLeft, farRight, nearRight].map((point) => [
    point.longitude.toFixed(7),
    point.latitude.toFixed(7),
  ]);
}

function step(from: typeof FARM_CORNER, azimuthDeg: number, distanceM: number): typeof FARM_CORNER {
  const there = geodesic.Geodesic.WGS84.Direct(from.latitude, from.longitude, azimuthDeg, distanceM);
  return { latitude: there.lat2!, longitude: there.lon2! };
}
