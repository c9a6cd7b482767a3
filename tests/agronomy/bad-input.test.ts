/** Whatever is typed in: an answer in numbers, or words. Never NaN, never an exception. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as cropDay from '../../src/agronomy/crop-day.ts';
import { isFault } from '../../src/agronomy/fault.ts';
import * as areaError from '../../src/agronomy/geometry/area-error.ts';
import * as geodesic from '../../src/agronomy/geometry/geodesic-area.ts';
import * as cropCut from '../../src/agronomy/harvest/crop-cut.ts';
import * as harvestIndex from '../../src/agronomy/harvest/harvest-index.ts';
import * as moisture from '../../src/agronomy/harvest/moisture.ts';
import * as components from '../../src/agronomy/harvest/yield-components.ts';
import * as lodgingIndex from '../../src/agronomy/lodging/lodging-index.ts';
import * as lodgedPercent from '../../src/agronomy/lodging/lodging-percent.ts';
import { lodgingScore } from '../../src/agronomy/lodging/lodging-scales.ts';
import * as meter from '../../src/agronomy/nutrients/chlorophyll-meter.ts';
import * as efficiency from '../../src/agronomy/nutrients/efficiency.ts';
import { LEAF_COLOUR_RULES, leafColourSuggestion } from '../../src/agronomy/nutrients/leaf-colour.ts';
import * as oxides from '../../src/agronomy/nutrients/oxides.ts';
import * as portion from '../../src/agronomy/nutrients/portion.ts';
import * as productRate from '../../src/agronomy/nutrients/product-rate.ts';
import { FERTILISERS } from '../../src/agronomy/nutrients/products.ts';
import { productsForTargets } from '../../src/agronomy/nutrients/products-for-targets.ts';
import { siteSpecificNKgPerHa } from '../../src/agronomy/nutrients/site-specific-n.ts';
import { splitRate } from '../../src/agronomy/nutrients/splits.ts';
import * as preHarvest from '../../src/agronomy/pesticide/pre-harvest.ts';
import * as reentry from '../../src/agronomy/pesticide/re-entry.ts';
import * as whoClass from '../../src/agronomy/pesticide/who-class.ts';
import { ACTION_THRESHOLDS } from '../../src/agronomy/pests/action-thresholds.ts';
import { againstThreshold } from '../../src/agronomy/pests/against-threshold.ts';
import * as indices from '../../src/agronomy/pests/disease-indices.ts';
import { sesScore } from '../../src/agronomy/pests/ses-score.ts';
import { SES_TRAITS } from '../../src/agronomy/pests/ses-traits.ts';
import { testIsValid } from '../../src/agronomy/pests/test-validity.ts';
import * as cutTillers from '../../src/agronomy/rodents/cut-tillers.ts';
import * as trapping from '../../src/agronomy/rodents/trapping.ts';
import * as ratLoss from '../../src/agronomy/rodents/yield-loss-from-rats.ts';
import * as phases from '../../src/agronomy/stages/phase-rules.ts';
import * as directSeeding from '../../src/agronomy/stand/direct-seeding.ts';
import { harvestAreaVerdict } from '../../src/agronomy/stand/harvest-area.ts';
import * as hills from '../../src/agronomy/stand/hills.ts';
import { refillNeed } from '../../src/agronomy/stand/refill-need.ts';
import { replantWindow } from '../../src/agronomy/stand/replant-window.ts';
import { standSurvey } from '../../src/agronomy/stand/stand-survey.ts';
import { blockAnalysis } from '../../src/agronomy/statistics/block-analysis.ts';
import { describe as describeValues } from '../../src/agronomy/statistics/describe.ts';
import * as distributions from '../../src/agronomy/statistics/distributions.ts';
import { oneWayAnalysis } from '../../src/agronomy/statistics/one-way-analysis.ts';
import * as tTests from '../../src/agronomy/statistics/t-tests.ts';
import { TRANSFORMATIONS } from '../../src/agronomy/statistics/transformations.ts';
import * as depthVolume from '../../src/agronomy/water/depth-volume.ts';
import { dropSplit } from '../../src/agronomy/water/drop-split.ts';
import { leakingPlots } from '../../src/agronomy/water/leaking-plots.ts';
import * as wetting from '../../src/agronomy/water/safe-wetting-drying.ts';
import * as ledger from '../../src/agronomy/water/water-ledger.ts';
import { waterProductivity } from '../../src/agronomy/water/water-productivity.ts';
import * as air from '../../src/agronomy/weather/air.ts';
import * as coefficient from '../../src/agronomy/weather/crop-coefficient.ts';
import { hargreavesMmPerDay } from '../../src/agronomy/weather/hargreaves.ts';
import { hourlyEvapotranspiration } from '../../src/agronomy/weather/hourly-evapotranspiration.ts';
import * as radiation from '../../src/agronomy/weather/radiation.ts';
import { referenceEvapotranspiration } from '../../src/agronomy/weather/reference-evapotranspiration.ts';
import * as sun from '../../src/agronomy/weather/sun.ts';
import * as thermal from '../../src/agronomy/weather/thermal-time.ts';
import * as sprayer from '../../src/agronomy/weeds/sprayer.ts';
import * as tank from '../../src/agronomy/weeds/tank-mix.ts';
import * as weeds from '../../src/agronomy/weeds/weed-counts.ts';
import { weedFreePeriodsOn } from '../../src/agronomy/weeds/weed-free-periods.ts';
import * as labour from '../../src/agronomy/weeds/weeding-labour.ts';

type Numbers = [number, number, number, number, number, number];
type Call = (...numbers: Numbers) => unknown;

const on = '2024-06-10';
const calls: Record<string, Call> = {
  'days to add': (a) => cropDay.dayPlus(on, a),
  'air pressure': (a) => air.airPressureKPa(a),
  'psychrometric constant': (a) => air.psychrometricKPaPerC(a),
  saturation: (a) => air.saturationKPa(a),
  'mean saturation': (a, b) => air.meanSaturationKPa(a, b),
  slope: (a) => air.slopeKPaPerC(a),
  'dew point': (a) => air.vapourFromDewPointKPa(a),
  psychrometer: (a, b, c) => air.vapourFromPsychrometerKPa(a, b, c),
  'humidity range': (a, b, c, d) =>
    air.vapourFromHumidityRangeKPa({ maxC: a, minC: b, maxPercent: c, minPercent: d }),
  'mean humidity': (a, b, c) => air.vapourFromMeanHumidityKPa(a, b, c),
  'wind at 2 m': (a, b) => air.windAt2mMPerS(a, b),
  'sun distance': (a) => sun.sunDistance(a),
  declination: (a) => sun.declinationRad(a),
  'sunset angle': (a, b) => sun.sunsetAngleRad(a, b),
  daylight: (a, b) => sun.daylightH(a, b),
  'radiation above the air': (a, b) => sun.extraterrestrialMJPerM2(a, b),
  'sun of an hour': (a, b, c, d, e, f) =>
    sun.sunOfHour({
      latitudeDeg: a,
      longitudeDeg: b,
      zoneLongitudeDeg: c,
      dayOfYear: d,
      middleH: e,
      lengthH: f,
    }),
  sunshine: (a, b, c) => radiation.solarFromSunshine(a, b, c),
  'sun from temperatures': (a, b, c, d) => radiation.solarFromTemperatures(a, b, c, d),
  'clear sky': (a, b) => radiation.clearSky(a, b),
  shortwave: (a) => radiation.netShortwave(a),
  longwave: (a, b, c, d) => radiation.netLongwave({ maxC: a, minC: b, vapourKPa: c, clearness: d }),
  'longwave of an hour': (a, b, c) => radiation.netLongwaveOfHour(a, b, c),
  'net radiation': (a, b) => radiation.netRadiation(a, b),
  'soil heat': (a, b) => [
    radiation.soilHeatOfMonth(a, b),
    radiation.soilHeatSinceLastMonth(a, b),
    radiation.soilHeatOfHour(a, b > 0),
  ],
  'evapotranspiration, temperatures only': (a, b, c, d, e) =>
    referenceEvapotranspiration({ latitudeDeg: a, elevationM: b, dayOfYear: c, maxC: d, minC: e }),
  'evapotranspiration, sunshine and wind': (a, b, c, d, e, f) =>
    referenceEvapotranspiration({
      latitudeDeg: a,
      elevationM: 20,
      dayOfYear: 150,
      maxC: b,
      minC: c,
      moisture: { meanPercent: d },
      wind: { mPerS: e, heightM: 2 },
      sun: { sunshineH: f },
    }),
  'evapotranspiration, radiation and humidity': (a, b, c, d, e, f) =>
    referenceEvapotranspiration({
      latitudeDeg: 14,
      elevationM: a,
      dayOfYear: 150,
      maxC: 34,
      minC: 24,
      moisture: { maxPercent: b, minPercent: c },
      wind: { mPerS: 2, heightM: d },
      sun: { solarMJPerM2: e },
      soilHeatMJPerM2: f,
    }),
  'evapotranspiration, vapour': (a, b) => [
    referenceEvapotranspiration({
      latitudeDeg: 14,
      elevationM: 5,
      dayOfYear: 150,
      maxC: 34,
      minC: 24,
      moisture: { vapourKPa: a },
    }),
    referenceEvapotranspiration({
      latitudeDeg: 14,
      elevationM: 5,
      dayOfYear: 150,
      maxC: 34,
      minC: 24,
      moisture: { dewPointC: b },
    }),
  ],
  'evapotranspiration of an hour': (a, b, c, d, e, f) =>
    hourlyEvapotranspiration({
      latitudeDeg: a,
      longitudeDeg: 121,
      zoneLongitudeDeg: 120,
      elevationM: b,
      dayOfYear: 150,
      middleH: c,
      airC: d,
      humidityPercent: e,
      windMPerS: 2,
      solarMJPerM2: f,
    }),
  hargreaves: (a, b, c, d) => hargreavesMmPerDay({ latitudeDeg: a, dayOfYear: b, maxC: c, minC: d }),
  'crop use': (a, b) => coefficient.cropUseMmPerDay(a, b),
  'coefficient in climate': (a, b, c, d) =>
    coefficient.coefficientInClimate(a, { windMPerS: b, minHumidityPercent: c, cropHeightM: d }),
  'coefficient on a day': (a, b, c, d, e) =>
    coefficient.coefficientOnDay(
      a,
      { initialDays: b, developmentDays: c, midDays: d, lateDays: e },
      { initial: 1.05, mid: 1.2, end: 0.9 },
    ),
  'degree days': (a, b, c, d) => [
    thermal.degreeDays({ maxC: a, minC: b }, { method: 1, baseC: c, capC: d }),
    thermal.degreeDays({ maxC: a, minC: b }, { method: 2, baseC: c }),
    thermal.degreeDaySum(
      [
        { maxC: 30, minC: 20 },
        { maxC: a, minC: b },
      ],
      { method: 2, baseC: c },
    ),
  ],
  fahrenheit: (a) => thermal.celsiusFromFahrenheit(a),
  phases: (a) => [
    phases.phaseDays(a, 'Yoshida'),
    phases.phaseDates(on, a, 'IRRI guide'),
    phases.panicleInitiationByRule(on, a),
  ],
  hills: (a, b, c) => [
    hills.hillsPerM2({ rowCm: a, hillCm: b }),
    hills.expectedHills(c, { rowCm: a, hillCm: b }),
    hills.missingHillsPercent(a, b),
    hills.shareOfHillsPercent(a, b),
  ],
  refill: (a, b, c, d) => refillNeed({ expected: a, present: b, seedlingsPerHill: c, sparePercent: d }),
  'replant window': (a, b, c) =>
    replantWindow(on, { name: 'own', fromDays: a, toDays: b, againDays: c, source: 'own' }),
  survey: (a, b, c) => standSurvey([a, b], c),
  'harvest area': (a) => harvestAreaVerdict(a),
  'direct seeding': (a, b, c) => [
    directSeeding.seedsPerM2(a, b),
    directSeeding.establishmentPercent({ rateKgPerHa: a, thousandGrainG: b, plantsPerM2: c }),
    directSeeding.plantsPerM2FromRow(a, b, c),
  ],
  oxides: (a) => [oxides.pFromP2o5Kg(a), oxides.p2o5FromPKg(a), oxides.kFromK2oKg(a), oxides.k2oFromKKg(a)],
  'product rate': (a, b) => [
    productRate.productFromNutrientKg(a, b),
    productRate.nutrientFromProductKg(a, b),
  ],
  portions: (a, b, c) => [
    portion.portionG(a, b),
    portion.stripPortions(a, b, c),
    portion.bagsFor(a, b, c),
    portion.rateFromPortionKgPerHa(a, b),
  ],
  'products for targets': (a, b, c) =>
    productsForTargets(
      { nKgPerHa: a, p2o5KgPerHa: b, k2oKgPerHa: c },
      { nitrogen: FERTILISERS[0]!, phosphorus: FERTILISERS[3]!, potassium: FERTILISERS[7]! },
    ),
  splits: (a, b, c) =>
    splitRate(a, [
      { when: 'early', sharePercent: b },
      { when: 'late', sharePercent: c },
    ]),
  efficiency: (a, b, c) => [
    efficiency.agronomicEfficiency(a, b, c),
    efficiency.partialProductivity(a, c),
    efficiency.recoveryPercent(a, b, c),
  ],
  'site-specific nitrogen': (a, b) => siteSpecificNKgPerHa(a, b),
  'leaf colour': (a, b, c, d) =>
    leafColourSuggestion([a, b], { ...LEAF_COLOUR_RULES[0]!, critical: c, nKgPerHa: d }),
  'chlorophyll meter': (a, b, c) => [
    meter.meterReading([a, b], { spad: c, holdsFor: 'own', source: 'own' }),
    meter.sufficiencyPercent([a], [b]),
  ],
  'depth and volume': (a, b, c) => [
    depthVolume.volumeFromDepthM3(a, b),
    depthVolume.depthFromVolumeMm(a, b),
    depthVolume.inflowHours(a, b, c),
  ],
  'water ledger': (a, b, c, d, e, f) => [
    ledger.waterLedger(a, b, [{ on, irrigationMm: c, rainMm: d, cropUseMm: e, lossMm: f }]),
    ledger.dailyNeedMm(a, b, c),
  ],
  'drop split': (a, b, c, d, e, f) =>
    dropSplit({ startMm: a, endMm: b, days: c, rainMm: d, irrigationMm: e, cropUseMmPerDay: f }),
  'leaking plots': (a, b, c, d, e) =>
    leakingPlots(
      [a, b, c].map((lossMmPerDay, index) => ({ plot: String(index), lossMmPerDay })),
      d,
      e,
    ),
  'wetting and drying': (a, b, c) => [
    wetting.wettingDryingAdvice(
      { plantedOn: '2024-05-01' },
      { on, levelCm: a },
      { ...wetting.SAFE_RULE, refillAtCm: b, fillToCm: c },
    ),
    wetting.tubeFall({ on: '2024-06-05', levelCm: a }, { on, levelCm: b }, c),
  ],
  'water productivity': (a, b) => waterProductivity(a, b),
  'weed counts': (a, b, c, d) => [
    weeds.weedCover([a, b]),
    weeds.weedDensity([a, b], c),
    weeds.weedControlPercent(a, b),
    weeds.coverClass(a),
    weeds.coverOverAreas([
      { areaM2: a, coverPercent: b },
      { areaM2: c, coverPercent: d },
    ]),
  ],
  'weed-free periods': (a) => weedFreePeriodsOn(a, 'sowing'),
  weeding: (a, b, c, d, e, f) => [
    labour.hoursPerHa(a),
    labour.personDaysPerHa(a),
    labour.weedingHours(a, b),
    labour.weedingChoice(
      { areaM2: a, infestedPercent: b, hoursPerHaOfSpots: c, swathM: d, walkKmPerH: e },
      f,
    ),
  ],
  sprayer: (a, b, c) => [
    sprayer.paceKmPerH(a, b),
    sprayer.sprayVolumeLPerHa(a, b, c),
    sprayer.sprayedM2PerMin(a, b),
    sprayer.volumeFromStripLPerHa(a, b, c),
    sprayer.litresOnStrip(a, b),
  ],
  'tank mix': (a, b, c, d) => [
    tank.tankDose(a, b, c),
    tank.mixForPlot(d, { tankL: a, volumeLPerHa: b, dosePerHa: c }),
  ],
  'cut tillers': (a, b, c, d) => [
    cutTillers.cutTillersPercent(a, b),
    cutTillers.stratifiedPercent([
      { weight: a, percent: b },
      { weight: c, percent: d },
    ]),
    cutTillers.cutTillersByStrata([
      { name: 'edge', areaM2: a, cut: b, uncut: c },
      { name: 'interior', areaM2: d, cut: b, uncut: c },
    ]),
  ],
  'losses to rats': (a) => [
    ratLoss.seasonDamageFromRipeningCount(a),
    ratLoss.yieldLossFromRipeningCount(a),
    ratLoss.yieldLossKgPerHaFromCutTillers(a),
  ],
  trapping: (a, b, c, d) => [
    trapping.trapSuccess(a, b, c),
    trapping.trapSuccess(a, b, c, d),
    trapping.activeBurrowsPerHa(a, b),
    trapping.barrierReachHa(a),
  ],
  lodging: (a, b, c, d) => [
    lodgedPercent.lodgedPercent(a, b),
    lodgingIndex.lodgingIndex({ lengthCm: a, freshWeightG: b, breakingLoadG: c, fulcrumCm: d }),
    lodgingIndex.stemLodgingSharePercent(a, b),
    lodgingScore('SES culm strength', a),
  ],
  'SES scores': (a) => SES_TRAITS.map(({ name }) => sesScore(name, a)),
  'disease indices': (a, b, c, d, e) => [
    indices.panicleBlastSeverity({ 1: a, 3: b }, c),
    indices.tungroIndex({ 3: a, 9: b }, c),
    indices.sheathBlightSeverity([a, b, d, e]),
  ],
  thresholds: (a) => [againstThreshold(a, 'per hill', ACTION_THRESHOLDS[4]!), testIsValid('dead heart', a)],
  're-entry': (a, b) => [
    reentry.reentryHours({ labelHours: a }),
    reentry.mixtureReentryHours([a, b]),
    reentry.reentryFrom('2024-03-10T06:30', a),
  ],
  'pre-harvest': (a, b) => [
    preHarvest.earliestHarvestOn(on, a),
    preHarvest.harvestNotBeforeHours(a, b),
    preHarvest.harvestAfterAll([
      { product: 'x', appliedAt: '2024-03-10T06:30', reentryHours: a, preHarvestDays: b },
    ]),
  ],
  'WHO class': (a) => [whoClass.whoClass2009(a), whoClass.whoClassBefore2009(a, 'liquid')],
  harvest: (a, b, c, d) => [
    moisture.moistureFactor(a),
    moisture.weightAt14(a, b),
    moisture.weightAtMoisture(a, b),
    cropCut.cropCutYield({ grainKg: a, moisturePercent: b, areaM2: c }),
    cropCut.meanCropCutYield([{ grainKg: a, moisturePercent: b, areaM2: c }]),
    components.yieldFromComponents({
      paniclesPerM2: a,
      spikeletsPerPanicle: b,
      filledFraction: c,
      thousandGrainG: d,
    }),
    components.filledFraction(a, b),
    harvestIndex.harvestIndex(a, b),
    harvestIndex.yieldPerDayKgPerHa(a, b, c),
  ],
  statistics: (a, b, c, d, e, f) => [
    describeValues([a, b, c]),
    distributions.tTwoSidedP(a, b),
    distributions.tCritical(a, b),
    distributions.fUpperP(a, b, c),
    distributions.fCritical(a, b, c),
    tTests.pairedTTest([a, b, c], [d, e, f]),
    tTests.welchTTest([a, b, c], [d, e, f]),
    tTests.pooledTTest([a, b, c], [d, e, f]),
    ...TRANSFORMATIONS.flatMap(({ apply, back }) => [apply(a), back(a)]),
    oneWayAnalysis([a, b, c, d].map((value, index) => ({ treatment: String(index % 2), value }))),
  ],
  geometry: (a, b, c, d, e, f) => [
    areaError.areaError(
      [
        { eastM: a, northM: b },
        { eastM: c, northM: d },
        { eastM: e, northM: f },
      ],
      3,
    ),
    areaError.rectangleAreaError(a, b, c),
    geodesic.geodesicArea([
      { latitude: a, longitude: b },
      { latitude: c, longitude: d },
      { latitude: e, longitude: f },
    ]),
    geodesic.geodesicDistance({ latitude: a, longitude: b }, { latitude: c, longitude: d }),
  ],
};

const odd = fc.constantFrom(
  0,
  -0,
  1,
  2,
  5,
  14,
  25,
  100,
  140,
  -3,
  0.5,
  1e-9,
  1e9,
  365,
  Number.NaN,
  Infinity,
  -Infinity,
);
const typed = fc.oneof(odd, fc.double({ min: -50, max: 400, noNaN: true }), fc.integer({ min: 0, max: 100 }));

describe.each(Object.entries(calls))('%s', (_, call) => {
  test('answers in numbers or in words', () => {
    fc.assert(
      fc.property(fc.tuple(typed, typed, typed, typed, typed, typed), (numbers) => {
        expect(unsound(call(...numbers))).toEqual([]);
      }),
      { numRuns: 150 },
    );
  });

  test('says in words that NaN is no number', () => {
    const results = [call(Number.NaN, Number.NaN, Number.NaN, Number.NaN, Number.NaN, Number.NaN)].flat();
    expect(results.filter((result) => !isFault(result))).toEqual([]);
  });
});

test('block analysis refuses a value that is no number', () => {
  const plots = ['a', 'b'].flatMap((treatment) =>
    ['1', '2'].map((block) => ({ treatment, block, value: treatment === 'a' ? Number.NaN : 3 })),
  );
  expect(blockAnalysis(plots)).toHaveProperty('fault');
});

/** Paths to numbers that are none, and to faults without words. */
function unsound(value: unknown, path = 'result'): string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [`${path} is ${value}`];
  if (typeof value !== 'object' || value === null) return [];
  if (isFault(value)) return value.fault.length > 10 ? [] : [`${path} has no words`];
  return Object.entries(value).flatMap(([key, inner]) =>
    key === 'band' || key === 'threshold' ? [] : unsound(inner, `${path}.${key}`),
  );
}
