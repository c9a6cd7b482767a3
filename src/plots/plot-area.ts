/** PURE. Area of a plot in m2: from its boundary on the ellipsoid (WGS84, Karney 2013), else from its width and length. */
import geodesic from 'geographiclib-geodesic';

export interface Sized {
  /** [longitude, latitude][], not closed. */
  boundary: [number, number][] | null;
  widthM: number | null;
  lengthM: number | null;
}

/** Null where neither is known. */
export function plotAreaM2({ boundary, widthM, lengthM }: Sized): number | null {
  if (widthM && lengthM) return widthM * lengthM;
  if (!boundary || boundary.length < 3) return null;
  const polygon = geodesic.Geodesic.WGS84.Polygon(false);
  for (const [longitude, latitude] of boundary) polygon.AddPoint(latitude, longitude);
  return Math.abs(polygon.Compute(false, true).area!);
}
