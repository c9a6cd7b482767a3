import type { Hearing, Proposal } from './hearing.ts';
export function proposeKnown(_hearing: Hearing): Proposal[] {
  return [];
}
