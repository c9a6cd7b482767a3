import type { Point } from './blade.ts';

/** Metres on the ground: `x` to the right, `y` away from the person, `z` up from the soil. */
export interface Place {
  x: number;
  y: number;
  z: number;
}

/** A phone held at breast height by somebody who stands on the bund and looks along the rows. */
const EYE_M = 1.55;
const PITCH = 0.4;
const FOCAL_PX = 640;

export const HORIZON_PX = 300 - FOCAL_PX * Math.tan(PITCH);

export const distanceM = ({ y, z }: Place): number => y * Math.cos(PITCH) + (EYE_M - z) * Math.sin(PITCH);

export function onPicture(place: Place): Point {
  const distance = distanceM(place);
  const up = (place.z - EYE_M) * Math.cos(PITCH) + place.y * Math.sin(PITCH);
  return { x: 400 + (FOCAL_PX * place.x) / distance, y: 300 - (FOCAL_PX * up) / distance };
}

export const pxPerM = (place: Place): number => FOCAL_PX / distanceM(place);

/** A polygon through places on the ground. */
export const groundPath = (places: Place[]): string =>
  `M${places
    .map(onPicture)
    .map(({ x, y }) => `${x.toFixed(1)},${y.toFixed(1)}`)
    .join('L')}Z`;
