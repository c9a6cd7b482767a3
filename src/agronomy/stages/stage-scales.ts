/**
 * Three scales with digits, which give different digits to the same stage. A digit is never carried from one to another;
 * the way goes through the stage's name, and where that leaves several, all of them are given.
 */
import { type Fault, fault } from '../fault.ts';

export type StageScale = 'BBCH' | 'SES' | 'teaching';

export interface ScaleRow {
  stage: string;
  /** First digit of the BBCH code, except where one digit holds two stages. */
  bbch: string;
  ses: string;
  teaching: string;
}

export const STAGE_SCALE_SOURCES: Record<StageScale, string> = {
  BBCH: 'Lancashire et al. 1991; Meier (ed.) 2001, BBCH Monograph, rice',
  SES: 'IRRI Standard Evaluation System for Rice, stage codes (p. 5), read in a transcription',
  teaching: 'IRRI growth-stage guide, 0-9',
};

export const STAGE_SCALES: readonly ScaleRow[] = [
  { stage: 'germination', bbch: '0x', ses: '1', teaching: '0' },
  { stage: 'seedling', bbch: '1x', ses: '2', teaching: '1' },
  { stage: 'tillering', bbch: '2x', ses: '3', teaching: '2' },
  { stage: 'stem elongation', bbch: '3x', ses: '4', teaching: '3' },
  { stage: 'panicle initiation to booting', bbch: '30, 4x', ses: '5', teaching: '4' },
  { stage: 'heading', bbch: '5x', ses: '6', teaching: '5' },
  { stage: 'flowering', bbch: '6x', ses: '6', teaching: '6' },
  { stage: 'milk', bbch: '7x', ses: '7', teaching: '7' },
  { stage: 'dough', bbch: '83-87', ses: '8', teaching: '8' },
  { stage: 'mature', bbch: '89', ses: '9', teaching: '9' },
];

/** What the SES calls its own codes; flowering goes with 6. */
export const SES_STAGES: Readonly<Record<string, string>> = {
  1: 'germination',
  2: 'seedling',
  3: 'tillering',
  4: 'stem elongation',
  5: 'booting',
  6: 'heading',
  7: 'milk',
  8: 'dough',
  9: 'mature grain',
};

/** Stages that a code means on a scale: `('SES', '6')` gives heading and flowering. BBCH codes are written as in the table. */
export function stagesOfCode(scale: StageScale, code: string): ScaleRow[] | Fault {
  const column = scale === 'BBCH' ? 'bbch' : scale === 'SES' ? 'ses' : 'teaching';
  const rows = STAGE_SCALES.filter((row) => row[column] === code);
  return rows.length > 0
    ? rows
    : fault(`${code} is not on the ${scale} scale (${STAGE_SCALE_SOURCES[scale]})`);
}
