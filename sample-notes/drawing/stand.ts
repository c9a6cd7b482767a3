import { bladePath } from './blade.ts';
import { type Colour, css, hazed, lighter, PANICLE, STRAW } from './colour.ts';
import type { Growth } from './crop-growth.ts';
import { distanceM, onPicture, type Place, pxPerM } from './perspective.ts';
import type { SeededRandom } from './seeded-random.ts';

export interface Plant {
  at: Place;
  growth: Growth;
  colour: Colour;
  /** Metres that the tips hang over to the right and away; 0 stands upright. */
  lean?: { x: number; y: number };
  /** Leaves spread wide (a weed or a young hill) or stand close; 1 is a hill of rice. */
  spread?: number;
  widthCm?: number;
  /** Cut off slantwise at this height by rats. */
  cutAtM?: number;
}

/** Plants of the stand from far to near, so that the near ones cover the far ones. */
export function drawStand(plants: Plant[], random: SeededRandom, mirrored = false): string {
  return [...plants]
    .sort((a, b) => b.at.y - a.at.y)
    .map((plant) => drawPlant(plant, random, mirrored))
    .join('');
}

/** `mirrored` hangs the plant below the ground, as still water shows it. */
function drawPlant(plant: Plant, random: SeededRandom, mirrored: boolean): string {
  const distance = distanceM(plant.at);
  const count = Math.max(
    4,
    Math.round(plant.growth.leaves * Math.min(0.8, 1.5 / distance) * (mirrored ? 0.5 : 1)),
  );
  const haze = Math.min(0.55, Math.max(0, (distance - 3) / 16));
  const widthPx = Math.max(1.4, pxPerM(plant.at) * ((plant.widthCm ?? 1.1) / 100) * (1 + distance / 6));
  const parts: string[] = [];
  const heads = mirrored ? 0 : Math.round(plant.growth.headed * Math.max(2, count * 0.3));
  for (let index = 0; index < count; index++) {
    const drawn = index / count;
    const tone = lighter(
      { ...plant.colour, hue: plant.colour.hue + random.between(-5, 5) },
      -9 + drawn * 16 + random.between(-3, 3),
    );
    parts.push(`<path d="${leafPath(plant, random, widthPx, mirrored)}" fill="${css(hazed(tone, haze))}"/>`);
  }
  for (let index = 0; index < heads; index++) parts.push(drawPanicle(plant, random, haze));
  return parts.join('');
}

function leafPath(plant: Plant, random: SeededRandom, widthPx: number, mirrored: boolean): string {
  const { at, growth } = plant;
  const angle = random.between(0, 6.283);
  const height =
    (plant.cutAtM ?? (growth.heightCm / 100) * random.between(0.62, 1)) *
    (plant.cutAtM ? random.between(0.8, 1.2) : 1);
  const reach =
    (growth.leafLengthCm / 100) * random.between(0.15, 0.75) * (plant.spread ?? 1) * (plant.cutAtM ? 0.2 : 1);
  const foot = { x: at.x + random.between(-0.02, 0.02), y: at.y + random.between(-0.02, 0.02), z: at.z };
  const lean = plant.lean ?? { x: 0, y: 0 };
  const down = 1 - Math.min(0.85, Math.hypot(lean.x, lean.y) * 0.8);
  const sign = mirrored ? -1 : 1;
  const reached = (along: number, up: number): Place => ({
    x: foot.x + Math.cos(angle) * reach * along + lean.x * height * up * up,
    y: foot.y + Math.sin(angle) * reach * along + lean.y * height * up * up,
    z: at.z + sign * height * up * (1 - (1 - down) * up),
  });
  const droop = random.between(0.8, 1);
  return bladePath(onPicture(foot), onPicture(reached(0.3, 0.75)), onPicture(reached(1, droop)), widthPx);
}

function drawPanicle(plant: Plant, random: SeededRandom, haze: number): string {
  const height = (plant.growth.heightCm / 100) * random.between(0.92, 1.06);
  const lean = plant.lean ?? { x: 0, y: 0 };
  const side = random.between(-1, 1);
  const neck = {
    x: plant.at.x + side * 0.05 + lean.x * height,
    y: plant.at.y + random.between(-0.06, 0.06) + lean.y * height,
    z: plant.at.z + height * (1 - Math.min(0.7, Math.hypot(lean.x, lean.y) * 0.7)),
  };
  const tip = { ...neck, x: neck.x + side * 0.1, z: neck.z - 0.02 };
  const bow = { ...neck, x: neck.x + side * 0.05, z: neck.z + 0.07 };
  const [from, over, to] = [neck, bow, tip].map(onPicture);
  const widthPx = Math.max(1.6, pxPerM(plant.at) * 0.014);
  const path = `M${from!.x.toFixed(1)},${from!.y.toFixed(1)}Q${over!.x.toFixed(1)},${over!.y.toFixed(1)} ${to!.x.toFixed(1)},${to!.y.toFixed(1)}`;
  const dashed = `${(widthPx * 0.9).toFixed(1)} ${(widthPx * 0.35).toFixed(1)}`;
  return `<path d="${path}" fill="none" stroke="${css(hazed(lighter(PANICLE, random.between(-4, 6)), haze))}" stroke-width="${widthPx.toFixed(1)}" stroke-dasharray="${dashed}"/>`;
}

/** Leaves that lie about on the ground, as rats leave them or as floating seedlings drift. */
export function drawLitter(
  around: Place,
  radiusM: number,
  count: number,
  random: SeededRandom,
  colour = STRAW,
): string {
  return Array.from({ length: count }, () => {
    const angle = random.between(0, 6.283);
    const out = Math.sqrt(random.between(0, 1)) * radiusM;
    const foot = { x: around.x + Math.cos(angle) * out, y: around.y + Math.sin(angle) * out, z: 0.01 };
    const way = random.between(0, 6.283);
    const lengthM = random.between(0.14, 0.3);
    const to = (share: number) =>
      onPicture({
        x: foot.x + Math.cos(way) * lengthM * share,
        y: foot.y + Math.sin(way) * lengthM * share,
        z: 0.02,
      });
    return `<path d="${bladePath(onPicture(foot), to(0.5), to(1), pxPerM(foot) * 0.012)}" fill="${css(lighter(colour, random.between(-8, 8)))}"/>`;
  }).join('');
}
