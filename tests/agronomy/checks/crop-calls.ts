import { sure } from '../../../src/agronomy/fault.ts';
import { cropCutYield } from '../../../src/agronomy/harvest/crop-cut.ts';
import { harvestIndex, yieldPerDayKgPerHa } from '../../../src/agronomy/harvest/harvest-index.ts';
import { moistureFactor } from '../../../src/agronomy/harvest/moisture.ts';
import { yieldFromComponents } from '../../../src/agronomy/harvest/yield-components.ts';
import { BBCH_RICE, bbchPrincipal } from '../../../src/agronomy/stages/bbch-rice.ts';
import { bbchOfFieldWords } from '../../../src/agronomy/stages/field-words.ts';
import { phaseDays } from '../../../src/agronomy/stages/phase-rules.ts';
import { SES_STAGES } from '../../../src/agronomy/stages/stage-scales.ts';
import {
  establishmentPercent,
  STAND_MINIMA,
  seedsPerM2,
} from '../../../src/agronomy/stand/direct-seeding.ts';
import { harvestAreaVerdict } from '../../../src/agronomy/stand/harvest-area.ts';
import { hillsPerM2, missingHillsPercent } from '../../../src/agronomy/stand/hills.ts';
import { REPLANT_RULES } from '../../../src/agronomy/stand/replant-window.ts';
import { standSurvey } from '../../../src/agronomy/stand/stand-survey.ts';
import { type Calls, each, type Given } from './given.ts';

/** Every wording of a description must lead to the code: `panicle initiation / green ring (x)`. */
function stageCode({ field_description }: Given): unknown {
  const words = field_description.split(/ \/ |, | \(|\)/).filter((part) => part && part !== 'pre-boot');
  const codes = new Set(
    words.map((part) => sure(bbchOfFieldWords(part))).map(({ from, to }) => `${from}-${to}`),
  );
  const narrowest = [...codes].filter((code) => code.slice(0, 2) === code.slice(3));
  return narrowest.length === 1 ? narrowest[0]!.slice(0, 2) : [...codes];
}

const described = [
  '30',
  '32',
  '34',
  '39',
  '45',
  '51',
  '55',
  '59',
  '61',
  '65',
  '69',
  '71',
  '75',
  '85',
  '99',
  '29',
  '21',
  '07',
];

const yoshida = ({ grain_t_ha, total_dm_t_ha, duration_d, nursery_d }: Given) => ({
  harvest_index: harvestIndex(grain_t_ha, total_dm_t_ha),
  kg_ha_day_main_field: yieldPerDayKgPerHa(grain_t_ha, duration_d, nursery_d),
});

const ruleNamed = (name: string) => REPLANT_RULES.find((rule) => rule.name === name)!;

export const cropCalls: Calls = {
  'bbch-rice-code-list': () => ({ codes: [...BBCH_RICE.keys()].sort(), count: BBCH_RICE.size }),
  ...each(
    described.map((code) => `bbch-${code}`),
    stageCode,
  ),
  'bbch-principal': ({ code }) => bbchPrincipal(code),
  'phase-ir64': ({ total_days }) => ({
    vegetative_days: sure(phaseDays(total_days, 'IRRI guide')).vegetative,
  }),
  'phase-yoshida120': ({ total_days }) => phaseDays(total_days, 'Yoshida'),
  'phase-brridhan29': ({ total_days }) => phaseDays(total_days, 'BRRI slides'),
  'ses-stage-codes': () => SES_STAGES,
  ...each(
    ['hills-20x20', 'hills-20x10', 'hills-25x25', 'hills-30x18', 'hills-30x21'],
    ({ row_cm, plant_cm }) => ({ hills_per_m2: hillsPerM2({ rowCm: row_cm, hillCm: plant_cm }) }),
  ),
  'missing-hills': ({ expected_hills, present_hills }) => ({
    missing_pct: missingHillsPercent(expected_hills, present_hills),
  }),
  'missing-hills-harvest-limit': ({ reduction_of_hills_in_harvest_area_pct }) =>
    sure(harvestAreaVerdict(reduction_of_hills_in_harvest_area_pct)).words,
  'replant-window': () => ({
    philrice_max_days: ruleNamed('PhilRice').toDays,
    tnau_days: [ruleNamed('TNAU').fromDays, ruleNamed('TNAU').toDays],
    rkmp_drr: sentenceOf(ruleNamed('RKMP-DRR')),
  }),
  'stand-3-quadrats': ({ counts_1m2 }) => ({ mean_hills_m2: sure(standSurvey(counts_1m2)).mean }),
  'dwsr-min': () => ({
    min_plants_m2_15DAS: STAND_MINIMA.filter(({ source }) => /PalayCheck/.test(source)).map(
      (row) => row.plantsPerM2,
    ),
  }),
  'establishment-pct': ({ seed_rate_kg_ha, tgw_g, plants_m2 }) => ({
    seeds_m2: seedsPerM2(seed_rate_kg_ha, tgw_g),
    establishment_pct: establishmentPercent({
      rateKgPerHa: seed_rate_kg_ha,
      thousandGrainG: tgw_g,
      plantsPerM2: plants_m2,
    }),
  }),
  'yield-components': ({ panicles_m2, spikelets_panicle, filled_fraction, tgw_g }) => {
    const { gPerM2, tPerHa } = sure(
      yieldFromComponents({
        paniclesPerM2: panicles_m2,
        spikeletsPerPanicle: spikelets_panicle,
        filledFraction: filled_fraction,
        thousandGrainG: tgw_g,
      }),
    );
    return { g_m2: gPerM2, t_ha: tPerHa };
  },
  'moisture-14': ({ fresh_kg, moisture_pct, area_m2 }) => {
    const cut = sure(cropCutYield({ grainKg: fresh_kg, moisturePercent: moisture_pct, areaM2: area_m2 }));
    return { kg_at_14: cut.kgAt14, t_ha: cut.tPerHa };
  },
  ...each(
    [10, 14, 18, 20, 22].map((percent) => `moisture-factor-${percent}`),
    ({ moisture_pct }) => ({ factor: moistureFactor(moisture_pct) }),
  ),
  ...each(
    [
      'yoshida16-IR747B2-6-3-wet-bed-10x10',
      'yoshida16-IR747B2-6-3-wet-bed-20x20',
      'yoshida16-IR747B2-6-3-direct-20x20',
      'yoshida16-IR154-18-2-1-wet-bed-10x10',
      'yoshida16-IR154-18-2-1-direct-20x20',
      'yoshida16-IR8-wet-bed-20x20',
    ],
    yoshida,
  ),
  'hi-basis': ({ grain_t_ha_14pct, total_dm_t_ha }) => ({
    HI_dry_grain: harvestIndex(grain_t_ha_14pct, total_dm_t_ha),
    HI_wrong_mixed_basis: grain_t_ha_14pct / total_dm_t_ha,
  }),
};

/** Days of the rule brought into the words of the check. */
function sentenceOf({ toDays, againDays }: (typeof REPLANT_RULES)[number]): string {
  return `${toDays / 7} week after planting and again ${againDays! - toDays} days later`;
}
