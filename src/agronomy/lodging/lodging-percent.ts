import { above0, atLeast0 } from '../check-number.ts';
import { type Fault, fault, firstFault } from '../fault.ts';

/** Lodged share of a plot, %, by area or by plants: what the SES records as lodging (CO_320, SES:4). */
export function lodgedPercent(lodged: number, whole: number): number | Fault {
  const wrong = firstFault(atLeast0(lodged, 'lodged part'), above0(whole, 'whole plot'));
  if (wrong) return wrong;
  return lodged > whole
    ? fault(`${lodged} lodged of ${whole} is more than the whole`)
    : (100 * lodged) / whole;
}
