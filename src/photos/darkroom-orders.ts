/** What goes between the darkroom and its children, and what it gives back. */
import type { Examined } from './examined.ts';

export interface Cover {
  /** 0 to 100, one decimal. */
  coverPercent: number;
  method: string;
  warnings: string[];
}
export type CoverAnswer = Cover | { fault: string };

export interface Developed {
  /** Why no picture could be made, in words; null where both copies are there. */
  fault: string | null;
}

export type Order =
  | { do: 'examine'; path: string }
  | { do: 'develop'; path: string; small: string; large: string }
  | { do: 'cover'; path: string; maskPath?: string };

export interface Report {
  answer: Examined | Developed | CoverAnswer;
  /** The child holds so much memory that the next file should be given to a fresh one. */
  tired: boolean;
}
