import { coverPercent } from '../../../src/agronomy/canopy-cover.ts';
import { excessGreen, rawExcessGreen } from '../../../src/agronomy/canopy-indices.ts';
import { otsuSplit, withinVariance } from '../../../src/agronomy/canopy-otsu.ts';
import { sure } from '../../../src/agronomy/fault.ts';
import { rectangleAreaError } from '../../../src/agronomy/geometry/area-error.ts';
import { geodesicArea, geodesicDistance, WGS84 } from '../../../src/agronomy/geometry/geodesic-area.ts';
import { blockAnalysis } from '../../../src/agronomy/statistics/block-analysis.ts';
import { describe } from '../../../src/agronomy/statistics/describe.ts';
import { fCritical, tCritical } from '../../../src/agronomy/statistics/distributions.ts';
import { oneWayAnalysis } from '../../../src/agronomy/statistics/one-way-analysis.ts';
import { tukeyDifference } from '../../../src/agronomy/statistics/studentised-range.ts';
import {
  pairedTTest,
  pooledTTest,
  type TTest,
  welchTTest,
} from '../../../src/agronomy/statistics/t-tests.ts';
import { TRANSFORMATIONS } from '../../../src/agronomy/statistics/transformations.ts';
import { type Calls, each, type Given } from './given.ts';
import { larvaeTrial, plantGrowth, seedRateTrial } from './published-data.ts';

const outline = ({ lat_lon }: Given) => {
  const corners = lat_lon.map(([latitude, longitude]) => ({ latitude, longitude }));
  const { areaM2, perimeterM } = sure(geodesicArea(corners));
  return { area_m2: areaM2, perimeter_m: perimeterM };
};

const position = ([latitude, longitude]: [number, number]) => ({ latitude, longitude });

const shown = ({ t, df, p, meanDifference, se, interval95 }: TTest) => ({
  t,
  df,
  p,
  mean_diff: meanDifference,
  sem: se,
  ci95: interval95,
});

const greenness = ({ rgb }: Given) => ({ ExG: excessGreen(...rgb) });

export const figuresCalls: Calls = {
  'gomez-means': () => {
    const { means } = sure(blockAnalysis(seedRateTrial));
    return Object.fromEntries(means.map(({ treatment, mean }) => [treatment, mean]));
  },
  'gomez-se-lsd': () => {
    const analysis = sure(blockAnalysis(seedRateTrial));
    const { seMean, sed, lsd5, lsd1, error, means } = analysis;
    return {
      SE_mean: seMean,
      SED: sed,
      't_0.975_15': tCritical(0.05, error.df),
      LSD_5: lsd5,
      LSD_1: lsd1,
      Tukey_HSD_5: tukeyDifference(analysis, means.length),
    };
  },
  'gomez-fcrit': ({ df }) => ({ 'F_0.05': fCritical(0.05, ...df), 'F_0.01': fCritical(0.01, ...df) }),
  'gomez-crd-mistake': () => {
    const { f, p } = sure(oneWayAnalysis(seedRateTrial)).treatments;
    return { F_treatment: f, p };
  },
  'gomez-transform': () => {
    const { apply } = TRANSFORMATIONS.find(({ name }) => name === 'log10(x+1)')!;
    const plots = larvaeTrial.map((plot) => ({ ...plot, value: sure(apply(plot.value)) }));
    const { blocks, treatments, error } = sure(blockAnalysis(plots));
    return {
      SS: [blocks.ss, treatments.ss, error.ss],
      F_block: blocks.f,
      F_treatment: treatments.f,
      p_treatment: treatments.p,
    };
  },
  'pooled-sleep': ({ g1, g2 }) => shown(sure(pooledTTest(g1, g2))),
  'paired-sleep': ({ g1, g2 }) => shown(sure(pairedTTest(g1, g2))),
  'sem-sleep': ({ g1, g2 }) => {
    const both = [g1, g2].map((values) => sure(describe(values)));
    return {
      mean: both.map(({ mean }) => mean),
      sd: both.map(({ sd }) => sd),
      sem: both.map(({ se }) => se),
    };
  },
  'paired-darwin': ({ cross, self }) => {
    const differences = cross.map((value, index) => value - self[index]!);
    return { ...shown(sure(pairedTTest(cross, self))), sd_diff: sure(describe(differences)).sd };
  },
  'welch-darwin': ({ cross, self }) => shown(sure(welchTTest(cross, self))),
  'anova-plantgrowth': () => {
    const { treatments, error } = sure(oneWayAnalysis(plantGrowth));
    return { SS_group: treatments.ss, SS_resid: error.ss, F: treatments.f, p: treatments.p };
  },
  ...each(['exg-60-120-40', 'exg-90-110-70', 'exg-200-200-200', 'exg-0-255-0', 'exg-255-0-0'], greenness),
  'exg-raw-vs-norm': ({ rgb }) => ({ raw_2G_R_B: rawExcessGreen(...rgb), normalised: excessGreen(...rgb) }),
  'otsu-6': ({ histogram_levels_0_5: counts }) => {
    const { firstUpper, between, total } = otsuSplit(counts);
    const within = Object.fromEntries(counts.map((_, level) => [level, withinVariance(counts, level)]));
    return { first_foreground_level: firstUpper, within, between_at_3: between, total_variance: total };
  },
  'cover-pct': ({ plant_pixels, pixels }) => ({
    cover_pct: coverPercent(
      Uint8Array.from({ length: pixels }, (_, index) => (index < plant_pixels ? 1 : 0)),
    ),
  }),
  wgs84: () => ({ a_m: WGS84.equatorialRadiusM, inverse_f: WGS84.inverseFlattening }),
  ...each(
    [
      'poly-diamond',
      'poly-octant',
      'poly-pole',
      'poly-antarctica',
      'poly-plot-20x5',
      'poly-plot-rounded',
      'poly-millideg',
    ],
    outline,
  ),
  'inverse-jfk-cdg': ({ from, to }) => {
    const { distanceM, bearingDeg } = sure(geodesicDistance(position(from), position(to)));
    return { distance_m: distanceM, azi1: bearingDeg };
  },
  'area-sd-rect-big': ({ sides_m: [length, width], vertex_sigma_m_per_axis }) => {
    const { sdM2, sdPercent } = sure(rectangleAreaError(length, width, vertex_sigma_m_per_axis));
    return { area_sd_m2: sdM2, pct: sdPercent };
  },
};
