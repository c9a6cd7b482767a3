/** PURE. How much of a dose goes on one plot. */
import type { Dose } from '../reading/record.ts';

const M2_PER_HA = 10_000;

/** `30 kg/ha` on 100 m2 is 300 g; a water level or an amount that is for the plot already stays. Null where the area is needed and unknown. */
export function doseForPlot({ value, unit, of }: Dose, areaM2: number | null): Dose | null {
  const per = (amount: number, whole: Dose['unit'], part: Dose['unit'], parts: number): Dose =>
    amount < 1
      ? { value: round(amount * parts), unit: part, ...(of && { of }) }
      : { value: round(amount), unit: whole, ...(of && { of }) };
  if (unit === 'kg/ha') return areaM2 === null ? null : per((value * areaM2) / M2_PER_HA, 'kg', 'g', 1000);
  if (unit === 'g/m2') return areaM2 === null ? null : per((value * areaM2) / 1000, 'kg', 'g', 1000);
  if (unit === 'L/ha')
    return areaM2 === null
      ? null
      : { value: round((value * areaM2) / M2_PER_HA), unit: 'L', ...(of && { of }) };
  if (unit === 'bags/ha')
    return areaM2 === null
      ? null
      : { value: round((value * areaM2) / M2_PER_HA), unit: 'bags', ...(of && { of }) };
  return { value, unit, ...(of && { of }) };
}

const round = (value: number): number => Number(value.toPrecision(3));
