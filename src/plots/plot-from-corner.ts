import geodesic from 'geographiclib-geodesic';

/**
 * Corners of a plot, [longitude, latitude][], clockwise from the near left one. `bearingDeg` is the direction of the
 * plot's length, clockwise from north; the width runs to the right of it. Geodesics on WGS84 (Karney 2013,
 * J. Geodesy 87:43-55); seven decimals, about a centimetre.
 */
export function plotFromCorner(
  corner: { latitude: number; longitude: number; bearingDeg: number },
  { widthM, lengthM }: { widthM: number; lengthM: number },
): [number, number][] {
  const { latitude, longitude, bearingDeg } = corner;
  const near: [number, number] = [longitude, latitude];
  const far = step(near, bearingDeg, lengthM);
  return [near, far, step(far, bearingDeg + 90, widthM), step(near, bearingDeg + 90, widthM)].map(
    ([lon, lat]) => [round(lon), round(lat)],
  );
}

const step = (
  [longitude, latitude]: [number, number],
  bearingDeg: number,
  metres: number,
): [number, number] => {
  const there = geodesic.Geodesic.WGS84.Direct(latitude, longitude, bearingDeg, metres);
  return [there.lon2!, there.lat2!];
};

const round = (degrees: number): number => Number(degrees.toFixed(7));
