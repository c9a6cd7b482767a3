/** What goes into a tank. The dose comes from the label; nothing here decides one. */
import { above0, atLeast0 } from '../check-number.ts';
import { type Fault, firstFault, isFault } from '../fault.ts';

export interface TankDose {
  /** mL or g, as the dose was given. */
  dosePerTank: number;
  areaPerTankM2: number;
}

export function tankDose(tankL: number, volumeLPerHa: number, dosePerHa: number): TankDose | Fault {
  const wrong = firstFault(
    above0(tankL, 'tank in L'),
    above0(volumeLPerHa, 'spray volume in L/ha'),
    atLeast0(dosePerHa, 'dose a hectare'),
  );
  if (wrong) return wrong;
  const hectares = tankL / volumeLPerHa;
  return { dosePerTank: hectares * dosePerHa, areaPerTankM2: hectares * 10_000 };
}

export interface PlotMix {
  sprayL: number;
  dose: number;
  fullTanks: number;
  /** In the last tank, which is filled only so far: nothing is left to throw away. */
  lastTankL: number;
  lastTankDose: number;
  caution: string;
}

export const SPRAY_CAUTION =
  'Rate, mixing order, protective clothing and weather are set by the label and by national law. Gloves and eye protection when mixing; not against the wind.';

export function mixForPlot(
  areaM2: number,
  tank: { tankL: number; volumeLPerHa: number; dosePerHa: number },
): PlotMix | Fault {
  const one = tankDose(tank.tankL, tank.volumeLPerHa, tank.dosePerHa);
  if (isFault(one)) return one;
  const wrong = above0(areaM2, 'area in m2');
  if (wrong) return wrong;
  const sprayL = (areaM2 * tank.volumeLPerHa) / 10_000;
  const fullTanks = Math.floor(sprayL / tank.tankL + 1e-9);
  const lastTankL = Math.max(0, sprayL - fullTanks * tank.tankL);
  const lastTankDose = (lastTankL / tank.volumeLPerHa) * tank.dosePerHa;
  return {
    sprayL,
    dose: (areaM2 * tank.dosePerHa) / 10_000,
    fullTanks,
    lastTankL,
    lastTankDose,
    caution: SPRAY_CAUTION,
  };
}
