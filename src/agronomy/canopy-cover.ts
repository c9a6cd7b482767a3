/**
 * Green cover of a picture taken straight down: the share of its pixels that are plant.
 * Excess green with Otsu's threshold where the picture falls into two heaps, plant and ground; where it does not (bare
 * ground, closed canopy), any threshold of Otsu's would cut through one of them, and excess green minus excess red
 * above the fixed zero decides (Meyer & Camargo Neto 2008, Comput. Electron. Agric. 63:282-293).
 */
import { excessGreen, excessRed } from './canopy-indices.ts';
import { type OtsuSplit, otsuSplit } from './canopy-otsu.ts';
import { pictureWarnings } from './canopy-warnings.ts';

export interface PictureRgb {
  /** Three bytes a pixel, row by row, sRGB. */
  data: Uint8Array;
  width: number;
  height: number;
}

export type CoverMethod = 'otsu' | 'fixed';

export interface GreenCover {
  /** 0 to 100, one decimal. */
  coverPercent: number;
  /** Which of the two was used, in words. */
  method: string;
  /** What speaks against the figure, in words for whoever took the picture. */
  warnings: string[];
  /** One byte a pixel: 1 plant, 0 not. */
  mask: Uint8Array;
}

const methodWords: Record<CoverMethod, string> = {
  otsu: 'excess green, threshold by Otsu',
  fixed: 'excess green minus excess red, above zero',
};

/** `wanted` asks for one of the two methods; otherwise the picture decides. */
export function greenCover(picture: PictureRgb, wanted?: CoverMethod): GreenCover {
  const split = otsuSplit(levelCounts(picture));
  const method = wanted ?? (fallsIntoTwo(split) ? 'otsu' : 'fixed');
  const mask = method === 'otsu' ? greenerThan(picture, split.firstUpper) : greenerThanRed(picture);
  return {
    coverPercent: coverPercent(mask),
    method: methodWords[method],
    warnings: pictureWarnings(picture),
    mask,
  };
}

/** Percent of ones, to one decimal; 0 where there is nothing. */
export function coverPercent(mask: Uint8Array): number {
  const plant = mask.reduce((sum, one) => sum + one, 0);
  return mask.length === 0 ? 0 : Math.round((1000 * plant) / mask.length) / 10;
}

const levels = 300;
/** Excess green runs from -1 to 2. */
const levelOf = (greenness: number): number => Math.min(levels - 1, Math.floor((greenness + 1) * 100));

function levelCounts({ data, width, height }: PictureRgb): Uint32Array {
  const counts = new Uint32Array(levels);
  for (let at = 0; at < width * height * 3; at += 3)
    counts[levelOf(excessGreen(data[at]!, data[at + 1]!, data[at + 2]!))]!++;
  return counts;
}

/**
 * One normal heap cut in half gives halves 2.6 of their standard deviations apart, one even heap 3.5; two heaps are
 * further apart. The upper one must be green and the lower one not, else both are leaves, or both ground.
 */
const leastApart = 3.5;
const leastGreen = levelOf(0.1);
const mostGreenGround = levelOf(0.12);

function fallsIntoTwo({ lower, upper }: OtsuSplit): boolean {
  const spread = Math.sqrt((lower.variance + upper.variance) / 2);
  return (
    lower.share > 0 &&
    upper.mean - lower.mean > leastApart * spread &&
    upper.mean > leastGreen &&
    lower.mean < mostGreenGround
  );
}

const greenerThan = (picture: PictureRgb, firstLevel: number): Uint8Array =>
  maskOf(picture, (red, green, blue) => levelOf(excessGreen(red, green, blue)) >= firstLevel);

const greenerThanRed = (picture: PictureRgb): Uint8Array =>
  maskOf(picture, (red, green, blue) => excessGreen(red, green, blue) - excessRed(red, green, blue) > 0);

function maskOf(
  { data, width, height }: PictureRgb,
  isPlant: (red: number, green: number, blue: number) => boolean,
): Uint8Array {
  const mask = new Uint8Array(width * height);
  for (let pixel = 0; pixel < mask.length; pixel++)
    mask[pixel] = isPlant(data[pixel * 3]!, data[pixel * 3 + 1]!, data[pixel * 3 + 2]!) ? 1 : 0;
  return mask;
}
