/**
 * Score bands of the IRRI Standard Evaluation System, as encoded in the rice trait dictionary (Crop Ontology CO_320). Copies
 * differ: a Vietnamese one has dead heart 31-50 and 51-100 for 7 and 9, leaffolder 36-60 and 61-100.
 */
import { type Band, printedBand } from './printed-band.ts';

export interface SesTrait {
  name: string;
  /** What is counted, with its unit. */
  measure: string;
  /** Upper end of what can be measured; 100 for percentages. */
  most: number;
  bands: readonly Band[];
  /** Scores that need an eye, not a percentage. */
  byEye?: string;
  source: string;
}

const trait = (
  name: string,
  sesPage: number,
  measure: string,
  bands: Record<number, string>,
  more: { most?: number; byEye?: string } = {},
): SesTrait => ({
  name,
  measure,
  most: more.most ?? 100,
  bands: Object.entries(bands).map(([score, printed]) => printedBand(Number(score), printed)),
  byEye: more.byEye,
  source: `IRRI SES:${sesPage}, in the rice trait dictionary CO_320`,
});

const SMUT_LIKE = { 0: '0', 1: '<1', 3: '1-5', 5: '6-25', 7: '26-50', 9: '51-100' };

export const SES_TRAITS: readonly SesTrait[] = [
  trait(
    'leaf blast',
    30,
    '% of leaf area, typical lesions',
    { 0: '0', 4: '<4', 5: '4-10', 6: '11-25', 7: '26-50', 8: '51-75', 9: '>75' },
    { byEye: '1 specks, 2 spots of 1-2 mm on lower leaves, 3 the same on upper leaves' },
  ),
  trait('panicle blast', 31, '% of panicles', {
    0: '0',
    1: '<5',
    3: '5-10',
    5: '11-25',
    7: '26-50',
    9: '>50',
  }),
  trait('brown spot', 32, '% of leaf area', {
    0: '0',
    1: '<1',
    2: '1-3',
    3: '4-5',
    4: '6-10',
    5: '11-15',
    6: '16-25',
    7: '26-50',
    8: '51-75',
    9: '76-100',
  }),
  trait('narrow brown spot', 33, '% of leaf area', SMUT_LIKE),
  trait('bacterial blight, field', 35, '% of leaf area', {
    1: '1-5',
    3: '6-12',
    5: '13-25',
    7: '26-50',
    9: '51-100',
  }),
  trait(
    'tungro',
    36,
    '% of height lost',
    { 1: '0', 3: '1-10', 5: '11-30', 7: '31-50', 9: '>50' },
    { byEye: '7 and 9 with yellow leaves' },
  ),
  trait('sheath blight', 37, 'relative height of lesions in %', {
    0: '0',
    1: '<20',
    3: '20-30',
    5: '31-45',
    7: '46-65',
    9: '>65',
  }),
  trait('sheath rot', 38, '% of tillers', SMUT_LIKE),
  trait('false smut', 40, '% of florets', SMUT_LIKE),
  trait('dead heart', 63, '% of tillers', {
    0: '0',
    1: '1-10',
    3: '11-20',
    5: '21-30',
    7: '31-60',
    9: '>=61',
  }),
  trait('whitehead', 63, '% of panicles', { 0: '0', 1: '1-5', 3: '6-10', 5: '11-15', 7: '16-25', 9: '>=26' }),
  trait('leaffolder', 64, '% of plants', {
    0: '0',
    1: '1-10',
    3: '11-20',
    5: '21-35',
    7: '36-50',
    9: '51-100',
  }),
  trait('gall midge, field', 65, '% of tillers', {
    0: '0',
    1: '<1',
    3: '1-5',
    5: '6-10',
    7: '11-25',
    9: '>25',
  }),
  trait('rice bug', 68, '% of grains', { 0: '0', 1: '<3', 3: '4-7', 5: '8-15', 7: '12-25', 9: '26-100' }),
  trait('spikelet fertility', 9, '% filled', { 1: '>90', 3: '75-89', 5: '50-74', 7: '<50', 9: '0' }),
  trait(
    'tillering',
    2,
    'tillers a plant',
    { 1: '>25', 3: '20-25', 5: '10-19', 7: '5-9', 9: '<5' },
    { most: 200 },
  ),
  trait('height, lowland', 5, 'cm', { 1: '<110', 5: '110-130', 9: '>130' }, { most: 400 }),
];

/** Planthopper damage is seen, not measured (SES:60). */
export const PLANTHOPPER_WORDS: Readonly<Record<number, string>> = {
  0: 'none',
  1: 'slightly yellow',
  3: 'leaves partly yellow, none burnt',
  5: 'stunted, 10-25 % burnt',
  7: 'more than half burnt',
  9: 'all dead',
};
