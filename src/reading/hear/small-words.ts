import type { Hearing, Proposal } from './hearing.ts';
export function proposeSmallWords(_hearing: Hearing): Proposal[] {
  return [];
}
