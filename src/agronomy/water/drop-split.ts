/** A fall of ponded water taken apart: what the crop used and what went through the soil or the bund. */
import { above0, atLeast0, finite } from '../check-number.ts';
import { type Fault, fault, firstFault } from '../fault.ts';

export interface WaterDrop {
  /** Ponded depths above the soil: a fall below the surface is not one in mm of water. */
  startMm: number;
  endMm: number;
  days: number;
  /** In between. */
  rainMm?: number;
  irrigationMm?: number;
  cropUseMmPerDay: number;
}

export interface DropSplit {
  /** The fall, with what came in counted. */
  totalMm: number;
  cropUseMm: number;
  /** Seepage and percolation; below 0 when the crop use was set too high or water came in unseen. */
  lossMm: number;
  lossMmPerDay: number;
}

export function dropSplit(drop: WaterDrop): DropSplit | Fault {
  const { startMm, endMm, days, rainMm = 0, irrigationMm = 0, cropUseMmPerDay } = drop;
  const wrong = firstFault(
    finite(startMm, 'depth at the start in mm'),
    finite(endMm, 'depth at the end in mm'),
    above0(days, 'days between the readings'),
    atLeast0(rainMm, 'rain in mm'),
    atLeast0(irrigationMm, 'irrigation in mm'),
    atLeast0(cropUseMmPerDay, 'crop use in mm a day'),
  );
  if (wrong) return wrong;
  if (startMm < 0 || endMm < 0)
    return fault(
      'both depths must stand above the soil: under it the level falls faster than the water lost',
    );
  const totalMm = startMm - endMm + rainMm + irrigationMm;
  const cropUseMm = cropUseMmPerDay * days;
  const lossMm = totalMm - cropUseMm;
  return { totalMm, cropUseMm, lossMm, lossMmPerDay: lossMm / days };
}
