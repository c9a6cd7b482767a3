/**
 * WHO hazard class from the oral LD50 in rats. The limits changed in 2009; many tables still show the old ones. What counts is
 * the formulation, and the stricter of oral and dermal (FAO toolkit).
 */
import { above0 } from '../check-number.ts';
import type { Fault } from '../fault.ts';
import type { Sourced } from '../source.ts';

export type WhoClassName = 'Ia' | 'Ib' | 'II' | 'III' | 'U';

export interface WhoClass extends Sourced {
  name: WhoClassName;
  /** FAO/WHO call Ia and Ib highly hazardous. */
  highlyHazardous: boolean;
}

const whoClass = (name: WhoClassName, source: string, unconfirmed?: true): WhoClass => ({
  name,
  highlyHazardous: name === 'Ia' || name === 'Ib',
  source,
  unconfirmed,
});

/** Classes of 2009 and 2019, mg/kg. That they follow the GHS was read; the limits are from memory. */
export function whoClass2009(oralMgPerKg: number): WhoClass | Fault {
  const wrong = above0(oralMgPerKg, 'oral LD50 in mg/kg');
  if (wrong) return wrong;
  const source = 'WHO 2009 and 2019, limits from memory';
  if (oralMgPerKg < 5) return whoClass('Ia', source, true);
  if (oralMgPerKg < 50) return whoClass('Ib', source, true);
  if (oralMgPerKg <= 2000) return whoClass('II', source, true);
  return whoClass(oralMgPerKg < 5000 ? 'III' : 'U', source, true);
}

/** Before 2009, superseded: to read old lists. Liquids had limits four times as high. */
export function whoClassBefore2009(oralMgPerKg: number, form: 'solid' | 'liquid'): WhoClass | Fault {
  const wrong = above0(oralMgPerKg, 'oral LD50 in mg/kg');
  if (wrong) return wrong;
  const asSolid = oralMgPerKg / (form === 'liquid' ? 4 : 1);
  const source = 'WHO classes before 2009, superseded';
  if (asSolid < 5) return whoClass('Ia', source);
  if (asSolid <= 50) return whoClass('Ib', source);
  return whoClass(asSolid <= 500 ? 'II' : 'III', source);
}
