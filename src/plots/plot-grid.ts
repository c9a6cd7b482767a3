/** PURE. A block of equal plots laid out from one corner: geodesics on WGS84 (Karney 2013, J. Geodesy 87:43-55). */
import geodesic from 'geographiclib-geodesic';
import { plotFromCorner } from './plot-from-corner.ts';

export interface Grid {
  /** The near left corner of the first plot. */
  latitude: number;
  longitude: number;
  /** Direction of the plots' length, clockwise from north; columns run to the right of it. */
  bearingDeg: number;
  rows: number;
  columns: number;
  widthM: number;
  lengthM: number;
  /** Bare strip between two plots side by side, and between two rows. */
  betweenColumnsM: number;
  betweenRowsM: number;
  /** `back and forth`: every second row is numbered the other way, as it is walked. */
  order: 'always from the left' | 'back and forth';
}

export interface GridPlot {
  /** From 1, row by row away from the corner. */
  row: number;
  column: number;
  /** [longitude, latitude][], clockwise from the near left corner. */
  boundary: [number, number][];
}

/** In the order in which the plots are numbered. */
export function plotGrid(grid: Grid): GridPlot[] {
  return Array.from({ length: grid.rows * grid.columns }, (_, index) => {
    const row = Math.floor(index / grid.columns);
    const place = index % grid.columns;
    const turned = grid.order === 'back and forth' && row % 2 === 1;
    const column = turned ? grid.columns - 1 - place : place;
    return { row: row + 1, column: column + 1, boundary: boundaryAt(grid, row, column) };
  });
}

function boundaryAt(grid: Grid, row: number, column: number): [number, number][] {
  const { latitude, longitude, bearingDeg, widthM, lengthM } = grid;
  const ahead = direct(latitude, longitude, bearingDeg, row * (lengthM + grid.betweenRowsM));
  const corner = direct(...ahead, bearingDeg + 90, column * (widthM + grid.betweenColumnsM));
  return plotFromCorner({ latitude: corner[0], longitude: corner[1], bearingDeg }, { widthM, lengthM });
}

function direct(
  latitude: number,
  longitude: number,
  bearingDeg: number,
  metres: number,
): [latitude: number, longitude: number] {
  const { lat2, lon2 } = geodesic.Geodesic.WGS84.Direct(latitude, longitude, bearingDeg, metres);
  return [lat2!, lon2!];
}
