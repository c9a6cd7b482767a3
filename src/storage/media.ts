/** Original files by the hash of their content: kept byte for byte, the same file twice is one file. */
import { createHash } from 'node:crypto';
import { createReadStream, existsSync, type PathLike } from 'node:fs';
import { copyFile, mkdir, open, rename, rm } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { pipeline } from 'node:stream/promises';

/** SHA-256 of a file, hex. */
export async function hashOfFile(path: PathLike): Promise<string> {
  const hash = createHash('sha256');
  await pipeline(createReadStream(path), hash);
  return hash.digest('hex');
}

/** Where an original lies: two letters of its hash make the folder, so that no folder grows too long. */
export const originalPath = (mediaFolder: string, hash: string): string =>
  join(mediaFolder, hash.slice(0, 2), hash);

export type SmallerCopy = 'small' | 'large';
export const copyPath = (mediaFolder: string, hash: string, copy: SmallerCopy): string =>
  `${originalPath(mediaFolder, hash)}.${copy}.webp`;

/** The green mask of a photo taken straight down. */
export const maskPath = (mediaFolder: string, hash: string): string =>
  `${originalPath(mediaFolder, hash)}.mask.png`;

/**
 * Moves a received file to its place under its hash and answers with the hash. The bytes are on the disk
 * before this returns; a file that is there already is left as it is.
 */
export async function keepOriginal(mediaFolder: string, received: string): Promise<string> {
  const hash = await hashOfFile(received);
  const path = originalPath(mediaFolder, hash);
  if (existsSync(path)) {
    await rm(received);
    return hash;
  }
  await mkdir(dirname(path), { recursive: true });
  await sync(received);
  await rename(received, path);
  await sync(dirname(path));
  return hash;
}

/** As keepOriginal, for a file that stays where it is. */
export async function keepCopyOf(mediaFolder: string, path: string): Promise<string> {
  const received = join(mediaFolder, `incoming-${process.pid}-${Math.random().toString(36).slice(2)}`);
  await copyFile(path, received);
  return keepOriginal(mediaFolder, received);
}

async function sync(path: string): Promise<void> {
  const handle = await open(path, 'r');
  await handle.sync();
  await handle.close();
}
