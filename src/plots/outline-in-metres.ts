/** PURE. Plot boundaries laid on a flat plan in metres. */
import geodesic from 'geographiclib-geodesic';

export interface Outlined {
  code: string;
  /** [longitude, latitude][] */
  boundary: [number, number][] | null;
  widthM: number | null;
  lengthM: number | null;
}

export interface Outline {
  /** Corners by plot code: x east, y south, metres from the north-west corner of the plan. */
  shapes: Map<string, [number, number][]>;
  widthM: number;
  heightM: number;
  /** False where the plots are laid side by side because not all boundaries are known. */
  known: boolean;
  /** The place of a point on the plan; null where it lies outside it, or where no boundaries are known. */
  at(longitude: number, latitude: number): [number, number] | null;
}

const MARGIN_M = 2;

export function outlineInMetres(plots: Outlined[]): Outline {
  const drawn = plots.filter((plot) => plot.boundary && plot.boundary.length >= 3);
  if (drawn.length < plots.length || plots.length === 0) return frame(inRows(plots), null);
  const flat = flatAround(drawn.flatMap((plot) => plot.boundary!));
  return frame(new Map(drawn.map((plot) => [plot.code, plot.boundary!.map(flat)])), flat);
}

type Flat = (corner: [longitude: number, latitude: number]) => [number, number];

/** Distances from the middle along the parallel and the meridian (WGS84); exact enough over a few kilometres. */
function flatAround(corners: [number, number][]): Flat {
  const lon0 = mean(corners.map(([lon]) => lon));
  const lat0 = mean(corners.map(([, lat]) => lat));
  const earth = geodesic.Geodesic.WGS84;
  const perDegreeEast = earth.Inverse(lat0, lon0 - 0.005, lat0, lon0 + 0.005).s12! * 100;
  const perDegreeNorth = earth.Inverse(lat0 - 0.005, lon0, lat0 + 0.005, lon0).s12! * 100;
  return ([lon, lat]) => [(lon - lon0) * perDegreeEast, (lat0 - lat) * perDegreeNorth];
}

/** No boundaries: equal rows in walking order, each plot at its own size. */
function inRows(plots: Outlined[]): Map<string, [number, number][]> {
  const perRow = Math.max(1, Math.ceil(Math.sqrt(plots.length)));
  const width = Math.max(...plots.map((plot) => plot.widthM ?? 5), 5);
  const length = Math.max(...plots.map((plot) => plot.lengthM ?? 5), 5);
  return new Map(
    plots.map((plot, index) => {
      const x = (index % perRow) * (width + 1);
      const y = Math.floor(index / perRow) * (length + 1);
      const [w, l] = [plot.widthM ?? width, plot.lengthM ?? length];
      return [
        plot.code,
        [
          [x, y],
          [x + w, y],
          [x + w, y + l],
          [x, y + l],
        ],
      ];
    }),
  );
}

function frame(shapes: Map<string, [number, number][]>, flat: Flat | null): Outline {
  const known = flat !== null;
  const corners = [...shapes.values()].flat();
  if (corners.length === 0) return { shapes, widthM: 0, heightM: 0, known, at: () => null };
  const left = Math.min(...corners.map(([x]) => x)) - MARGIN_M;
  const top = Math.min(...corners.map(([, y]) => y)) - MARGIN_M;
  const widthM = Math.max(...corners.map(([x]) => x)) + MARGIN_M - left;
  const heightM = Math.max(...corners.map(([, y]) => y)) + MARGIN_M - top;
  const moved = [...shapes].map(([code, shape]): [string, [number, number][]] => [
    code,
    shape.map(([x, y]): [number, number] => [round(x - left), round(y - top)]),
  ]);
  const at = (longitude: number, latitude: number): [number, number] | null => {
    const [x, y] = flat ? flat([longitude, latitude]) : [Number.NaN, Number.NaN];
    const inside = x >= left && y >= top && x <= left + widthM && y <= top + heightM;
    return inside ? [round(x - left), round(y - top)] : null;
  };
  return { shapes: new Map(moved), widthM: round(widthM), heightM: round(heightM), known, at };
}

const mean = (values: number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;
const round = (metres: number): number => Math.round(metres * 100) / 100;
