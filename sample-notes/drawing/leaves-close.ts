import { bladePath, type Point } from './blade.ts';
import { css, FED_GREEN, lighter } from './colour.ts';
import { seededRandom } from './seeded-random.ts';

/** Leaves held before the phone, their margins yellow in waves from the tip down. */
export function drawLeavesClose(seed: string): string {
  const random = seededRandom(seed);
  const behind = Array.from({ length: 46 }, () => {
    const foot = { x: random.between(-60, 860), y: 640 };
    const tip = { x: foot.x + random.between(-170, 170), y: random.between(-80, 260) };
    const bend = { x: foot.x, y: 320 };
    return `<path d="${bladePath(foot, bend, tip, random.between(24, 46))}" fill="${css(lighter(FED_GREEN, random.between(-10, 8)))}"/>`;
  });
  const leaves = [0, 1, 2, 3].map((index) => {
    const foot = { x: 120 + index * 130 + random.between(-30, 30), y: 660 };
    const tip = { x: 250 + index * 165 + random.between(-30, 30), y: 45 + index * 22 };
    const bend = { x: foot.x + 8, y: 300 };
    const path = bladePath(foot, bend, tip, 118);
    const margin = [-1, 1].map((side) => wave(foot, bend, tip, side * 44, index * 1.7)).join('');
    return `<clipPath id="leaf${index}"><path d="${path}"/></clipPath>
<path d="${path}" fill="#16210e" opacity="0.35" transform="translate(12 14)"/>
<g clip-path="url(#leaf${index})"><path d="${path}" fill="${css(lighter(FED_GREEN, 7 + index * 2))}"/><path d="${margin}" stroke="#d8c768" stroke-width="40" fill="none" stroke-linejoin="round"/><path d="${margin}" stroke="#e9e1ae" stroke-width="10" opacity="0.7" fill="none"/>
<path d="M${foot.x},${foot.y}Q${bend.x},${bend.y} ${tip.x},${tip.y}" stroke="#b9d09a" stroke-width="5" fill="none" opacity="0.8"/></g>`;
  });
  return `<svg xmlns="http://www.w3.org/2000/svg" width="800" height="600"><filter id="far"><feGaussianBlur stdDeviation="9"/></filter>
<rect width="800" height="600" fill="#40562f"/><g filter="url(#far)">${behind.join('')}</g>${leaves.join('')}</svg>`;
}

/** Along one edge of the leaf, from the tip two thirds of the way down. */
function wave(foot: Point, bend: Point, tip: Point, sidePx: number, phase: number): string {
  const points = Array.from({ length: 60 }, (_, index) => {
    const along = 1 - (index / 59) * 0.68;
    const rest = 1 - along;
    const centre = (axis: 'x' | 'y') =>
      rest * rest * foot[axis] + 2 * rest * along * bend[axis] + along * along * tip[axis];
    const taper = Math.min(1, 4 * along * rest + 0.05);
    const swing = sidePx * taper * (1 + 0.14 * Math.sin(index * 0.55 + phase));
    return `${(centre('x') + swing).toFixed(1)},${(centre('y') + swing * 0.35).toFixed(1)}`;
  });
  return `M${points.join('L')}`;
}
