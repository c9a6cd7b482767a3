import type { SeededRandom } from './seeded-random.ts';

export type Ground = 'water' | 'mud' | 'cracked';

/** Ground of a picture taken straight down, 800 x 600: what stands between the hills. */
export function groundFromAbove(ground: Ground, random: SeededRandom): string {
  if (ground === 'water') return stillWater(random);
  return ground === 'mud' ? wetMud(random) : crackedSoil(random);
}

/** Shallow and turbid, with the sky lying soft on it and a few rings. */
function stillWater(random: SeededRandom): string {
  const sky = blots(random, 6, '#cdd8d8', 0.34, [110, 230]);
  const depth = blots(random, 8, '#5c4f3b', 0.22, [60, 150]);
  const rings = Array.from({ length: 4 }, () => {
    const place = `cx="${random.between(0, 800).toFixed(0)}" cy="${random.between(0, 600).toFixed(0)}"`;
    const across = random.between(14, 46);
    return `<ellipse ${place} rx="${across.toFixed(0)}" ry="${(across * 0.8).toFixed(0)}" fill="none" stroke="#eef2ee" stroke-width="1.4" opacity="0.22"/>`;
  });
  return `${filters}<rect width="800" height="600" fill="#857963"/>${depth}${sky}${rings.join('')}`;
}

function wetMud(random: SeededRandom): string {
  const clods = blots(random, 26, '#4b3a29', 0.3, [20, 70]);
  const shine = blots(random, 9, '#b7b2a4', 0.3, [20, 80]);
  return `${filters}<rect width="800" height="600" fill="#6d5741"/>${clods}${shine}`;
}

function crackedSoil(random: SeededRandom): string {
  const clods = blots(random, 18, '#7a6248', 0.35, [40, 110]);
  const cracks = crackNetwork(random, 800, 600, 105)
    .map(
      ([from, to]) => `M${from[0].toFixed(0)},${from[1].toFixed(0)}L${to[0].toFixed(0)},${to[1].toFixed(0)}`,
    )
    .join('');
  return `${filters}<rect width="800" height="600" fill="#97805f"/>${clods}<path d="${cracks}" stroke="#3a2c1e" stroke-width="3" stroke-linecap="round" fill="none" opacity="0.75"/>`;
}

/** Edges of a jittered brick pattern: each clod has six neighbours, as drying clay makes them. */
export function crackNetwork(
  random: SeededRandom,
  width: number,
  height: number,
  size: number,
): [[number, number], [number, number]][] {
  const columns = Math.ceil(width / size) + 2;
  const rows = Math.ceil(height / size) + 2;
  const corner = Array.from({ length: rows * 2 }, () =>
    Array.from({ length: columns }, (): [number, number] => [
      random.between(-0.24, 0.24) * size,
      random.between(-0.2, 0.2) * size,
    ]),
  );
  const at = (row: number, column: number): [number, number] => {
    const [dx, dy] = corner[row]![column]!;
    const shift = (Math.floor((row + 1) / 2) % 2) * 0.5;
    return [
      (column + shift - 0.5) * size + dx,
      (Math.floor(row / 2) + (row % 2 ? 0.35 : 0) - 0.3) * size + dy,
    ];
  };
  const edges: [[number, number], [number, number]][] = [];
  for (let row = 0; row + 1 < rows * 2; row++) {
    for (let column = 0; column < columns; column++) {
      edges.push([at(row, column), at(row + 1, column)]);
      const leaning = column + (Math.floor((row + 1) / 2) % 2 ? 1 : -1);
      if (row % 2 === 0 && leaning >= 0 && leaning < columns)
        edges.push([at(row, column), at(row + 1, leaning)]);
    }
  }
  return edges;
}

function blots(
  random: SeededRandom,
  count: number,
  fill: string,
  opacity: number,
  radius: [number, number],
): string {
  const shapes = Array.from({ length: count }, () => {
    const across = random.between(...radius);
    return `<ellipse cx="${random.between(-40, 840).toFixed(0)}" cy="${random.between(-40, 640).toFixed(0)}" rx="${across.toFixed(0)}" ry="${(across * random.between(0.5, 0.9)).toFixed(0)}"/>`;
  });
  return `<g fill="${fill}" opacity="${opacity}" filter="url(#blot)">${shapes.join('')}</g>`;
}

const filters =
  '<filter id="blot" x="-20%" y="-20%" width="140%" height="140%"><feGaussianBlur stdDeviation="22"/></filter>';
