/** Pixels of a photo through sharp, or through heic-decode for HEIC: upright, sRGB, within a limit of pixels. */
import { writeFile } from 'node:fs/promises';
import decodeHeic from 'heic-decode';
import sharp, { type Sharp } from 'sharp';
import { photoKind } from './kind.ts';

/** The largest picture that is opened: sharp's own default, 0x3FFF by 0x3FFF. */
export const MOST_PIXELS = 0x3fff * 0x3fff;

const OPENED = { failOn: 'error', limitInputPixels: MOST_PIXELS } as const;

/** A pipeline whose pixels are upright already or will be turned by it; HEIC comes out of its decoder upright. */
export async function openPicture(bytes: Uint8Array): Promise<Sharp> {
  if (photoKind(bytes.subarray(0, 64)) !== 'heic') return sharp(bytes, OPENED).rotate();
  const { width, height, data } = await decodeHeic({ buffer: bytes as never });
  return sharp(Buffer.from(data), { raw: { width, height, channels: 4 }, limitInputPixels: MOST_PIXELS });
}

export async function writeSmaller(
  bytes: Uint8Array,
  copies: { path: string; longSidePx: number }[],
): Promise<void> {
  let picture = await openPicture(bytes);
  for (const { path, longSidePx } of copies) {
    const copy = await picture
      .toColourspace('srgb')
      .resize({ width: longSidePx, height: longSidePx, fit: 'inside', withoutEnlargement: true })
      .webp({ quality: 80, effort: 2 })
      .toBuffer();
    await writeFile(path, copy);
    picture = sharp(copy);
  }
}

export interface Pixels {
  /** RGB, three bytes a pixel, row by row. */
  data: Uint8Array;
  width: number;
  height: number;
}

export async function openPixels(bytes: Uint8Array, longSidePx: number): Promise<Pixels> {
  const picture = await openPicture(bytes);
  const { data, info } = await picture
    .removeAlpha()
    .toColourspace('srgb')
    .resize({ width: longSidePx, height: longSidePx, fit: 'inside', withoutEnlargement: true })
    .raw()
    .toBuffer({ resolveWithObject: true });
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
