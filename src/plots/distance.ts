import geodesic from 'geographiclib-geodesic';

export interface Position {
  latitude: number;
  longitude: number;
}

/** PURE. Metres between two positions along the ellipsoid (WGS84, Karney 2013). */
export const distanceM = (from: Position, to: Position): number =>
  geodesic.Geodesic.WGS84.Inverse(from.latitude, from.longitude, to.latitude, to.longitude).s12!;
