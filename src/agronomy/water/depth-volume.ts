/** 1 mm on 1 m2 is 1 litre; on 1 ha it is 10 m3. */
import { above0, atLeast0 } from '../check-number.ts';
import { type Fault, firstFault } from '../fault.ts';

export function volumeFromDepthM3(depthMm: number, areaM2: number): number | Fault {
  return (
    firstFault(atLeast0(depthMm, 'depth in mm'), above0(areaM2, 'area in m2')) ?? (depthMm * areaM2) / 1000
  );
}

export function depthFromVolumeMm(volumeM3: number, areaM2: number): number | Fault {
  return (
    firstFault(atLeast0(volumeM3, 'volume in m3'), above0(areaM2, 'area in m2')) ?? (1000 * volumeM3) / areaM2
  );
}

/** How long an inlet runs for a depth, hours. */
export function inflowHours(depthMm: number, areaM2: number, flowLPerS: number): number | Fault {
  const wrong = firstFault(
    atLeast0(depthMm, 'depth in mm'),
    above0(areaM2, 'area in m2'),
    above0(flowLPerS, 'flow in litres a second'),
  );
  return wrong ?? (depthMm * areaM2) / flowLPerS / 3600;
}
