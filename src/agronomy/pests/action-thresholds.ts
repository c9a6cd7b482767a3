/**
 * Action thresholds as printed. They hold for their region; a station keeps its own. Shown for information: whether to act
 * hangs on natural enemies, the weather and the trial too.
 */
import type { Sourced } from '../source.ts';

export type PestStage = 'pre-tillering' | 'mid-tillering' | 'PI-booting' | 'flowering' | 'vegetative';

export interface ActionThreshold extends Sourced {
  pest: string;
  stages: readonly PestStage[];
  /** In the source's own measure. */
  printed: string;
  /** The count at which the printed range begins and ends; the same where there is one figure. */
  from: number;
  to: number;
  measure: string;
  region: string;
}

type Figures = [from: number, to: number, measure: string];

const KERALA = { region: 'Kerala, India', source: 'Kerala Agricultural University, threshold table' };
const kerala = (
  pest: string,
  stages: PestStage[],
  printed: string,
  [from, to, measure]: Figures,
): ActionThreshold => ({
  pest,
  stages,
  printed,
  from,
  to,
  measure,
  ...KERALA,
});

const BORER = 'stem borer';
const BPH = 'brown planthopper';
const WBPH = 'whitebacked planthopper';
const GLH = 'green leafhopper';
const TILLERING: PestStage[] = ['pre-tillering', 'mid-tillering'];
const TO_BOOTING: PestStage[] = [...TILLERING, 'PI-booting'];

export const ACTION_THRESHOLDS: readonly ActionThreshold[] = [
  kerala(BORER, TILLERING, '10 % dead hearts', [10, 10, '% dead hearts']),
  kerala(BORER, TO_BOOTING, '1 moth or egg mass per m2', [1, 1, 'moths or egg masses per m2']),
  kerala('leaf folder', TO_BOOTING, '2 freshly damaged leaves per hill', [
    2,
    2,
    'freshly damaged leaves per hill',
  ]),
  kerala(BPH, ['pre-tillering'], '5-10 per hill', [5, 10, 'per hill']),
  kerala(BPH, ['mid-tillering'], '10 per hill', [10, 10, 'per hill']),
  kerala(BPH, ['PI-booting'], '15-20 per hill', [15, 20, 'per hill']),
  kerala(BPH, ['flowering'], '25-30 per hill', [25, 30, 'per hill']),
  kerala(WBPH, ['pre-tillering'], '10 per hill', [10, 10, 'per hill']),
  kerala(WBPH, ['PI-booting'], '15-20 per hill', [15, 20, 'per hill']),
  /** The value for places with tungro is printed as 21, above the ordinary one: a misprint, left out. */
  kerala(GLH, ['pre-tillering'], '10 per hill', [10, 10, 'per hill']),
  kerala(GLH, ['mid-tillering'], '10-20 per hill', [10, 20, 'per hill']),
  kerala(GLH, ['PI-booting'], '20 per hill', [20, 20, 'per hill']),
  kerala('gall midge', ['pre-tillering'], '1 gall per m2 where it is endemic', [1, 1, 'galls per m2']),
  kerala('gall midge', ['pre-tillering'], '5 % of tillers', [5, 5, '% of tillers']),
  kerala('gall midge', ['mid-tillering'], '10 % silver shoots', [10, 10, '% silver shoots']),
  kerala('hispa', TILLERING, '2 adults or damaged leaves per hill', [
    2,
    2,
    'adults or damaged leaves per hill',
  ]),
  kerala('rice bug', ['flowering'], '1-2 per hill', [1, 2, 'per hill']),
  kerala('blast', ['mid-tillering'], '5-10 % severity', [5, 10, '% severity']),
  kerala('blast', ['PI-booting'], '5-10 % of leaf area', [5, 10, '% of leaf area']),
  kerala('blast', ['flowering'], '5 % of leaf area', [5, 5, '% of leaf area']),
  kerala('blast', ['flowering'], '1-2 % neck infection', [1, 2, '% of necks']),
  kerala('bacterial blight', ['mid-tillering', 'PI-booting'], '2-5 %', [2, 5, '% of leaf area']),
  kerala('sheath blight', ['mid-tillering', 'PI-booting', 'flowering'], '10 % of tillers', [
    10,
    10,
    '% of tillers',
  ]),
  kerala('tungro', ['mid-tillering'], '1 affected hill per m2', [1, 1, 'affected hills per m2']),
  {
    pest: BORER,
    stages: ['vegetative', ...TILLERING],
    printed: '5 % dead hearts',
    from: 5,
    to: 5,
    measure: '% dead hearts',
    region: 'Punjab, India',
    source: 'RKMP Punjab, stem borer page',
  },
  {
    pest: BORER,
    stages: ['flowering'],
    printed: '2 % white ears',
    from: 2,
    to: 2,
    measure: '% white ears',
    region: 'India',
    source: 'agricultureinindia.net',
  },
];
