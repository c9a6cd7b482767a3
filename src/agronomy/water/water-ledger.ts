/** Ponded depth carried from day to day: what came in, what the crop used, what was lost, what ran over. */
import { atLeast0, finite } from '../check-number.ts';
import { type Fault, fault, firstFault } from '../fault.ts';

export interface WaterDay {
  on: string;
  irrigationMm?: number;
  rainMm?: number;
  cropUseMm: number;
  /** Seepage and percolation. */
  lossMm: number;
  /** Let out on purpose. */
  drainedMm?: number;
}

export interface WaterDayClosed {
  on: string;
  /** At the end of the day; below 0 the soil is short by so much, which is not the level in a tube. */
  depthMm: number;
  /** Over the spill level. */
  ranOverMm: number;
}

export interface WaterLedger {
  days: WaterDayClosed[];
  totals: {
    irrigationMm: number;
    rainMm: number;
    cropUseMm: number;
    lossMm: number;
    drainedMm: number;
    ranOverMm: number;
  };
}

/** `spillMm`: height of the outlet above the soil. Days in order. */
export function waterLedger(
  startMm: number,
  spillMm: number,
  days: readonly WaterDay[],
): WaterLedger | Fault {
  const wrong = firstFault(finite(startMm, 'starting depth in mm'), atLeast0(spillMm, 'outlet height in mm'));
  if (wrong) return wrong;
  const totals = { irrigationMm: 0, rainMm: 0, cropUseMm: 0, lossMm: 0, drainedMm: 0, ranOverMm: 0 };
  const closed: WaterDayClosed[] = [];
  let depthMm = startMm;
  for (const day of days) {
    const { on, irrigationMm = 0, rainMm = 0, cropUseMm, lossMm, drainedMm = 0 } = day;
    const off =
      amounts(day) ?? (closed.at(-1) && closed.at(-1)!.on >= on ? fault(`${on} is out of order`) : null);
    if (off) return off;
    const full = depthMm + irrigationMm + rainMm - cropUseMm - lossMm - drainedMm;
    const ranOverMm = Math.max(0, full - spillMm);
    depthMm = full - ranOverMm;
    closed.push({ on, depthMm, ranOverMm });
    totals.irrigationMm += irrigationMm;
    totals.rainMm += rainMm;
    totals.cropUseMm += cropUseMm;
    totals.lossMm += lossMm;
    totals.drainedMm += drainedMm;
    totals.ranOverMm += ranOverMm;
  }
  return { days: closed, totals };
}

function amounts({ on, irrigationMm, rainMm, cropUseMm, lossMm, drainedMm }: WaterDay): Fault | null {
  const named: [number | undefined, string][] = [
    [irrigationMm, 'irrigation'],
    [rainMm, 'rain'],
    [cropUseMm, 'crop use'],
    [lossMm, 'loss'],
    [drainedMm, 'drained'],
  ];
  return firstFault(...named.map(([mm, what]) => atLeast0(mm ?? 0, `${what} of ${on} in mm`)));
}

/** What a day takes beyond rain, mm; 0 where the rain is enough. 1 mm is 10 m3/ha. */
export function dailyNeedMm(cropUseMm: number, lossMm: number, rainMm: number): number | Fault {
  const wrong = firstFault(
    atLeast0(cropUseMm, 'crop use in mm'),
    atLeast0(lossMm, 'loss in mm'),
    atLeast0(rainMm, 'rain in mm'),
  );
  return wrong ?? Math.max(0, cropUseMm + lossMm - rainMm);
}
