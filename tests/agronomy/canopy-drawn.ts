/** Pictures of a stand from straight above, drawn dot by dot, so that the share of plant is known and not estimated. */
import type { PictureRgb } from '../../src/agronomy/canopy-cover.ts';

export type Rgb = readonly [red: number, green: number, blue: number];

export interface Scene {
  seed: number;
  /** Blades a hill; 0 is bare ground. */
  blades: number;
  bladeCm: number;
  ground: Rgb;
  leaf: Rgb;
  /** Light on each channel, 1 is full and neutral. */
  light: Rgb;
  /** Part of the picture that lies in shade, and how much light is left there. */
  shade?: { share: number; left: Rgb };
  /** Standard deviation of the sensor's noise, of 255. */
  noise?: number;
}

/** Known cover: dots inside blades over all dots, at three times the picture's fineness each way. */
export interface Drawn {
  picture: PictureRgb;
  coverPercent: number;
}

const width = 360;
const height = 270;
const finer = 3;
const dotsACm = 9;
const [rowCm, hillCm] = [20, 20];

export function drawStand(scene: Scene): Drawn {
  const chance = chanceFrom(scene.seed);
  const plant = plantDots(scene, chance);
  const groundTone = toneField(chance, 24, 0.18);
  const leafTone = toneField(chance, 8, 0.22);
  const data = new Uint8Array(width * height * 3);
  let inside = 0;
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const share = shareOf(plant, x, y);
      inside += share;
      const lit = lightAt(scene, x);
      for (let channel = 0; channel < 3; channel++) {
        const bare = scene.ground[channel]! * groundTone(x, y);
        const green = scene.leaf[channel]! * leafTone(x, y);
        const value =
          (green * share + bare * (1 - share)) * lit[channel]! + normal(chance) * (scene.noise ?? 2);
        data[(y * width + x) * 3 + channel] = Math.max(0, Math.min(255, Math.round(value)));
      }
    }
  }
  return { picture: { data, width, height }, coverPercent: (100 * inside) / (width * height) };
}

/** Blades as tapering strokes that start at a hill and bend to one side. */
function plantDots({ blades, bladeCm }: Scene, chance: () => number): Uint8Array {
  const dots = new Uint8Array(width * height * finer * finer);
  const [wide, high] = [width * finer, height * finer];
  const dotCm = dotsACm * finer;
  for (let rowY = -1; rowY * rowCm * dotCm < high + bladeCm * dotCm; rowY++)
    for (let rowX = -1; rowX * hillCm * dotCm < wide + bladeCm * dotCm; rowX++)
      for (let blade = 0; blade < blades; blade++) {
        let [x, y] = [
          (rowX + 0.5 + (chance() - 0.5) * 0.2) * hillCm * dotCm,
          (rowY + 0.5 + (chance() - 0.5) * 0.2) * rowCm * dotCm,
        ];
        let angle = chance() * 2 * Math.PI;
        const bend = (chance() - 0.5) * 0.008;
        const length = bladeCm * dotCm * (0.6 + 0.5 * chance());
        for (let along = 0; along < length; along += 4) {
          const half = 0.45 * dotCm * Math.sin(Math.PI * Math.min(1, 0.15 + (0.85 * along) / length));
          stamp(dots, wide, high, x, y, half);
          x += 4 * Math.cos(angle);
          y += 4 * Math.sin(angle);
          angle += bend;
        }
      }
  return dots;
}

function stamp(dots: Uint8Array, wide: number, high: number, x: number, y: number, half: number): void {
  for (let dy = -Math.ceil(half); dy <= half; dy++)
    for (let dx = -Math.ceil(half); dx <= half; dx++) {
      const [atX, atY] = [Math.round(x + dx), Math.round(y + dy)];
      if (dx * dx + dy * dy <= half * half && atX >= 0 && atX < wide && atY >= 0 && atY < high)
        dots[atY * wide + atX] = 1;
    }
}

function shareOf(dots: Uint8Array, x: number, y: number): number {
  let inside = 0;
  for (let dy = 0; dy < finer; dy++)
    for (let dx = 0; dx < finer; dx++) inside += dots[(y * finer + dy) * width * finer + x * finer + dx]!;
  return inside / (finer * finer);
}

function lightAt({ light, shade }: Scene, x: number): Rgb {
  if (!shade || x >= shade.share * width) return light;
  return [light[0] * shade.left[0], light[1] * shade.left[1], light[2] * shade.left[2]];
}

/** Clods, ripples and the lie of leaves: patches of `cell` dots that are lighter or darker by `depth`. */
function toneField(chance: () => number, cell: number, depth: number): (x: number, y: number) => number {
  const [columns, rows] = [Math.ceil(width / cell) + 1, Math.ceil(height / cell) + 1];
  const tones = Float32Array.from({ length: columns * rows }, () => 1 + (chance() * 2 - 1) * depth);
  return (x, y) => {
    const [column, row] = [Math.floor(x / cell), Math.floor(y / cell)];
    const [right, down] = [x / cell - column, y / cell - row];
    const at = row * columns + column;
    const upper = tones[at]! * (1 - right) + tones[at + 1]! * right;
    const lower =
      (tones[at + columns] ?? tones[at])! * (1 - right) + (tones[at + columns + 1] ?? tones[at])! * right;
    return upper * (1 - down) + lower * down;
  };
}

/** Mulberry32: the same seed, the same picture. */
function chanceFrom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

const normal = (chance: () => number): number =>
  (chance() + chance() + chance() + chance() - 2) * Math.sqrt(3);
