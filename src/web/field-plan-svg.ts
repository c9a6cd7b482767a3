import type { FieldPlan, PlanPlot, PlanPoint } from '../diary/field-plan.ts';
import { escapeXml } from './escape-xml.ts';
import { plotHref, sayTime, several } from './words.ts';

/** The plan as one SVG: each plot a link, its code in it, what stands open under the code. Metres are its units. */
export function fieldPlanSvg({ plots, widthM, heightM, points }: FieldPlan): string {
  const edge = Math.max(widthM, heightM) * 0.02;
  const box = [-edge, -edge, widthM + 2 * edge, heightM + 2 * edge].map(round).join(' ');
  const drawn = plots.filter(({ shape }) => shape.length > 2).map((one) => bed(one, letterSize(plots)));
  return `<svg class="plan" viewBox="${box}" role="group" aria-label="Field plan, north is up">${drawn.join('')}${points.map((one) => dot(one, Math.max(widthM, heightM) * 0.011)).join('')}</svg>`;
}

function bed({ plot, shape, open, late }: PlanPlot, size: number): string {
  const [x, y] = middle(shape);
  const words = openWords({ open, late });
  return (
    `<a href="${plotHref(plot.code)}" aria-label="${escapeXml(`Plot ${plot.code}, ${words}`)}">` +
    `<polygon class="bed${late > 0 ? ' has-late' : ''}" points="${shape.map((corner) => corner.map(round).join(',')).join(' ')}"/>` +
    `<text x="${round(x)}" y="${round(y)}" font-size="${round(size)}">${escapeXml(plot.code)}</text>` +
    marks(x, y + size * 0.8, size * 0.28, open, late) +
    '</a>'
  );
}

/** A photo is a dot, a note a square; those outside the plan stand in the list only. */
function dot(point: PlanPoint, r: number): string {
  const { what, href, x, y } = point;
  if (x === null || y === null) return '';
  const shape =
    what === 'photo'
      ? `<circle class="photo-dot" cx="${x}" cy="${y}" r="${round(r)}"/>`
      : `<rect class="note-dot" x="${round(x - r)}" y="${round(y - r)}" width="${round(2 * r)}" height="${round(2 * r)}"/>`;
  return `<a href="${href}" aria-label="${escapeXml(pointWords(point))}"><title>${escapeXml(pointWords(point))}</title>${shape}</a>`;
}

/** `Photo at 06:41, in E3` */
export const pointWords = ({ what, at, plot, words }: PlanPoint): string =>
  `${what === 'photo' ? 'Photo' : 'Note'} at ${sayTime(at)}, ${plot ? `in ${plot}` : 'no plot'}${words ? `: ${words}` : ''}`;

const MOST_MARKS = 6;

/** One mark for each thing that stands open, two a row: a filled square is late, a ring is not. */
function marks(x: number, y: number, r: number, open: number, late: number): string {
  const count = Math.min(open, MOST_MARKS);
  return Array.from({ length: count }, (_, at) => {
    const alone = at === count - 1 && at % 2 === 0;
    const cx = round(x + (alone ? 0 : at % 2 === 0 ? -1.25 * r : 1.25 * r));
    const cy = round(y + Math.floor(at / 2) * 2.7 * r);
    return at < late
      ? `<rect class="late-mark" x="${round(cx - r)}" y="${round(cy - r)}" width="${round(2 * r)}" height="${round(2 * r)}"/>`
      : `<circle class="open-mark" cx="${cx}" cy="${cy}" r="${round(r * 0.85)}"/>`;
  }).join('');
}

/** `2 open, 1 late` */
export const openWords = ({ open, late }: Pick<PlanPlot, 'open' | 'late'>): string =>
  open === 0 ? 'nothing open' : `${several(open, 'thing')} open${late > 0 ? `, ${late} late` : ''}`;

/** Letters as large as fit across the narrowest plot. */
function letterSize(plots: PlanPlot[]): number {
  const shortest = plots.filter(({ shape }) => shape.length > 2).map(({ shape }) => shortestEdge(shape));
  return Math.max(0.5, Math.min(...shortest) * 0.5);
}

const shortestEdge = (shape: [number, number][]): number =>
  Math.min(
    ...shape.map(([x, y], at) => {
      const [nextX, nextY] = shape[(at + 1) % shape.length]!;
      return Math.hypot(nextX - x, nextY - y);
    }),
  );

const middle = (shape: [number, number][]): [number, number] => [
  shape.reduce((sum, [x]) => sum + x, 0) / shape.length,
  shape.reduce((sum, [, y]) => sum + y, 0) / shape.length,
];

const round = (value: number): number => Math.round(value * 100) / 100;
