/** Everything that can be learned from a photo's bytes. Runs in the darkroom's child, where it can be stopped. */
import sharp from 'sharp';
import { type BoxWalk, walkBoxes } from './box-walk.ts';
import type { Examined } from './examined.ts';
import { accepted, type Ingest, mostPixels, refused } from './ingest.ts';
import { isIsoMedia, kindOf } from './kind.ts';
import { openPicture } from './pixels.ts';
import { positionFact } from './position-fact.ts';
import { noTags, type RawTags } from './raw-tags.ts';
import { readMetadata } from './read-metadata.ts';
import { timeFact } from './time-fact.ts';

export async function examineBytes(bytes: Uint8Array): Promise<Examined> {
  const tags = await readMetadata(bytes);
  const size = await sizeOf(bytes);
  return unopened(tags, await intake(bytes, size), {
    kind: kindOf(bytes),
    width: size?.width ?? null,
    height: size?.height ?? null,
  });
}

/** The facts of a file whose pixels nobody has looked at. */
export function unopened(
  tags: RawTags,
  ingest: Ingest,
  seen: Pick<Examined, 'kind' | 'width' | 'height'> = { kind: null, width: null, height: null },
): Examined {
  return { ...seen, position: positionFact(tags), time: timeFact(tags), ingest };
}

export const notRead = (reason: Parameters<typeof refused>[0]): Examined =>
  unopened(noTags(), refused(reason));

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
  if (size && size.width * size.height > mostPixels) return refused('too-many-pixels');
  try {
    await (await openPicture(bytes)).resize(64, 64, { fit: 'inside' }).raw().toBuffer();
    return accepted(kind);
  } catch {
    return refused('truncated-or-corrupt');
  }
}

const boxes = (bytes: Uint8Array): BoxWalk => (isIsoMedia(bytes) ? walkBoxes(bytes) : { sound: true });
