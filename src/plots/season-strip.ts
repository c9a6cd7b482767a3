/** PURE. The season of one plot on a line: expected stages, stages as seen, work done and due, today. */
import { Temporal } from 'temporal-polyfill';
import type { Stage } from '../reading/record.ts';
import { type CropDates, type ExpectedStage, expectedStages } from './expected-stages.ts';

export interface StripMark {
  day: string;
  kind: 'done' | 'due' | 'problem';
  words: string;
}

export interface Strip {
  /** First and last day of the band. */
  from: string;
  to: string;
  /** Null where today lies outside the band. */
  today: string | null;
  expected: ExpectedStage[];
  observed: { stage: Stage; day: string }[];
  marks: StripMark[];
}

/** Null where nothing is known that a band could be drawn from. */
export function seasonStrip(
  crop: CropDates | null,
  observed: { stage: Stage; day: string }[],
  marks: StripMark[],
  today: string,
): Strip | null {
  const expected = crop ? expectedStages(crop) : [];
  const days = [
    ...expected.flatMap(({ from, to }) => [from, to]),
    ...observed.map(({ day }) => day),
    ...marks.map(({ day }) => day),
    ...[crop?.sownOn, crop?.plantedOn].filter((day): day is string => !!day),
  ].sort();
  const from = crop?.sownOn ?? crop?.plantedOn ?? days[0];
  const last = days.at(-1);
  if (!from || !last) return null;
  const to = last > from ? last : Temporal.PlainDate.from(from).add({ days: 1 }).toString();
  const within = ({ day }: { day: string }): boolean => day >= from && day <= to;
  return {
    from,
    to,
    today: within({ day: today }) ? today : null,
    expected,
    observed: observed.filter(within).sort((a, b) => a.day.localeCompare(b.day)),
    marks: marks.filter(within).sort((a, b) => a.day.localeCompare(b.day)),
  };
}
