import { EPPO_LETTERS, eppoCode } from '../../../src/agronomy/eppo-codes.ts';
import { sure } from '../../../src/agronomy/fault.ts';
import { lodgingIndex } from '../../../src/agronomy/lodging/lodging-index.ts';
import { lodgedPercent } from '../../../src/agronomy/lodging/lodging-percent.ts';
import { type LodgingScaleName, lodgingScore } from '../../../src/agronomy/lodging/lodging-scales.ts';
import { harvestNotBeforeHours } from '../../../src/agronomy/pesticide/pre-harvest.ts';
import { mixtureReentryHours, reentryHours } from '../../../src/agronomy/pesticide/re-entry.ts';
import { whoClass2009, whoClassBefore2009 } from '../../../src/agronomy/pesticide/who-class.ts';
import type { PestStage } from '../../../src/agronomy/pests/action-thresholds.ts';
import { thresholdsFor } from '../../../src/agronomy/pests/against-threshold.ts';
import { sheathBlightSeverity, tungroIndex } from '../../../src/agronomy/pests/disease-indices.ts';
import { sesScore } from '../../../src/agronomy/pests/ses-score.ts';
import { SES_TRAITS } from '../../../src/agronomy/pests/ses-traits.ts';
import { cutTillersPercent, stratifiedPercent } from '../../../src/agronomy/rodents/cut-tillers.ts';
import { barrierReachHa } from '../../../src/agronomy/rodents/trapping.ts';
import {
  DAMAGE_BY_STAGE,
  seasonDamageFromRipeningCount,
  yieldLossFromRipeningCount,
} from '../../../src/agronomy/rodents/yield-loss-from-rats.ts';
import {
  litresOnStrip,
  paceKmPerH,
  sprayedM2PerMin,
  sprayVolumeLPerHa,
  volumeFromStripLPerHa,
} from '../../../src/agronomy/weeds/sprayer.ts';
import { tankDose } from '../../../src/agronomy/weeds/tank-mix.ts';
import { DECIMAL_M2, hoursPerHa, personDaysPerHa } from '../../../src/agronomy/weeds/weeding-labour.ts';
import { type Calls, each, type Given } from './given.ts';

/** The check's name may add a remark in brackets, or give the wrong virus its full name. */
const codeOf = ({ name }: Given) => sure(eppoCode(name.replace(/ \(.*$/, ''))).code;

const bandsOf = (trait: string) => () =>
  Object.fromEntries(
    SES_TRAITS.find(({ name }) => name === trait)!.bands.map(({ score, printed }) => [score, printed]),
  );

const scored =
  (trait: string) =>
  ({ pct }: Given) => ({ score: sure(sesScore(trait, pct)).score });

const printedThreshold =
  (region: string, stage: PestStage) =>
  ({ pest }: Given) => {
    const rows = thresholdsFor(pest, stage).filter((row) => row.region.startsWith(region));
    return rows.length === 1 ? rows[0]!.printed : rows;
  };

const scoreWords = (scale: LodgingScaleName) => () =>
  Object.fromEntries(
    [1, 3, 5, 7, 9].map((score) => [
      score,
      sure(lodgingScore(scale, score)).words.replace(/, most bend.*/, ''),
    ]),
  );

const eppoIds =
  'CYPIR FIMMI LEFCH MOOVA LUDOC LUDAD SPDZE ORYSA XANTOR PYRIOR NILALU CNAPME PSEDSE HISPAR COCHMI RTBV00 RTSV00'
    .split(' ')
    .map((code) => `eppo-${code}`);

export const troublesCalls: Calls = {
  ...each(eppoIds, codeOf),
  'eppo-format': () => ({
    plant_letters: EPPO_LETTERS.plant,
    pest_letters: EPPO_LETTERS.pest,
    rule: EPPO_LETTERS.rule,
  }),
  'sprayer-strip': ({ strip_m2, target_L_ha }) => ({ litres_on_strip: litresOnStrip(strip_m2, target_L_ha) }),
  'sprayer-too-slow': ({ flow_L_min, strip_m2, seconds }) => ({
    L_ha: volumeFromStripLPerHa(flow_L_min, strip_m2, seconds),
  }),
  'sprayer-rays': ({ flow_L_min, distance_m_min, swath_m }) => {
    const kmPerH = sure(paceKmPerH(distance_m_min, 60));
    return {
      area_m2_min: sprayedM2PerMin(swath_m, kmPerH),
      L_ha: sprayVolumeLPerHa(flow_L_min, swath_m, kmPerH),
    };
  },
  'walk-speed': ({ metres, seconds }) => ({ km_h: paceKmPerH(metres, seconds) }),
  'tank-dose': ({ tank_L, spray_L_ha, dose_mL_ha }) => {
    const { dosePerTank, areaPerTankM2 } = sure(tankDose(tank_L, spray_L_ha, dose_mL_ha));
    return { dose_mL_tank: dosePerTank, area_per_tank_m2: areaPerTankM2 };
  },
  'weeder-brri': ({ decimal_per_man_day }) => {
    const m2 = decimal_per_man_day * DECIMAL_M2;
    return { m2, man_days_per_ha: personDaysPerHa(m2) };
  },
  'handweed-capacity': ({ power_weeder_ha_h, ratio }) => {
    const manual = power_weeder_ha_h / ratio;
    return { manual_ha_h: manual, hours_per_ha: hoursPerHa(manual) };
  },
  'rodent-cut-pct': ({ cut, uncut }) => ({ pct_cut: cutTillersPercent(cut, uncut) }),
  'rodent-multiplier-damage': ({ pct_cut_at_ripening }) => ({
    cumulative_damage_pct: seasonDamageFromRipeningCount(pct_cut_at_ripening),
  }),
  'rodent-multiplier-loss': ({ pct_cut_at_ripening }) => {
    const { lossPercent, fromPercent, toPercent } = sure(yieldLossFromRipeningCount(pct_cut_at_ripening));
    return { yield_loss_pct: lossPercent, ci95: [fromPercent, toPercent] };
  },
  'rodent-stage-share': () => ({
    primordial_pct: DAMAGE_BY_STAGE.primordium,
    booting_pct: DAMAGE_BY_STAGE.booting,
    ripening_pct: DAMAGE_BY_STAGE.ripening,
  }),
  'tbs-radius': ({ radius_m }) => ({ circle_ha: barrierReachHa(radius_m) }),
  'rodent-stratified': ({ strata }) => ({
    weighted_pct: stratifiedPercent(strata.map(({ weight, pct }) => ({ weight, percent: pct }))),
  }),
  'lodging-index': ({ fresh_weight_g, length_cm, breaking_load_g, fulcrum_cm }) => {
    const index = sure(
      lodgingIndex({
        lengthCm: length_cm,
        freshWeightG: fresh_weight_g,
        breakingLoadG: breaking_load_g,
        fulcrumCm: fulcrum_cm,
      }),
    );
    return {
      bending_moment_gcm: index.bendingMomentGCm,
      breaking_moment_gcm: index.breakingMomentGCm,
      lodging_index_pct: index.indexPercent,
    };
  },
  'lodging-pct': ({ lodged_m2, plot_m2 }) => ({ pct: lodgedPercent(lodged_m2, plot_m2) }),
  'lodging-scale-rd': scoreWords('descriptor lodging'),
  'culm-strength-ses': scoreWords('SES culm strength'),
  'ses-bacterial-blight-field': bandsOf('bacterial blight, field'),
  'ses-brown-spot': bandsOf('brown spot'),
  'ses-sheath-blight': bandsOf('sheath blight'),
  'ses-panicle-blast-inc': bandsOf('panicle blast'),
  'ses-deadheart': bandsOf('dead heart'),
  'ses-whitehead': bandsOf('whitehead'),
  'ses-leaffolder': bandsOf('leaffolder'),
  'ses-gall-midge-field': bandsOf('gall midge, field'),
  'ses-false-smut': bandsOf('false smut'),
  'ses-spikelet-fertility': bandsOf('spikelet fertility'),
  'ses-tillering': bandsOf('tillering'),
  'ses-score-deadheart-18': scored('dead heart'),
  'ses-score-whitehead-12': scored('whitehead'),
  'ses-score-leaffolder-40': scored('leaffolder'),
  'ses-score-sheath-33': scored('sheath blight'),
  'ses-score-bacterial-20': scored('bacterial blight, field'),
  'tungro-di': ({ plants, n3, n5, n7, n9 }) => ({
    disease_index: tungroIndex({ 3: n3, 5: n5, 7: n7, 9: n9 }, plants),
  }),
  'yoshimura-shb': ({ n1, n2, n3, n4 }) => ({ severity_pct: sheathBlightSeverity([n1, n2, n3, n4]) }),
  'etl-brown-planthopper-mid-tillering': printedThreshold('Kerala', 'mid-tillering'),
  'etl-brown-planthopper-PI-booting': printedThreshold('Kerala', 'PI-booting'),
  'etl-brown-planthopper-flowering': printedThreshold('Kerala', 'flowering'),
  'etl-leaf-folder-all-vegetative': printedThreshold('Kerala', 'pre-tillering'),
  'etl-gall-midge-mid-tillering': printedThreshold('Kerala', 'mid-tillering'),
  'etl-rice-bug-flowering': printedThreshold('Kerala', 'flowering'),
  'etl-tungro-mid-tillering': printedThreshold('Kerala', 'mid-tillering'),
  'etl-stemborer-punjab': printedThreshold('Punjab', 'vegetative'),
  'rei-epa': ({ active_ingredient_acute_category }) => ({
    REI_h: active_ingredient_acute_category.map((category) => sure(reentryHours({ category })).hours),
    organophosphate_dry_area_h: sure(reentryHours({ category: 'I', organophosphateInDryArea: true })).hours,
  }),
  'rei-tankmix': ({ REI_h }) => ({ REI_h: mixtureReentryHours(REI_h as number[]) }),
  'rei-phi': ({ REI_h, PHI_h }) => ({ harvest_not_before_h: harvestNotBeforeHours(REI_h as number, PHI_h) }),
  'who-pre2009': ({ oral_LD50_solid_mg_kg }) => ({
    class: oral_LD50_solid_mg_kg.map((dose) => sure(whoClassBefore2009(dose, 'solid')).name),
  }),
  'who-2009': ({ oral_LD50_mg_kg }) => ({
    class: oral_LD50_mg_kg.map((dose) => sure(whoClass2009(dose)).name),
  }),
};
