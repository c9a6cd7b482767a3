/**
 * Green cover over time as a line of points. Places along it are percentages, so that one drawing fits every width and
 * its letters keep their size; the same in words beside it.
 */
import type { CoverPoint } from '../diary/canopy.ts';
import type { CoverBeside } from '../diary/cover-beside.ts';
import { addDays, daysBetween } from '../followups/days.ts';
import { sayDay } from '../reading/say-fact.ts';
import { escapeXml } from './escape-xml.ts';

const TOP = 14;
const BASE = 174;
const HEIGHT = 204;

export function coverLineSvg(cover: CoverBeside): string {
  const days = [cover, ...cover.sisters].flatMap(({ points }) => points.map(({ day }) => day)).sort();
  const [from, to] = spanOf(days[0]!, days.at(-1)!);
  const along = (day: string): number => 9 + round((88 * daysBetween(from, day)) / daysBetween(from, to));
  const parts = [
    ...[0, 50, 100].map(level),
    ...cover.sisters.map(({ points }) => line(points, along, 'sister')),
    line(cover.points, along, 'own'),
    ...cover.points.map((point) => dot(point, along)),
    dayWord(cover.points[0]!.day, along),
    ...(cover.points.length > 1 ? [dayWord(cover.points.at(-1)!.day, along)] : []),
  ];
  return `<svg class="cover-line" width="100%" height="${HEIGHT}" role="img" aria-label="${escapeXml(coverLineWords(cover)[0]!)}">${parts.join('')}</svg>`;
}

/** A lone day stands in the middle. */
const spanOf = (from: string, to: string): [string, string] =>
  from === to ? [addDays(from, -1), addDays(to, 1)] : [from, to];

const heightOf = (percent: number): number => round(BASE - ((BASE - TOP) * percent) / 100);

const level = (percent: number): string =>
  `<line class="level" x1="9%" x2="100%" y1="${heightOf(percent)}" y2="${heightOf(percent)}"/>` +
  `<text class="level-word" x="0" y="${heightOf(percent) + 6}">${percent}${percent === 100 ? ' %' : ''}</text>`;

function line(points: CoverPoint[], along: (day: string) => number, css: string): string {
  const steps = points.slice(1).map((point, at) => {
    const before = points[at]!;
    return `<line class="${css}" x1="${along(before.day)}%" y1="${heightOf(before.coverPercent)}" x2="${along(point.day)}%" y2="${heightOf(point.coverPercent)}"/>`;
  });
  const ends =
    css === 'sister'
      ? points.map(
          ({ day, coverPercent }) =>
            `<circle class="sister-dot" cx="${along(day)}%" cy="${heightOf(coverPercent)}" r="4"/>`,
        )
      : [];
  return steps.join('') + ends.join('');
}

/** Unsure ones are rings. */
const dot = (point: CoverPoint, along: (day: string) => number): string =>
  `<circle class="${point.warnings.length ? 'unsure' : 'sure'}" cx="${along(point.day)}%" cy="${heightOf(point.coverPercent)}" r="6"><title>${escapeXml(pointWords(point))}</title></circle>`;

function dayWord(day: string, along: (day: string) => number): string {
  const x = along(day);
  const anchor = x > 75 ? 'end' : x < 25 ? 'start' : 'middle';
  return `<text x="${x}%" y="${BASE + 24}" text-anchor="${anchor}">${sayDay(day).slice(4)}</text>`;
}

const round = (value: number): number => Math.round(value * 100) / 100;

/** Whole percents: the method is not good to tenths. */
const pointWords = ({ day, coverPercent, warnings }: CoverPoint): string =>
  `${Math.round(coverPercent)} % on ${sayDay(day)}${warnings.length ? ', unsure' : ''}`;

/** Sentences that say what the drawing shows. */
export function coverLineWords({ code, points, sisters }: CoverBeside): string[] {
  const listed = points.map(pointWords).join(', ');
  return [
    `Green cover of ${code}: ${listed}.`,
    ...sisters.map(
      (sister) => `${sister.code}, same treatment: ${sister.points.map(pointWords).join(', ')}.`,
    ),
  ];
}
