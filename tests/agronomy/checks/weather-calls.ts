import { sure } from '../../../src/agronomy/fault.ts';
import {
  airPressureKPa,
  meanSaturationKPa,
  psychrometricKPaPerC,
  saturationKPa,
  vapourFromHumidityRangeKPa,
  vapourFromMeanHumidityKPa,
  vapourFromPsychrometerKPa,
  windAt2mMPerS,
} from '../../../src/agronomy/weather/air.ts';
import { CARDINAL_TEMPERATURES } from '../../../src/agronomy/weather/cardinal-temperatures.ts';
import { coefficientInClimate, cropUseMmPerDay } from '../../../src/agronomy/weather/crop-coefficient.ts';
import { hargreavesMmPerDay } from '../../../src/agronomy/weather/hargreaves.ts';
import { hourlyEvapotranspiration } from '../../../src/agronomy/weather/hourly-evapotranspiration.ts';
import {
  netLongwave,
  netRadiation,
  netShortwave,
  soilHeatOfMonth,
  soilHeatSinceLastMonth,
  solarFromSunshine,
  solarFromTemperatures,
} from '../../../src/agronomy/weather/radiation.ts';
import {
  type DayWeather,
  referenceEvapotranspiration,
} from '../../../src/agronomy/weather/reference-evapotranspiration.ts';
import { daylightH, extraterrestrialMJPerM2 } from '../../../src/agronomy/weather/sun.ts';
import {
  celsiusFromFahrenheit,
  degreeDaySum,
  degreeDays,
} from '../../../src/agronomy/weather/thermal-time.ts';
import { type Calls, each, type Given } from './given.ts';

const bothMethods = ({ tmax_c, tmin_c, tbase_c, tupper_c }: Given) => {
  const by = (method: 1 | 2) =>
    degreeDays({ maxC: tmax_c, minC: tmin_c }, { method, baseC: tbase_c, capC: tupper_c ?? undefined });
  return { method1: by(1), method2: by(2) };
};

const week = ({ days_tmax_tmin, tbase_c }: Given, method: 1 | 2) =>
  sure(
    degreeDaySum(
      days_tmax_tmin.map(([maxC, minC]) => ({ maxC, minC })),
      { method, baseC: tbase_c },
    ),
  ).degreeDaysC;

const celsius = (fahrenheit: number) => sure(celsiusFromFahrenheit(fahrenheit));

/** The steps under the paper's symbols, and the result beside them. */
function evaporation(day: DayWeather) {
  const { mmPerDay, steps } = sure(referenceEvapotranspiration(day));
  return { ...steps, P: steps.pressure, N_h: steps.daylightH, ETo: mmPerDay };
}

function hourly(given: Given) {
  const { mmPerHour, steps } = sure(
    hourlyEvapotranspiration({
      latitudeDeg: given.lat_deg,
      longitudeDeg: -given.lon_deg_west,
      zoneLongitudeDeg: -given.zone_lon_deg_west,
      elevationM: given.z_m,
      dayOfYear: given.doy,
      middleH: Number(given.period.slice(0, 2)) + 0.5,
      airC: given.t_c,
      humidityPercent: given.rh,
      windMPerS: given.u2_ms,
      solarMJPerM2: given.Rs,
      clearnessBeforeSunset: given.assumed_Rs_Rso,
    }),
  );
  return { ...steps, omega: steps.hourAngleRad, Rs_Rso: steps.clearness, ETo_mm_h: mmPerHour };
}

const sunAt = ({ lat_deg, doy }: Given) => ({
  Ra_MJ: extraterrestrialMJPerM2(lat_deg, doy),
  daylight_h: daylightH(lat_deg, doy),
});

export const weatherCalls: Calls = {
  ...each(['gdd-1', 'gdd-2', 'gdd-4', 'gdd-5', 'gdd-6', 'gdd-7'], bothMethods),
  'gdd-week-b8': (given) => ({ method1_sum: week(given, 1), method2_sum: week(given, 2) }),
  'gdd-fahrenheit': ({ tmax_f, tmin_f, tbase_f }) =>
    sure(
      degreeDays({ maxC: celsius(tmax_f), minC: celsius(tmin_f) }, { method: 1, baseC: celsius(tbase_f) }),
    ) * 1.8,
  'cardinal-leaf-rice': () => {
    const row = CARDINAL_TEMPERATURES.find(({ use }) => use === 'leaf appearance')!;
    return { tmin: row.baseC, topt: row.optimumC, tmax: row.maximumC };
  },
  'fao-ex2': ({ z_m }) => {
    const pressure = sure(airPressureKPa(z_m));
    return { P_kPa: pressure, gamma: psychrometricKPaPerC(pressure) };
  },
  'fao-ex3': ({ tmax_c, tmin_c }) => ({
    e_tmax: saturationKPa(tmax_c),
    e_tmin: saturationKPa(tmin_c),
    es: meanSaturationKPa(tmax_c, tmin_c),
  }),
  'fao-ex4': ({ z_m, twet_c, tdry_c }) => {
    const pressure = sure(airPressureKPa(z_m));
    return {
      P_kPa: pressure,
      e_twet: saturationKPa(twet_c),
      ea_kPa: vapourFromPsychrometerKPa(tdry_c, twet_c, pressure),
    };
  },
  'fao-ex5': ({ tmax_c, tmin_c, rhmax, rhmin }) => ({
    e_tmin: saturationKPa(tmin_c),
    e_tmax: saturationKPa(tmax_c),
    ea_rhmaxmin: vapourFromHumidityRangeKPa({
      maxC: tmax_c,
      minC: tmin_c,
      maxPercent: rhmax,
      minPercent: rhmin,
    }),
    ea_rhmean: vapourFromMeanHumidityKPa(tmax_c, tmin_c, (rhmax + rhmin) / 2),
  }),
  'fao-ex6': ({ tmax_c, tmin_c, rhmax, rhmin }) => {
    const es = sure(meanSaturationKPa(tmax_c, tmin_c));
    const day = { maxC: tmax_c, minC: tmin_c, maxPercent: rhmax, minPercent: rhmin };
    return { vpd_kPa: es - sure(vapourFromHumidityRangeKPa(day)) };
  },
  'fao-ex9': sunAt,
  'fao-ex10': ({ n_h, N_h, Ra_MJ }) => ({ Rs_MJ: solarFromSunshine(n_h, N_h, Ra_MJ) }),
  'fao-ex11': ({ tmax_c, tmin_c, ea_kPa, Rs_MJ, Rso_MJ }) => ({
    Rnl_MJ: netLongwave({ maxC: tmax_c, minC: tmin_c, vapourKPa: ea_kPa, clearness: Rs_MJ / Rso_MJ }),
  }),
  'fao-ex12': ({ Rs_MJ, Rnl_MJ }) => {
    const Rns_MJ = sure(netShortwave(Rs_MJ));
    return { Rns_MJ, Rn_MJ: netRadiation(Rns_MJ, Rnl_MJ) };
  },
  'fao-ex13': ({ t_march, t_may }) => ({ G_MJ: soilHeatOfMonth(t_march, t_may) }),
  'fao-ex14': ({ uz_ms, z_m }) => ({ u2_ms: windAt2mMPerS(uz_ms, z_m) }),
  'fao-ex15': ({ lat_deg, doy, tmax_c, tmin_c, kRs }) => {
    const Ra_MJ = sure(extraterrestrialMJPerM2(lat_deg, doy));
    return { Ra_MJ, Rs_MJ: solarFromTemperatures(tmax_c, tmin_c, Ra_MJ, kRs) };
  },
  'fao-ex17': (given) =>
    evaporation({
      latitudeDeg: given.lat_deg,
      elevationM: given.z_m,
      dayOfYear: given.doy,
      maxC: given.tmax_c,
      minC: given.tmin_c,
      moisture: { vapourKPa: given.ea_kPa },
      wind: { mPerS: given.u2_ms, heightM: 2 },
      sun: { sunshineH: given.n_h },
      soilHeatMJPerM2: sure(soilHeatSinceLastMonth(given.t_prev_month_c, given.t_month_c)),
    }),
  'fao-ex18': (given) =>
    evaporation({
      latitudeDeg: given.lat_deg,
      elevationM: given.z_m,
      dayOfYear: given.doy,
      maxC: given.tmax_c,
      minC: given.tmin_c,
      moisture: { maxPercent: given.rhmax, minPercent: given.rhmin },
      wind: { mPerS: given.wind_kmh_at_10m / 3.6, heightM: 10 },
      sun: { sunshineH: given.n_h },
    }),
  'fao-ex19-night': hourly,
  'fao-ex19-day': hourly,
  'fao-ex20': ({ lat_deg, z_m, doy, tmax_c, tmin_c }) =>
    evaporation({ latitudeDeg: lat_deg, elevationM: z_m, dayOfYear: doy, maxC: tmax_c, minC: tmin_c }),
  'fao-hargreaves': ({ lat_deg, doy, tmax_c, tmin_c }) => ({
    ETo_mm_d: hargreavesMmPerDay({ latitudeDeg: lat_deg, dayOfYear: doy, maxC: tmax_c, minC: tmin_c }),
  }),
  ...each(['ra-14-105', 'ra-14-196', 'ra-14-288', 'ra-0-81'], sunAt),
  'etc-mid': ({ ETo, Kc }) => ({ ETc: cropUseMmPerDay(ETo, Kc) }),
  ...each(
    ['kcmid-adj-u2-rh45', 'kcmid-adj-u1-rh80', 'kcmid-adj-u5-rh20', 'kcmid-adj-u2-rh60'],
    ({ Kc_table, u2, RHmin, h_m }) => ({
      Kc_mid: coefficientInClimate(Kc_table, { windMPerS: u2, minHumidityPercent: RHmin, cropHeightM: h_m }),
    }),
  ),
};
