/** Everything that can be learned from a photo's bytes. Runs in the darkroom's child, where it can be stopped. */
import sharp from 'sharp';
import { type BoxWalk, walkBoxes } from './box-walk.ts';
import { type Examined, facts } from './examined.ts';
import { accepted, type Ingest, longestSidePx, mostPixels, refused } from './ingest.ts';
import { isIsoMedia, kindOf } from './kind.ts';
import { openPicture } from './pixels.ts';
import { readMetadata } from './read-metadata.ts';

export async function examineBytes(bytes: Uint8Array): Promise<Examined> {
  const tags = await readMetadata(bytes);
  const size = await sizeOf(bytes);
  return {
    kind: kindOf(bytes),
    ...facts(tags),
    ingest: await intake(bytes, size),
    width: size?.width ?? null,
    height: size?.height ?? null,
  };
}

type Size = { width: number; height: number };

async function sizeOf(bytes: Uint8Array): Promise<Size | null> {
  if (kindOf(bytes) === null || !boxes(bytes).sound) return null;
  try {
    const { width, height } = await sharp(bytes, { failOn: 'none', limitInputPixels: false }).metadata();
    return { width, height };
  } catch {
    return null;
  }
}

async function intake(bytes: Uint8Array, size: Size | null): Promise<Ingest> {
  if (bytes.length === 0) return refused('empty-file');
  if (!boxes(bytes).sound) return refused('truncated-or-corrupt');
  const kind = kindOf(bytes);
  if (kind === null) return refused('not-a-supported-image');
  if (size && isTooLarge(size)) return refused('too-many-pixels');
  try {
    await (await openPicture(bytes)).resize(64, 64, { fit: 'inside' }).raw().toBuffer();
    return accepted(kind);
  } catch {
    return refused('truncated-or-corrupt');
  }
}

const isTooLarge = ({ width, height }: Size): boolean =>
  width * height > mostPixels || Math.max(width, height) > longestSidePx;

const boxes = (bytes: Uint8Array): BoxWalk => (isIsoMedia(bytes) ? walkBoxes(bytes) : { sound: true });
