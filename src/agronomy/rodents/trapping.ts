/** Traps, burrows, barriers. */
import { above0, wholeCount } from '../check-number.ts';
import { type Fault, fault, firstFault } from '../fault.ts';
import type { Sourced } from '../source.ts';

export interface TrapSuccess extends Sourced {
  trapNights: number;
  /** Animals for 100 trap-nights. */
  per100TrapNights: number;
}

/**
 * A sprung empty trap or one with an animal stood open for half the night on average, so half a night each is taken off
 * (Nelson & Clark 1973, from memory) when `sprung` is given; otherwise traps x nights count in full.
 */
export function trapSuccess(
  traps: number,
  nights: number,
  caught: number,
  sprung?: number,
): TrapSuccess | Fault {
  const wrong = firstFault(
    wholeCount(traps, 'traps'),
    above0(traps, 'traps'),
    wholeCount(nights, 'nights'),
    above0(nights, 'nights'),
    wholeCount(caught, 'animals caught'),
    wholeCount(sprung ?? 0, 'traps sprung'),
  );
  if (wrong) return wrong;
  const set = traps * nights;
  if (caught + (sprung ?? 0) > set)
    return fault(`${set} trap-nights cannot catch or spring ${caught + (sprung ?? 0)} times`);
  const trapNights = sprung === undefined ? set : set - (caught + sprung) / 2;
  return sprung === undefined
    ? { trapNights, per100TrapNights: (100 * caught) / trapNights, source: 'traps x nights, definition' }
    : {
        trapNights,
        per100TrapNights: (100 * caught) / trapNights,
        source: 'half a night off for each trap sprung, Nelson & Clark 1973, from memory',
        unconfirmed: true,
      };
}

/** Burrows in use: all are closed on one day, those open the next are counted (counting rule: common practice). */
export function activeBurrowsPerHa(reopened: number, areaM2: number): number | Fault {
  return (
    firstFault(wholeCount(reopened, 'burrows reopened'), above0(areaM2, 'area in m2')) ??
    (reopened * 10_000) / areaM2
  );
}

/** Area of a circle, ha. A trap barrier works over about 200 m (IRRI, who print 10 ha; the circle has 12.6). */
export function barrierReachHa(radiusM: number): number | Fault {
  return above0(radiusM, 'radius in m') ?? (Math.PI * radiusM ** 2) / 10_000;
}

export const BARRIER_RADIUS_M = 200;
