import { sure } from '../../../src/agronomy/fault.ts';
import { METER_THRESHOLDS } from '../../../src/agronomy/nutrients/chlorophyll-meter.ts';
import {
  agronomicEfficiency,
  partialProductivity,
  recoveryPercent,
} from '../../../src/agronomy/nutrients/efficiency.ts';
import { LEAF_COLOUR_RULES, leafColourSuggestion } from '../../../src/agronomy/nutrients/leaf-colour.ts';
import { k2oFromKKg, kFromK2oKg, p2o5FromPKg, pFromP2o5Kg } from '../../../src/agronomy/nutrients/oxides.ts';
import { portionG } from '../../../src/agronomy/nutrients/portion.ts';
import { productFromNutrientKg } from '../../../src/agronomy/nutrients/product-rate.ts';
import { fertiliser } from '../../../src/agronomy/nutrients/products.ts';
import { productsForTargets } from '../../../src/agronomy/nutrients/products-for-targets.ts';
import {
  printedSiteSpecificN,
  siteSpecificNKgPerHa,
} from '../../../src/agronomy/nutrients/site-specific-n.ts';
import { volumeFromDepthM3 } from '../../../src/agronomy/water/depth-volume.ts';
import { PERCOLATION } from '../../../src/agronomy/water/percolation.ts';
import { SAFE_RULE } from '../../../src/agronomy/water/safe-wetting-drying.ts';
import {
  PUBLISHED_WATER_PRODUCTIVITY,
  waterProductivity,
} from '../../../src/agronomy/water/water-productivity.ts';
import { type Calls, each, type Given } from './given.ts';

const siteSpecific = ({ yield_response_t_ha, AE_kg_kg }: Given) => ({
  exact: siteSpecificNKgPerHa(yield_response_t_ha, AE_kg_kg),
  printed_kg_N_ha: printedSiteSpecificN(yield_response_t_ha, AE_kg_kg),
});

const percolation = (soil: string) => PERCOLATION.find((row) => row.soil === soil)!.toMmPerDay;
const criticalOf = (crop: string) => LEAF_COLOUR_RULES.find(({ name }) => name.startsWith(crop))!.critical;

export const inputsCalls: Calls = {
  'fert-urea': ({ product }) => ({ N_pct: sure(fertiliser(product)).nPercent }),
  'fert-ammonium-sulphate': ({ product }) => ({ N_pct: sure(fertiliser(product)).nPercent }),
  'fert-mop': ({ product }) => ({ K2O_pct: sure(fertiliser(product)).k2oPercent }),
  'oxide-factors': () => ({
    P2O5_to_P: pFromP2o5Kg(1),
    P_to_P2O5: p2o5FromPKg(1),
    K2O_to_K: kFromK2oKg(1),
    K_to_K2O: k2oFromKKg(1),
  }),
  'urea-plot': ({ N_kg_ha, N_pct, plot_m2 }) => ({
    urea_g: portionG(sure(productFromNutrientKg(N_kg_ha, N_pct)), plot_m2),
  }),
  'as-for-n': ({ N_kg_ha, N_pct }) => ({ product_kg_ha: productFromNutrientKg(N_kg_ha, N_pct) }),
  'dap-then-urea': ({ target_N, target_P2O5, target_K2O }) => {
    const shares = sure(
      productsForTargets(
        { nKgPerHa: target_N, p2o5KgPerHa: target_P2O5, k2oKgPerHa: target_K2O },
        {
          nitrogen: sure(fertiliser('urea')),
          phosphorus: sure(fertiliser('DAP')),
          potassium: sure(fertiliser('MOP')),
        },
      ),
    );
    return {
      DAP: shares.phosphorusProductKgPerHa,
      N_from_DAP: shares.nFromPhosphorusProductKgPerHa,
      urea: shares.nitrogenProductKgPerHa,
      MOP: shares.potassiumProductKgPerHa,
    };
  },
  'p-oxide-example': ({ P2O5_kg }) => ({ P_kg: pFromP2o5Kg(P2O5_kg) }),
  'k-oxide-example': ({ K2O_kg }) => ({ K_kg: kFromK2oKg(K2O_kg) }),
  ...each(
    [
      '1-15',
      '1-18',
      '1-20',
      '2-15',
      '2-18',
      '2-20',
      '2-25',
      '3-15',
      '3-20',
      '3-25',
      '4-20',
      '5-20',
      '5-25',
    ].map((cell) => `ssnm-${cell}`),
    siteSpecific,
  ),
  'ae-pfp': ({ yield_fert_kg_ha, yield_zeroN_kg_ha, N_kg_ha }) => ({
    AE_N: agronomicEfficiency(yield_fert_kg_ha, yield_zeroN_kg_ha, N_kg_ha),
    PFP_N: partialProductivity(yield_fert_kg_ha, N_kg_ha),
  }),
  're-n': ({ uptake_fert, uptake_zero, N_kg_ha }) => ({
    RE_N_pct: recoveryPercent(uptake_fert, uptake_zero, N_kg_ha),
  }),
  'lcc-mean': ({ readings, critical }) => {
    const rule = LEAF_COLOUR_RULES.find((one) => one.critical === critical)!;
    const { mean, belowCritical } = sure(leafColourSuggestion(readings, rule));
    return { mean, below_critical: belowCritical };
  },
  'lcc-critical': () => ({
    light_green_varieties: criticalOf('light-green'),
    other_varieties_and_hybrids: criticalOf('other'),
  }),
  'spad-35': () => ({ threshold: METER_THRESHOLDS[0]!.spad }),
  'depth-volume': ({ depth_mm, area_ha }) => ({ m3: volumeFromDepthM3(depth_mm, area_ha * 10_000) }),
  'depth-volume-plot': ({ depth_mm, length_m, width_m }) => {
    const m3 = sure(volumeFromDepthM3(depth_mm, length_m * width_m));
    return { m3, litres: m3 * 1000 };
  },
  'percolation-doa': () => ({
    well_drained_mm_d: percolation('well drained'),
    poorly_drained_mm_d: percolation('poorly drained'),
  }),
  'awd-threshold': () => ({ reflood_when_water_table_cm_below_surface: -SAFE_RULE.refillAtCm }),
  'water-productivity': ({ yield_kg_ha, water_mm }) => {
    const { kgPerM3, litresPerKg } = sure(waterProductivity(yield_kg_ha, water_mm));
    return { kg_m3: kgPerM3, L_per_kg: litresPerKg };
  },
  'water-productivity-published': () => ({
    total_WP_kg_m3: PUBLISHED_WATER_PRODUCTIVITY.totalKgPerM3,
    irrigation_WP_kg_m3: PUBLISHED_WATER_PRODUCTIVITY.irrigationKgPerM3,
  }),
};
