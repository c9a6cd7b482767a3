/** PURE. Outlines with their names out of GeoJSON (RFC 7946): WGS 84, longitude first. */
export interface NamedBoundary {
  name: string;
  /** [longitude, latitude][], not closed. */
  boundary: [number, number][];
}

export interface BoundariesFound {
  boundaries: NamedBoundary[];
  /** What could not be taken and why, a sentence each. */
  problems: string[];
}

type Json = Record<string, unknown>;
const NAMES = ['code', 'plot', 'name', 'label', 'id'];

/** `refused`: nothing of it can be used, in words. */
export function boundariesFromGeoJson(text: string): BoundariesFound | { refused: string } {
  const whole = parsed(text);
  if (!whole || typeof whole.type !== 'string')
    return { refused: 'This is not GeoJSON. Save the outlines as GeoJSON and send them again.' };
  if (foreignSystem(whole))
    return {
      refused:
        'The file names a coordinate system other than WGS 84. Save it as GeoJSON in longitude and latitude (RFC 7946) and send it again.',
    };
  const features = featuresOf(whole);
  const found: BoundariesFound = { boundaries: [], problems: [] };
  for (const [index, feature] of features.entries()) takeFeature(feature, index + 1, found);
  return found.boundaries.length + found.problems.length === 0
    ? { refused: 'The file holds no outline: each plot must be a Polygon with its code as `name` or `code`.' }
    : found;
}

function parsed(text: string): Json | null {
  try {
    const value: unknown = JSON.parse(text.replace(/^\uFEFF/, ''));
    return value !== null && typeof value === 'object' && !Array.isArray(value) ? (value as Json) : null;
  } catch {
    return null;
  }
}

/** `crs` was dropped by RFC 7946; files that still name WGS 84 by it mean the same. */
const foreignSystem = ({ crs }: Json): boolean =>
  crs !== undefined && crs !== null && !/CRS84|4326/.test(JSON.stringify(crs));

function featuresOf(whole: Json): Json[] {
  if (whole.type === 'FeatureCollection')
    return Array.isArray(whole.features)
      ? whole.features.filter((one): one is Json => !!one && typeof one === 'object')
      : [];
  return whole.type === 'Feature' ? [whole] : [{ type: 'Feature', geometry: whole, properties: {} }];
}

function takeFeature(feature: Json, number: number, { boundaries, problems }: BoundariesFound): void {
  const geometry = feature.geometry as Json | null;
  if (geometry?.type !== 'Polygon' && geometry?.type !== 'MultiPolygon') return;
  const name = nameOf(feature);
  const what = name || `Outline ${number}`;
  if (!name) return void problems.push(`${what} has no name: write the plot’s code as \`name\`.`);
  const polygons = (geometry.type === 'Polygon' ? [geometry.coordinates] : geometry.coordinates) as unknown;
  if (!Array.isArray(polygons) || polygons.length !== 1)
    return void problems.push(`${what} is in several pieces: give one outline a plot.`);
  const rings = polygons[0] as unknown;
  const boundary = Array.isArray(rings) ? ringOf(rings[0]) : null;
  const fault = boundary ? faultOf(boundary) : 'has corners that are no pairs of numbers.';
  if (fault) return void problems.push(`${what} ${fault}`);
  if ((rings as unknown[]).length > 1)
    problems.push(`${what} has a hole; its outer line is taken, with the hole’s area in it.`);
  boundaries.push({ name, boundary: boundary! });
}

function nameOf(feature: Json): string {
  const properties = (feature.properties ?? {}) as Json;
  const lower = new Map(Object.entries(properties).map(([key, value]) => [key.toLowerCase(), value]));
  const values = [...NAMES.map((key) => lower.get(key)), feature.id];
  const value = values.find((one) => typeof one === 'string' || typeof one === 'number');
  return value === undefined ? '' : String(value).trim().slice(0, 60);
}

/** Opened: the last corner, which repeats the first, is left out. */
function ringOf(ring: unknown): [number, number][] | null {
  if (!Array.isArray(ring)) return null;
  const corners = ring.map((corner) => (Array.isArray(corner) ? [corner[0], corner[1]] : []));
  if (!corners.every(([x, y]) => Number.isFinite(x) && Number.isFinite(y))) return null;
  const points = corners as [number, number][];
  const [first, last] = [points[0], points.at(-1)];
  const closed = points.length > 1 && first![0] === last![0] && first![1] === last![1];
  return closed ? points.slice(0, -1) : points;
}

/** Also for outlines that come from elsewhere: what is wrong with them, or null. */
export function faultOf(boundary: [number, number][]): string | null {
  if (boundary.length < 3) return 'has fewer than three corners.';
  if (boundary.some(([lon, lat]) => Math.abs(lon) > 180 || Math.abs(lat) > 90))
    return boundary.every(([lat, lon]) => Math.abs(lon) <= 180 && Math.abs(lat) <= 90)
      ? 'has its corners as latitude and longitude; longitude comes first.'
      : 'is not in degrees: save it in longitude and latitude (WGS 84).';
  return crossesItself(boundary) ? 'crosses itself: draw its corners in order round the plot.' : null;
}

function crossesItself(boundary: [number, number][]): boolean {
  const edge = (at: number) => [boundary[at]!, boundary[(at + 1) % boundary.length]!] as const;
  for (let one = 0; one < boundary.length; one++) {
    for (let other = one + 2; other < boundary.length; other++) {
      if (one === 0 && other === boundary.length - 1) continue;
      if (cross(...edge(one), ...edge(other))) return true;
    }
  }
  return false;
}

type Point = readonly [number, number];
const side = ([ax, ay]: Point, [bx, by]: Point, [x, y]: Point): number =>
  Math.sign((bx - ax) * (y - ay) - (by - ay) * (x - ax));
const cross = (a: Point, b: Point, c: Point, d: Point): boolean =>
  side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
