/**
 * How wrong an area is when every corner is off by so much. Variance of the shoelace area for corners that err alone:
 * s2 / 4 x sum of |P(i+1) - P(i-1)|2 (derived by us, so unconfirmed). A phone walked round a plot of 5 m x 20 m with
 * s = 3 m gives 62 % of the area: useless. Round a field of 50 m x 40 m it gives 10 %.
 */
import { above0, atLeast0, eachOf, finite } from '../check-number.ts';
import { type Fault, fault, firstFault } from '../fault.ts';
import type { Sourced } from '../source.ts';

export interface PointM {
  eastM: number;
  northM: number;
}

export interface AreaError extends Sourced {
  areaM2: number;
  /** One standard deviation. */
  sdM2: number;
  sdPercent: number;
}

/** `vertexSdM`: standard deviation of a corner along each axis. Error that all corners share shifts the plot, not its area. */
export function areaError(corners: readonly PointM[], vertexSdM: number): AreaError | Fault {
  const all = corners.flatMap(({ eastM, northM }) => [eastM, northM]);
  const wrong = firstFault(
    eachOf(all, 6, 'coordinates in m', finite),
    atLeast0(vertexSdM, 'error of a corner in m'),
  );
  if (wrong) return wrong;
  let doubled = 0;
  let squares = 0;
  for (const [index, here] of corners.entries()) {
    const next = corners[(index + 1) % corners.length]!;
    const before = corners[(index + corners.length - 1) % corners.length]!;
    doubled += here.eastM * next.northM - next.eastM * here.northM;
    squares += (next.eastM - before.eastM) ** 2 + (next.northM - before.northM) ** 2;
  }
  const areaM2 = Math.abs(doubled) / 2;
  if (areaM2 < 1e-9) return fault('the corners lie on one line');
  const sdM2 = (vertexSdM / 2) * Math.sqrt(squares);
  return {
    areaM2,
    sdM2,
    sdPercent: (100 * sdM2) / areaM2,
    source: 'error propagation, derived by us',
    unconfirmed: true,
  };
}

export function rectangleAreaError(lengthM: number, widthM: number, vertexSdM: number): AreaError | Fault {
  const wrong = firstFault(above0(lengthM, 'length in m'), above0(widthM, 'width in m'));
  if (wrong) return wrong;
  const corner = (eastM: number, northM: number): PointM => ({ eastM, northM });
  return areaError([corner(0, 0), corner(lengthM, 0), corner(lengthM, widthM), corner(0, widthM)], vertexSdM);
}
