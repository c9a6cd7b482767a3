/** PURE. Which plot a position may lie in, with its error: a share for each, never a verdict. */
import geodesic from 'geographiclib-geodesic';

export interface PlotOutline {
  code: string;
  /** [longitude, latitude][], not closed. */
  boundary: [number, number][];
}

export interface Fix {
  latitude: number;
  longitude: number;
  /** Radius that holds the true place 95 times in 100, as browsers give it (W3C Geolocation); null where it is not told. */
  accuracyM: number | null;
}

export interface LikelyPlot {
  code: string;
  /** 0 to 1; those of all plots together make 1. */
  share: number;
}

/** Typical of phones under open sky, 95 % (GPS.gov figure by way of a secondary page: about 5 m). Doubled where the phone says nothing. */
const UNTOLD_ACCURACY_M = 10;
/** A circle that holds 95 % of a round normal error has 2.4477 times its standard deviation: sqrt(-2 ln 0.05). */
const SIGMAS_IN_95 = Math.sqrt(-2 * Math.log(0.05));
const SMALLEST_SHARE = 0.03;

/**
 * Each plot's share of the error circle, weighted by how likely the walker was there at that time (`prior`, 1 where
 * nothing is known). Plots below 3 % are left out; empty where the position lies far from every plot.
 */
export function likelyPlots(
  fix: Fix,
  plots: PlotOutline[],
  prior: (code: string) => number = () => 1,
): LikelyPlot[] {
  const sigma = Math.max(fix.accuracyM ?? UNTOLD_ACCURACY_M, 1) / SIGMAS_IN_95;
  const masses = plots.map(({ code, boundary }) => ({
    code,
    mass: prior(code) * massInside(toMetres(fix, boundary), sigma),
  }));
  const total = masses.reduce((sum, { mass }) => sum + mass, 0);
  if (total < 1e-4) return [];
  const shares = masses
    .map(({ code, mass }) => ({ code, share: mass / total }))
    .filter(({ share }) => share >= SMALLEST_SHARE)
    .sort((a, b) => b.share - a.share);
  const kept = shares.reduce((sum, { share }) => sum + share, 0);
  return shares.map(({ code, share }) => ({ code, share: share / kept }));
}

/** Whether a position may settle the plot by itself: nearly all of the circle in one plot, and the plot wider than the error. */
export function positionSettles(
  likely: LikelyPlot[],
  fix: Fix,
  narrowestM: (code: string) => number | null,
): string | null {
  const [first] = likely;
  if (!first || first.share < 0.95) return null;
  const narrow = narrowestM(first.code);
  return narrow !== null && narrow > 2 * (fix.accuracyM ?? UNTOLD_ACCURACY_M) ? first.code : null;
}

/** `B2 (about 70 %) or B3`. */
export function sayLikely(likely: LikelyPlot[]): string {
  const [first, second] = likely;
  if (!first) return 'No plot near by.';
  const percent = Math.round(first.share * 20) * 5;
  return second
    ? `${first.code} (about ${percent} %) or ${second.code}`
    : `${first.code} (about ${Math.min(percent, 95)} %)`;
}

/** Corners in metres east and north of the fix. */
function toMetres(fix: Fix, boundary: [number, number][]): [number, number][] {
  return boundary.map(([longitude, latitude]) => {
    const { s12, azi1 } = geodesic.Geodesic.WGS84.Inverse(fix.latitude, fix.longitude, latitude, longitude);
    const azimuth = (azi1! * Math.PI) / 180;
    return [s12! * Math.sin(azimuth), s12! * Math.cos(azimuth)];
  });
}

/** Mass of a round normal distribution about the origin inside a polygon, by adding up a grid of some 40 by 40 cells. */
function massInside(corners: [number, number][], sigma: number): number {
  const reach = 4 * sigma;
  const [left, right] = bounds(
    corners.map(([x]) => x),
    reach,
  );
  const [low, high] = bounds(
    corners.map(([, y]) => y),
    reach,
  );
  if (left >= right || low >= high) return 0;
  const [dx, dy] = [(right - left) / 40, (high - low) / 40];
  let mass = 0;
  for (let i = 0; i < 40; i++) {
    for (let j = 0; j < 40; j++) {
      const [x, y] = [left + (i + 0.5) * dx, low + (j + 0.5) * dy];
      if (inside(x, y, corners)) mass += Math.exp(-(x * x + y * y) / (2 * sigma * sigma));
    }
  }
  return (mass * dx * dy) / (2 * Math.PI * sigma * sigma);
}

const bounds = (values: number[], reach: number): [number, number] => [
  Math.max(Math.min(...values), -reach),
  Math.min(Math.max(...values), reach),
];

function inside(x: number, y: number, corners: [number, number][]): boolean {
  let within = false;
  for (const [at, [x1, y1]] of corners.entries()) {
    const [x2, y2] = corners[(at + 1) % corners.length]!;
    if (y1 > y !== y2 > y && x < ((x2 - x1) * (y - y1)) / (y2 - y1) + x1) within = !within;
  }
  return within;
}
