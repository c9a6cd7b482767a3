import type { NumberFound } from '../numbers/find-numbers.ts';
import type { Read } from './reading.ts';
import type { Shape } from './shapes.ts';

/** A number of the note on its way to a measurement. */
export interface Figure {
  number: NumberFound;
  shape: Shape;
  reads: Read[];
  /** Settled as something that is no measurement: a dose, a plan, another day. */
  out: boolean;
}
