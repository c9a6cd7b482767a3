/** PURE. When a crop is expected to reach each stage, from its sowing date and its days to maturity. */
import { Temporal } from 'temporal-polyfill';
import type { Stage } from '../reading/record.ts';

export interface CropDates {
  /** From sowing to maturity. */
  daysToMaturity: number | null;
  sownOn: string | null;
  plantedOn: string | null;
}

export interface ExpectedStage {
  stage: Stage;
  /** First day, `YYYY-MM-DD`. */
  from: string;
  /** Last day. */
  to: string;
}

/**
 * Days before maturity on which a stage begins. Panicle initiation to flowering 35 days and ripening 30 days: IRRI
 * growth-stage guide, counted to flowering. Yoshida 1981 p. 1 gives 30 days to heading instead; the
 * days between are common practice.
 */
const BEFORE_MATURITY: readonly [Stage, number][] = [
  ['panicle_initiation', 65],
  ['stem_elongation', 57],
  ['booting', 48],
  ['heading', 35],
  ['flowering', 30],
  ['milk', 22],
  ['dough', 14],
  ['ripe', 4],
];

/** A seedling stands until about its fifth leaf, 20 days after sowing, or until it is planted (IRRI growth-stage guide). */
const SEEDLING_DAYS = 20;
const EMERGENCE_DAYS = 5;

/** Stages in order without gaps; none where the sowing date or the days to maturity are not known. */
export function expectedStages({ daysToMaturity, sownOn, plantedOn }: CropDates): ExpectedStage[] {
  if (!daysToMaturity || !sownOn) return [];
  const sown = Temporal.PlainDate.from(sownOn);
  const maturity = sown.add({ days: daysToMaturity });
  const tillering = plantedOn ? Temporal.PlainDate.from(plantedOn) : sown.add({ days: SEEDLING_DAYS });
  const starts: [Stage, Temporal.PlainDate][] = [
    ['germination', sown],
    ['seedling', sown.add({ days: EMERGENCE_DAYS })],
    ['tillering', tillering],
    ...BEFORE_MATURITY.map(([stage, days]): [Stage, Temporal.PlainDate] => [
      stage,
      maturity.subtract({ days }),
    ]),
  ];
  return starts.map(([stage, from], index) => ({
    stage,
    from: from.toString(),
    to: (starts[index + 1]?.[1].subtract({ days: 1 }) ?? maturity.add({ days: 7 })).toString(),
  }));
}

/** `33 DAT`, or `33 DAS` for a sown crop; null before and where no date is known. */
export function cropAge(
  { sownOn, plantedOn }: Pick<CropDates, 'sownOn' | 'plantedOn'>,
  day: string,
): string | null {
  const since = (from: string): number =>
    Temporal.PlainDate.from(from).until(day, { largestUnit: 'days' }).days;
  if (plantedOn && since(plantedOn) >= 0) return `${since(plantedOn)} DAT`;
  return sownOn && since(sownOn) >= 0 ? `${since(sownOn)} DAS` : null;
}
