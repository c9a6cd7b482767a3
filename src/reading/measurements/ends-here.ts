import type { Surroundings } from './surroundings.ts';

/** Words that begin something new behind a figure. */
const CLOSES = new Set(
  'and or but so at in near now today only here there this still then because as ok fine good also while even too along i we she he it they just again vs versus against yesterday deg degrees outside by after for with on hold yeah yes yep no elsewhere inside everywhere out up down beside between around through all same instead last next rest there @'.split(
    ' ',
  ),
);

/** True where the figure ends its phrase. */
export function endsHere(around: Surroundings, at: number): boolean {
  const token = around.tokens[at];
  return !token || token.kind === 'mark' || CLOSES.has(token.lower) || around.isPlot(at);
}
