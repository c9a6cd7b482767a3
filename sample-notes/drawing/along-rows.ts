import { type Colour, css, GRASS_GREEN, hazed, lighter, SEDGE_GREEN } from './colour.ts';
import type { Growth } from './crop-growth.ts';
import { crackNetwork, type Ground } from './ground.ts';
import { drawPeg } from './peg.ts';
import { groundPath, HORIZON_PX, onPicture, type Place, pxPerM } from './perspective.ts';
import { type SeededRandom, seededRandom } from './seeded-random.ts';
import { drawLitter, drawStand, type Plant } from './stand.ts';

interface Region {
  fromX: number;
  toX: number;
  fromY: number;
  toY: number;
}

export interface SeenAlongRows {
  seed: string;
  code?: string;
  growth: Growth;
  colour: Colour;
  rowCm: number;
  hillCm?: number;
  halfWidthM: number;
  ground: Ground;
  sky?: 'clear' | 'grey';
  /** Hills are missing here, to this share. */
  gap?: Region & { share: number };
  afloat?: Region & { share: number };
  weeds?: { grassPerM2?: number; sedgePerM2?: number; heightCm: number };
  cut?: { x: number; y: number; radiusM: number };
  /** Strips along the rows hang over to the right. */
  leaning?: { strips: [fromX: number, toX: number][]; by: number };
  waterDepthCm?: number;
  tube?: Place;
  offTypes?: { x: number; y: number }[];
}

const FAR_M = 11;

export function drawAlongRows(seen: SeenAlongRows): string {
  const random = seededRandom(seen.seed);
  const plants = [...hills(seen, random), ...weedPlants(seen, random), ...offTypePlants(seen)];
  const near = plants.filter((plant) => plant.at.y < 4.2);
  const reflected =
    seen.ground === 'water'
      ? `<g opacity="0.3" filter="url(#ripple)">${drawStand(near, random, true)}</g>`
      : '';
  return `<svg xmlns="http://www.w3.org/2000/svg" width="800" height="600">${defs}
${backdrop(seen, random)}${drawGround(seen, random)}${reflected}${drawAfloat(seen, random)}
${seen.cut ? drawLitter({ ...seen.cut, z: 0 }, seen.cut.radiusM * 1.1, 60, random) : ''}
${drawStand(plants, random)}${threads(seen)}${seen.tube ? drawTube(seen.tube) : ''}
${seen.code ? drawPeg(seen.code, { x: -0.62, y: 1.5, z: 0.05 }) : ''}
<rect width="800" height="600" fill="url(#light)"/></svg>`;
}

function hills(seen: SeenAlongRows, random: SeededRandom): Plant[] {
  const stepX = seen.rowCm / 100;
  const stepY = (seen.hillCm ?? 12) / 100;
  const share = seen.hillCm ? 1 : 0.6;
  const plants: Plant[] = [];
  for (let x = -seen.halfWidthM + stepX / 2; x < seen.halfWidthM; x += stepX) {
    for (let y = 1.1; y < FAR_M; y += stepY * (y > 6 ? 1.5 : 1)) {
      const at = {
        x: x + random.between(-0.02, 0.02),
        y: y + random.between(-0.025, 0.025),
        z: -(seen.waterDepthCm ?? 3) / 100,
      };
      if (Math.abs(onPicture(at).x - 400) > 520) continue;
      if (inside(seen.gap, x, y) && random.chance(seen.gap!.share)) continue;
      if (inside(seen.afloat, x, y) && random.chance(seen.afloat!.share)) continue;
      const gnawed =
        seen.cut && Math.hypot(x - seen.cut.x, y - seen.cut.y) < seen.cut.radiusM * random.between(0.75, 1.1);
      const strip = seen.leaning?.strips.some(([from, to]) => x >= from && x < to);
      const lean = strip
        ? { x: seen.leaning!.by * random.between(0.75, 1.15), y: random.between(-0.1, 0.25) }
        : undefined;
      const growth = {
        ...seen.growth,
        leaves: Math.round(seen.growth.leaves * share * random.between(0.8, 1.15)),
      };
      plants.push({
        at,
        growth,
        colour: lighter(seen.colour, random.between(-2, 3)),
        lean,
        cutAtM: gnawed ? 0.13 : undefined,
      });
    }
  }
  return plants;
}

function weedPlants(seen: SeenAlongRows, random: SeededRandom): Plant[] {
  const { grassPerM2 = 0, sedgePerM2 = 0, heightCm = 0 } = seen.weeds ?? {};
  const sow = (perM2: number, colour: Colour, leaves: number, widthCm: number, tall: number): Plant[] =>
    Array.from({ length: Math.round(perM2 * 2 * seen.halfWidthM * 6) }, () => {
      const row = Math.floor(random.between(-seen.halfWidthM, seen.halfWidthM) / (seen.rowCm / 100));
      return {
        at: {
          x: (row + random.between(-0.3, 0.3)) * (seen.rowCm / 100),
          y: 1.2 + random.between(0, 1) ** 1.3 * 6,
          z: 0,
        },
        growth: {
          leaves,
          leafLengthCm: heightCm * 0.8,
          heightCm: heightCm * tall * random.between(0.7, 1.1),
          headed: 0,
        },
        colour,
        spread: 1.1,
        widthCm,
      };
    });
  return [...sow(grassPerM2, GRASS_GREEN, 11, 1, 1), ...sow(sedgePerM2, SEDGE_GREEN, 16, 0.5, 0.7)];
}

const offTypePlants = (seen: SeenAlongRows): Plant[] =>
  (seen.offTypes ?? []).map(({ x, y }) => ({
    at: { x, y, z: 0 },
    growth: { ...seen.growth, leaves: 90, heightCm: seen.growth.heightCm * 1.42, headed: 0.6 },
    colour: lighter(seen.colour, 15),
    widthCm: 1.5,
  }));

/** Red thread round each off-type, so that the crew finds it. */
function threads(seen: SeenAlongRows): string {
  return (seen.offTypes ?? [])
    .map(({ x, y }) => {
      const tied = onPicture({ x, y, z: (seen.growth.heightCm / 100) * 1.05 });
      const across = pxPerM({ x, y, z: 0.8 }) * 0.09;
      return `<path d="M${(tied.x - across).toFixed(1)},${tied.y.toFixed(1)}q${across.toFixed(1)},${(across * 0.5).toFixed(1)} ${(across * 2).toFixed(1)},0m${(-across).toFixed(1)},${(across * 0.2).toFixed(1)}l${(-across * 0.5).toFixed(1)},${(across * 1.3).toFixed(1)}" fill="none" stroke="#c22f2a" stroke-width="${(across * 0.32).toFixed(1)}" stroke-linecap="round"/>`;
    })
    .join('');
}

function backdrop(seen: SeenAlongRows, random: SeededRandom): string {
  const [high, low] = seen.sky === 'grey' ? ['#9aa6ad', '#cfd4d2'] : ['#a9c6da', '#f0e9d2'];
  const hillY = HORIZON_PX + 2;
  let trees = `M0,${hillY}`;
  for (let x = 0; x <= 800; x += 16) trees += `L${x},${(hillY - random.between(3, 17)).toFixed(0)}`;
  const beyond = css(hazed(lighter(seen.colour, 6), 0.5));
  return `<linearGradient id="sky" x2="0" y2="1"><stop stop-color="${high}"/><stop offset="1" stop-color="${low}"/></linearGradient>
<rect width="800" height="${Math.ceil(hillY)}" fill="url(#sky)"/><path d="${trees}L800,${hillY + 4}H0Z" fill="#7d927f"/>
<rect y="${hillY.toFixed(0)}" width="800" height="600" fill="${beyond}"/>${farPlots(random)}`;
}

/** Strips of other plots beyond the far bund, each in its own green. */
function farPlots(random: SeededRandom): string {
  const edges = [FAR_M, 14, 14.5, 20, 20.7, 31, 32, 60];
  return edges
    .slice(0, -1)
    .map((from, index) => {
      const top = onPicture({ x: 0, y: edges[index + 1]!, z: 0.3 }).y;
      const height = onPicture({ x: 0, y: from, z: 0 }).y - top;
      const fill =
        index % 2
          ? '#9d8767'
          : css({ hue: random.between(74, 108), saturation: 24, lightness: random.between(48, 60) });
      return `<rect y="${top.toFixed(1)}" width="800" height="${height.toFixed(1)}" fill="${fill}" opacity="0.75"/>`;
    })
    .join('');
}

function drawGround(seen: SeenAlongRows, random: SeededRandom): string {
  const half = seen.halfWidthM + 0.1;
  const flat = (fromX: number, toX: number, z = 0) =>
    groundPath([
      { x: fromX, y: 0.6, z },
      { x: fromX, y: FAR_M, z },
      { x: toX, y: FAR_M, z },
      { x: toX, y: 0.6, z },
    ]);
  const bunds = [-1, 1]
    .map((side) => {
      const top = flat(side * half, side * (half + 0.4), 0.12);
      const face = groundPath([
        { x: side * half, y: 0.6, z: 0.12 },
        { x: side * half, y: FAR_M, z: 0.12 },
        { x: side * half, y: FAR_M, z: 0 },
        { x: side * half, y: 0.6, z: 0 },
      ]);
      return `<path d="${top}" fill="#a5744e"/><path d="${face}" fill="#7e5537"/>`;
    })
    .join('');
  const canopyShade = Math.min(0.55, Math.max(0, seen.growth.heightCm - 35) / 90);
  const looks = { water: 'url(#water)', mud: '#6b5540', cracked: '#937b5b' }[seen.ground];
  return `<path d="${flat(-half, half)}" fill="${looks}"/><path d="${flat(-half, half)}" fill="#262b18" opacity="${canopyShade.toFixed(2)}"/>${marks(seen, random)}${bunds}`;
}

function marks(seen: SeenAlongRows, random: SeededRandom): string {
  if (seen.ground === 'water') return '';
  if (seen.ground === 'cracked') {
    const cracks = crackNetwork(random, 2 * seen.halfWidthM, 7, 0.24).map(([from, to]) => {
      const [a, b] = [from, to].map(([x, y]) => onPicture({ x: x - seen.halfWidthM, y: y + 1, z: 0 }));
      return `M${a!.x.toFixed(1)},${a!.y.toFixed(1)}L${b!.x.toFixed(1)},${b!.y.toFixed(1)}`;
    });
    return `<path d="${cracks.join('')}" stroke="#41311f" stroke-width="2" fill="none" opacity="0.7"/>`;
  }
  return Array.from({ length: 70 }, () => {
    const at = { x: random.between(-seen.halfWidthM, seen.halfWidthM), y: random.between(1, 8), z: 0 };
    const { x, y } = onPicture(at);
    const across = pxPerM(at) * random.between(0.03, 0.16);
    const fill = random.chance(0.35) ? '#b5b0a2' : '#55412e';
    return `<ellipse cx="${x.toFixed(0)}" cy="${y.toFixed(0)}" rx="${across.toFixed(0)}" ry="${(across * 0.4).toFixed(0)}" fill="${fill}" opacity="0.4"/>`;
  }).join('');
}

function drawAfloat(seen: SeenAlongRows, random: SeededRandom): string {
  if (!seen.afloat) return '';
  const { fromX, toX, fromY, toY } = seen.afloat;
  const centre = { x: (fromX + toX) / 2, y: (fromY + toY) / 2, z: 0 };
  return drawLitter(centre, Math.max(toX - fromX, toY - fromY) / 2, 70, random, lighter(seen.colour, 10));
}

/** Perforated pipe for reading the water table. */
function drawTube(at: Place): string {
  const scale = pxPerM(at);
  const { x, y } = onPicture(at);
  const wide = scale * 0.075;
  const tall = scale * 0.22;
  const holes = [0, 1, 2, 3, 4, 5].map(
    (index) =>
      `<circle cx="${(x + ((index % 3) - 1) * wide * 0.5).toFixed(1)}" cy="${(y - tall * (0.3 + 0.28 * Math.floor(index / 3))).toFixed(1)}" r="${(wide * 0.09).toFixed(1)}" fill="#4a5560"/>`,
  );
  const box = `x="${(x - wide).toFixed(1)}" y="${(y - tall).toFixed(1)}" width="${(wide * 2).toFixed(1)}"`;
  return `<rect ${box} height="${tall.toFixed(1)}" fill="#c9cfd2"/><rect ${box} height="${tall.toFixed(1)}" fill="url(#round)"/>
<ellipse cx="${x.toFixed(1)}" cy="${(y - tall).toFixed(1)}" rx="${wide.toFixed(1)}" ry="${(wide * 0.42).toFixed(1)}" fill="#39424a" stroke="#dfe3e4" stroke-width="${(wide * 0.14).toFixed(1)}"/>${holes.join('')}`;
}

const inside = (region: Region | undefined, x: number, y: number): boolean =>
  region !== undefined && x >= region.fromX && x < region.toX && y >= region.fromY && y < region.toY;

const defs = `<defs>
<filter id="ripple"><feGaussianBlur stdDeviation="1.6 2.4"/></filter>
<linearGradient id="water" x2="0" y2="1"><stop stop-color="#d5dcd8"/><stop offset="0.45" stop-color="#b3b6ab"/><stop offset="1" stop-color="#8a7f6b"/></linearGradient>
<linearGradient id="round"><stop stop-color="#000" stop-opacity="0.35"/><stop offset="0.4" stop-color="#fff" stop-opacity="0.25"/><stop offset="1" stop-color="#000" stop-opacity="0.4"/></linearGradient>
<linearGradient id="light" x2="0.3" y2="1"><stop stop-color="#fff2c8" stop-opacity="0.14"/><stop offset="0.5" stop-color="#fff2c8" stop-opacity="0"/><stop offset="1" stop-color="#101408" stop-opacity="0.2"/></linearGradient>
</defs>`;
