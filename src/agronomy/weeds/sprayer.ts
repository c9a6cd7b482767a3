/** Knapsack calibration with clean water. L/ha = 600 x flow in L/min over swath in m and pace in km/h. */
import { above0, atLeast0 } from '../check-number.ts';
import { type Fault, firstFault } from '../fault.ts';

/** Pace over a measured course. */
export function paceKmPerH(metres: number, seconds: number): number | Fault {
  return firstFault(above0(metres, 'course in m'), above0(seconds, 'time in s')) ?? (3.6 * metres) / seconds;
}

export function sprayVolumeLPerHa(flowLPerMin: number, swathM: number, kmPerH: number): number | Fault {
  const wrong = firstFault(
    above0(flowLPerMin, 'flow in L/min'),
    above0(swathM, 'swath in m'),
    above0(kmPerH, 'pace in km/h'),
  );
  return wrong ?? (600 * flowLPerMin) / (swathM * kmPerH);
}

/** m2 sprayed in a minute. */
export function sprayedM2PerMin(swathM: number, kmPerH: number): number | Fault {
  return (
    firstFault(above0(swathM, 'swath in m'), above0(kmPerH, 'pace in km/h')) ?? (swathM * kmPerH * 1000) / 60
  );
}

/** From a strip sprayed by the clock. */
export function volumeFromStripLPerHa(flowLPerMin: number, stripM2: number, seconds: number): number | Fault {
  const wrong = firstFault(
    above0(flowLPerMin, 'flow in L/min'),
    above0(stripM2, 'strip in m2'),
    above0(seconds, 'time in s'),
  );
  return wrong ?? (10_000 * flowLPerMin * (seconds / 60)) / stripM2;
}

/** Litres that should be gone after a strip. */
export function litresOnStrip(stripM2: number, lPerHa: number): number | Fault {
  return (
    firstFault(above0(stripM2, 'strip in m2'), atLeast0(lPerHa, 'volume in L/ha')) ??
    (stripM2 * lPerHa) / 10_000
  );
}
