/** Two scales from 1 to 9 which run opposite ways. A score is worth nothing without its scale, and neither is turned into the other. */
import { type Fault, fault } from '../fault.ts';

export type LodgingScaleName = 'descriptor lodging' | 'SES culm strength';

export interface LodgingScale {
  name: LodgingScaleName;
  best: 1 | 9;
  words: Readonly<Record<number, string>>;
  source: string;
}

const DICTIONARY = 'rice trait dictionary CO_320, quoting the IRRI SES and descriptors';

export const LODGING_SCALES: readonly LodgingScale[] = [
  {
    name: 'descriptor lodging',
    best: 9,
    words: {
      1: 'all flat',
      3: 'most nearly flat',
      5: 'leaning about 45 deg',
      7: 'leaning about 20 deg',
      9: 'all vertical',
    },
    source: `${DICTIONARY}, CO_320:0000591`,
  },
  {
    name: 'SES culm strength',
    best: 1,
    words: {
      1: 'strong, no bending',
      3: 'moderately strong, most bend a little',
      5: 'intermediate',
      7: 'weak, most nearly flat',
      9: 'very weak, all flat',
    },
    source: `${DICTIONARY}, SES:3; tillers pushed to and fro 30 cm above the ground`,
  },
];

export interface LodgingScore {
  scale: LodgingScaleName;
  score: number;
  words: string;
  /** `9 is best` or `1 is best`: goes with the score wherever it is shown. */
  direction: string;
  source: string;
}

export function lodgingScore(scale: LodgingScaleName, score: number): LodgingScore | Fault {
  const found = LODGING_SCALES.find(({ name }) => name === scale);
  if (!found) return fault(`no lodging scale is called ${scale}`);
  const words = found.words[score];
  if (!words) return fault(`${scale} has the scores 1, 3, 5, 7 and 9, not ${score}`);
  return { scale, score, words, direction: `${found.best} is best`, source: found.source };
}
