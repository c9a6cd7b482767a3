import type { FieldPlan, PlanPlot } from '../diary/field-plan.ts';
import { escapeXml } from './escape-xml.ts';
import { plotHref, several } from './words.ts';

/** The plan as one SVG: each plot a link, its code in it, what stands open under the code. Metres are its units. */
export function fieldPlanSvg({ plots, widthM, heightM }: FieldPlan): string {
  const edge = Math.max(widthM, heightM) * 0.02;
  const box = [-edge, -edge, widthM + 2 * edge, heightM + 2 * edge].map(round).join(' ');
  const drawn = plots.filter(({ shape }) => shape.length > 2).map((one) => bed(one, letterSize(plots)));
  return `<svg class="plan" viewBox="${box}" role="group" aria-label="Field plan, north is up">${drawn.join('')}</svg>`;
}

function bed({ plot, shape, open, late }: PlanPlot, size: number): string {
  const [x, y] = middle(shape);
  const kind = late > 0 ? ' has-late' : open > 0 ? ' has-open' : '';
  const words = openWords({ open, late });
  return (
    `<a href="${plotHref(plot.code)}" aria-label="${escapeXml(`Plot ${plot.code}, ${words}`)}">` +
    `<polygon class="bed${kind}" points="${shape.map((corner) => corner.map(round).join(',')).join(' ')}"/>` +
    `<text x="${round(x)}" y="${round(y)}" font-size="${round(size)}">${escapeXml(plot.code)}</text>` +
    (open > 0
      ? `<text class="count${late > 0 ? ' late' : ''}" x="${round(x)}" y="${round(y + size * 1.15)}" font-size="${round(size * 0.8)}">${late > 0 ? `${late} late` : `${open} open`}</text>`
      : '') +
    '</a>'
  );
}

/** `2 open, 1 late` */
export const openWords = ({ open, late }: Pick<PlanPlot, 'open' | 'late'>): string =>
  open === 0 ? 'nothing open' : `${several(open, 'thing')} open${late > 0 ? `, ${late} late` : ''}`;

/** Letters as large as fit across the narrowest plot. */
function letterSize(plots: PlanPlot[]): number {
  const across = plots
    .filter(({ shape }) => shape.length > 2)
    .map(({ shape }) => Math.min(reach(shape, 0), reach(shape, 1)));
  return Math.max(0.5, Math.min(...across) * 0.3);
}

const reach = (shape: [number, number][], axis: 0 | 1): number => {
  const values = shape.map((corner) => corner[axis]);
  return Math.max(...values) - Math.min(...values);
};

const middle = (shape: [number, number][]): [number, number] => [
  shape.reduce((sum, [x]) => sum + x, 0) / shape.length,
  shape.reduce((sum, [, y]) => sum + y, 0) / shape.length,
];

const round = (value: number): number => Math.round(value * 100) / 100;
