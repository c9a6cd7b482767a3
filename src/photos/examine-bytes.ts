/** Everything that can be learned from a photo's bytes. Runs in the darkroom's child, where it can be stopped. */
import sharp from 'sharp';
import { boxFault } from './box-walk.ts';
import type { Examined } from './examined.ts';
import { type PhotoKind, photoKind } from './kind.ts';
import { MOST_PIXELS, openPicture } from './pixels.ts';
import { positionFacts } from './position-facts.ts';
import { type RawTags, readMetadata } from './read-metadata.ts';
import { timeFacts } from './time-facts.ts';

const NO_TAGS: RawTags = { exif: {}, gps: {}, ifd0: {}, xmp: {} };
const UPRIGHT_ALREADY = 'decode with heic-decode; pixels already rotated: ignore EXIF Orientation';

export async function examineBytes(bytes: Uint8Array): Promise<Examined> {
  const kind = photoKind(bytes.subarray(0, 64));
  const looped = (kind === 'heic' || kind === 'avif') && boxFault(bytes) !== null;
  const size = kind ? await sizeOf(bytes) : null;
  const tags = kind && !looped ? await readMetadata(bytes, size?.exif ?? null) : NO_TAGS;
  return {
    kind,
    position: positionFacts(tags),
    time: timeFacts(tags),
    ingest: await intake(bytes, kind, looped, size),
    width: size?.width ?? null,
    height: size?.height ?? null,
  };
}

interface Size {
  width: number;
  height: number;
  exif: Uint8Array | null;
}

async function sizeOf(bytes: Uint8Array): Promise<Size | null> {
  try {
    const { width, height, exif } = await sharp(bytes, {
      failOn: 'none',
      limitInputPixels: false,
    }).metadata();
    return { width, height, exif: exif ?? null };
  } catch {
    return null;
  }
}

async function intake(
  bytes: Uint8Array,
  kind: PhotoKind | null,
  looped: boolean,
  size: Size | null,
): Promise<Examined['ingest']> {
  if (bytes.length === 0) return { decision: 'reject', reason: 'empty-file' };
  if (kind === null) return { decision: 'reject', reason: 'not-a-supported-image' };
  if (size && size.width * size.height > MOST_PIXELS)
    return { decision: 'reject', reason: 'too-many-pixels' };
  if (looped) return { decision: 'reject', reason: 'truncated-or-corrupt' };
  try {
    await (await openPicture(bytes)).resize(64, 64, { fit: 'inside' }).raw().toBuffer();
    return { decision: 'accept', reason: kind === 'heic' ? UPRIGHT_ALREADY : '' };
  } catch {
    return { decision: 'reject', reason: 'truncated-or-corrupt' };
  }
}
