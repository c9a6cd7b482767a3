/** Pixels of a photo through sharp, or through heic-decode for HEIC: upright, sRGB, within a limit of pixels. */
import { rename, writeFile } from 'node:fs/promises';
import decodeHeic from 'heic-decode';
import sharp, { type Sharp } from 'sharp';
import { mostPixels } from './ingest.ts';
import { kindOf } from './kind.ts';
import { withProfile } from './png-colour-profile.ts';

/** sharp's default refuses photos that are usable, and `none` takes cut ones. */
const opened = { failOn: 'error', limitInputPixels: mostPixels } as const;

/** A pipeline whose pixels are upright already or will be turned by it. Throws where there is no picture in the bytes. */
export async function openPicture(bytes: Uint8Array): Promise<Sharp> {
  if (kindOf(bytes) !== 'heic') return sharp(bytes, opened).rotate();
  // Its decoder has no limit, and its pixels are upright already: turning them by Orientation would turn them twice.
  const { width: wide, height: high } = await sharp(bytes, opened).metadata();
  if (wide * high > mostPixels) throw new Error('the picture has too many pixels');
  const { width, height, data } = await decodeHeic({ buffer: bytes });
  return sharp(data, { raw: { width, height, channels: 4 }, limitInputPixels: mostPixels });
}

/** Upright, in sRGB, no side longer than `longSidePx`; HEIC's own colours are turned into sRGB once they are few. */
async function openReduced(bytes: Uint8Array, longSidePx: number): Promise<Sharp> {
  const reduced = (await openPicture(bytes)).resize({
    width: longSidePx,
    height: longSidePx,
    fit: 'inside',
    withoutEnlargement: true,
  });
  const profile = kindOf(bytes) === 'heic' ? (await sharp(bytes, opened).metadata()).icc : undefined;
  if (!profile) return reduced.toColourspace('srgb');
  const png = await reduced.png({ compressionLevel: 1 }).toBuffer();
  return sharp(withProfile(png, profile)).toColourspace('srgb');
}

/** From the longest to the shortest, each made from the one before. A copy stands under its name whole or not at all. */
export async function writeSmaller(
  bytes: Uint8Array,
  copies: { path: string; longSidePx: number }[],
): Promise<void> {
  let from = bytes;
  for (const { path, longSidePx } of copies) {
    const copy = await (await openReduced(from, longSidePx)).webp({ quality: 80, effort: 2 }).toBuffer();
    await writeFile(`${path}.part`, copy);
    await rename(`${path}.part`, path);
    from = copy;
  }
}

export interface Pixels {
  /** RGB, three bytes a pixel, row by row. */
  data: Uint8Array;
  width: number;
  height: number;
}

export async function openPixels(bytes: Uint8Array, longSidePx: number): Promise<Pixels> {
  const picture = await openReduced(bytes, longSidePx);
  const { data, info } = await picture.removeAlpha().raw().toBuffer({ resolveWithObject: true });
  return { data, width: info.width, height: info.height };
}

/** The mask over nothing: plant pixels green and opaque, the rest clear. */
export async function writeMask(mask: Uint8Array, { width, height }: Pixels, path: string): Promise<void> {
  const rgba = new Uint8Array(width * height * 4);
  mask.forEach((plant, pixel) => {
    if (plant) rgba.set([40, 200, 60, 255], pixel * 4);
  });
  await sharp(rgba, { raw: { width, height, channels: 4 } })
    .png()
    .toFile(path);
}
