import { bladePath, type Point } from './blade.ts';
import { BROADLEAF_GREEN, type Colour, css, GRASS_GREEN, lighter, PANICLE, SEDGE_GREEN } from './colour.ts';
import type { Growth } from './crop-growth.ts';
import { type Ground, groundFromAbove } from './ground.ts';
import { type SeededRandom, seededRandom } from './seeded-random.ts';

export const PICTURE = { widthPx: 800, heightPx: 600 };
/** The phone is held some 1.4 m over the crop: 800 pixels show 1.6 m of ground. */
const PX_PER_CM = 5;

export interface SeenFromAbove {
  seed: string;
  growth: Growth;
  colour: Colour;
  rowCm: number;
  /** Left out where the crop was sown in rows. */
  hillCm?: number;
  ground: Ground;
  /** Share of the hills that are missing or afloat, 0 to 1. */
  missing?: number;
  afloat?: number;
  weeds?: { grassPerM2?: number; sedgePerM2?: number; broadleafPerM2?: number; sizeCm: number };
}

interface Leaf {
  path: string;
  colour: Colour;
  /** 0 lies lowest, 1 highest. */
  layer: number;
}

/** The picture, and the same plants in white on black from which their cover is counted. */
export function drawFromAbove(seen: SeenFromAbove): { picture: string; plants: string } {
  const random = seededRandom(seen.seed);
  const leaves = [...cropLeaves(seen, random), ...weedLeaves(seen, random)].sort((a, b) => a.layer - b.layer);
  const shade = leaves.map((leaf) => leaf.path).join('');
  const shapes = leaves.map((leaf) => {
    const shown = lighter(leaf.colour, (leaf.layer - 0.6) * 22);
    return `<path d="${leaf.path}" fill="${css(shown)}"/>`;
  });
  return {
    picture: svg(
      `${groundFromAbove(seen.ground, random)}
       <path d="${shade}" fill="#1c1a10" opacity="0.28" transform="translate(7 9)" filter="url(#soft)"/>
       ${shapes.join('')}
       <rect width="800" height="600" fill="url(#light)"/>`,
    ),
    plants: svg(
      `<rect width="800" height="600" fill="#000"/>
       <path d="${shade}" fill="#fff" shape-rendering="crispEdges"/>`,
    ),
  };
}

function cropLeaves(seen: SeenFromAbove, random: SeededRandom): Leaf[] {
  const rowPx = seen.rowCm * PX_PER_CM;
  const hillPx = (seen.hillCm ?? 4) * PX_PER_CM;
  const share = seen.hillCm ? 1 : 0.24;
  const leaves: Leaf[] = [];
  for (let x = -rowPx / 2; x < PICTURE.widthPx + rowPx; x += rowPx) {
    for (let y = -hillPx / 2; y < PICTURE.heightPx + hillPx; y += hillPx) {
      const centre = { x: x + random.between(-6, 6), y: y + random.between(-7, 7) };
      const fate = random.between(0, 1);
      if (fate < (seen.missing ?? 0)) continue;
      if (fate < (seen.missing ?? 0) + (seen.afloat ?? 0)) leaves.push(...floatingHill(seen, centre, random));
      else leaves.push(...standingHill(seen, centre, share, random));
    }
  }
  return leaves;
}

function standingHill(seen: SeenFromAbove, centre: Point, share: number, random: SeededRandom): Leaf[] {
  const { growth } = seen;
  const count = Math.max(3, Math.round(growth.leaves * share * random.between(0.75, 1.2)));
  const start = random.between(0, 6.28);
  const leaves = Array.from({ length: count }, (_, index) => {
    const angle = start + index * 2.4 + random.between(-0.4, 0.4);
    const reach = growth.leafLengthCm * PX_PER_CM * random.between(0.45, 1) * 0.78;
    const foot = polar(centre, random.between(0, 6.28), random.between(0, 4 + count * 0.16));
    return leaf(foot, angle, reach, random.between(-0.4, 0.4), 3.6 + growth.leafLengthCm * 0.12, {
      colour: lighter(tinted(seen.colour, random), Math.cos(angle + 2.3) * 4),
      layer: random.between(0.1, 1),
    });
  });
  const panicles = Math.round(growth.headed * 5 * share);
  for (let index = 0; index < panicles; index++) leaves.push(...panicle(centre, random));
  return leaves;
}

/** Seedlings on their side, all one way, with the pale of their roots behind. */
function floatingHill(seen: SeenFromAbove, centre: Point, random: SeededRandom): Leaf[] {
  const way = random.between(0, 6.28);
  return Array.from({ length: 8 }, () =>
    leaf(
      centre,
      way + random.between(-0.35, 0.35),
      seen.growth.leafLengthCm * PX_PER_CM * random.between(0.7, 1.25),
      random.between(-0.2, 0.2),
      5,
      {
        colour: lighter(tinted(seen.colour, random), 8),
        layer: random.between(0, 0.5),
      },
    ),
  );
}

function panicle(centre: Point, random: SeededRandom): Leaf[] {
  const angle = random.between(0, 6.28);
  const start = polar(centre, angle, random.between(5, 30));
  const bow = random.between(-0.5, 0.5);
  return Array.from({ length: 12 }, (_, index) => {
    const grain = polar(start, angle + bow * (index / 12), 10 + index * 6);
    const side = angle + (index % 2 ? 0.7 : -0.7);
    return leaf(grain, side, 12, 0, 5, { colour: tinted(PANICLE, random), layer: random.between(0.88, 1) });
  });
}

function weedLeaves(seen: SeenFromAbove, random: SeededRandom): Leaf[] {
  const { grassPerM2 = 0, sedgePerM2 = 0, broadleafPerM2 = 0, sizeCm = 0 } = seen.weeds ?? {};
  const rowPx = seen.rowCm * PX_PER_CM;
  const shownM2 = (PICTURE.widthPx * PICTURE.heightPx) / (PX_PER_CM * 100) ** 2;
  const leaves: Leaf[] = [];
  const sow = (perM2: number, weed: (at: Point) => Leaf[]) => {
    for (let count = 0; count < Math.round(perM2 * shownM2); count++) {
      const row = Math.floor(random.between(0, PICTURE.widthPx / rowPx));
      leaves.push(
        ...weed({ x: (row + random.between(-0.28, 0.28)) * rowPx, y: random.between(0, PICTURE.heightPx) }),
      );
    }
  };
  sow(grassPerM2, (at) => rosette(at, 9, sizeCm * PX_PER_CM, 6.5, GRASS_GREEN, random));
  sow(sedgePerM2, (at) => rosette(at, 14, sizeCm * PX_PER_CM * 0.7, 3.2, SEDGE_GREEN, random));
  sow(broadleafPerM2, (at) => rosette(at, 6, sizeCm * PX_PER_CM * 0.5, 26, BROADLEAF_GREEN, random));
  return leaves;
}

function rosette(
  at: Point,
  count: number,
  reachPx: number,
  widthPx: number,
  colour: Colour,
  random: SeededRandom,
): Leaf[] {
  const start = random.between(0, 6.28);
  return Array.from({ length: count }, (_, index) =>
    leaf(
      at,
      start + (index * 6.28) / count,
      reachPx * random.between(0.6, 1.1),
      random.between(-0.15, 0.15),
      widthPx,
      {
        colour: tinted(colour, random),
        layer: random.between(0.2, 0.8),
      },
    ),
  );
}

function leaf(
  foot: Point,
  angle: number,
  reachPx: number,
  curl: number,
  widthPx: number,
  looks: Omit<Leaf, 'path'>,
): Leaf {
  const bend = polar(foot, angle + curl, reachPx * 0.55);
  return { path: bladePath(foot, bend, polar(foot, angle, reachPx), widthPx), ...looks };
}

const polar = (from: Point, angle: number, distance: number): Point => ({
  x: from.x + Math.cos(angle) * distance,
  y: from.y + Math.sin(angle) * distance,
});

const tinted = (colour: Colour, random: SeededRandom): Colour => ({
  ...lighter(colour, random.between(-4, 5)),
  hue: colour.hue + random.between(-5, 5),
});

const svg = (inner: string) => `<svg xmlns="http://www.w3.org/2000/svg" width="800" height="600">
<defs>
<filter id="soft" x="-5%" y="-5%" width="110%" height="110%"><feGaussianBlur stdDeviation="4"/></filter>
<radialGradient id="light" cx="0.4" cy="0.35" r="0.85"><stop offset="0.3" stop-color="#fff6d8" stop-opacity="0.1"/><stop offset="1" stop-color="#10140c" stop-opacity="0.22"/></radialGradient>
</defs>${inner}</svg>`;
