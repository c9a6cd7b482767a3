import { atLeast0, between } from '../check-number.ts';
import { type Fault, firstFault } from '../fault.ts';
import type { Sourced } from '../source.ts';

export interface YieldComponents {
  paniclesPerM2: number;
  spikeletsPerPanicle: number;
  /** 0 to 1. */
  filledFraction: number;
  thousandGrainG: number;
}

export interface ComponentYield extends Sourced {
  gPerM2: number;
  tPerHa: number;
}

/**
 * The product of the four; 1e-5 brings it to t/ha with filled spikelets as a fraction (1e-7 would be for a percentage). Form
 * after Yoshida 1981, from memory. Moisture is that of the thousand grains.
 */
export function yieldFromComponents(parts: YieldComponents): ComponentYield | Fault {
  const wrong = firstFault(
    between(parts.paniclesPerM2, 0, 2000, 'panicles per m2'),
    between(parts.spikeletsPerPanicle, 0, 600, 'spikelets a panicle'),
    between(parts.filledFraction, 0, 1, 'filled fraction'),
    between(parts.thousandGrainG, 0, 60, 'thousand-grain weight in g'),
  );
  if (wrong) return wrong;
  const grains = parts.paniclesPerM2 * parts.spikeletsPerPanicle * parts.filledFraction;
  const gPerM2 = (grains * parts.thousandGrainG) / 1000;
  return {
    gPerM2,
    tPerHa: gPerM2 / 100,
    source: 'Yoshida 1981, form of the product from memory',
    unconfirmed: true,
  };
}

/** Filled of all spikelets, 0 to 1. */
export function filledFraction(filled: number, empty: number): number | Fault {
  const wrong = firstFault(
    atLeast0(filled, 'filled spikelets'),
    atLeast0(empty, 'empty spikelets'),
    between(filled + empty, 1, 1e9, 'spikelets counted'),
  );
  return wrong ?? filled / (filled + empty);
}
