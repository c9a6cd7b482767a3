import { createReadStream } from 'node:fs';
import { stat } from 'node:fs/promises';
import { pipeline } from 'node:stream/promises';
import type { NextFunction, Request, RequestHandler, Response } from 'express';
import type { Diary } from '../diary/diary.ts';
import { copyPath, maskPath, originalPath, type SmallerCopy } from '../storage/media.ts';

const KINDS: Record<string, string> = {
  jpeg: 'image/jpeg',
  png: 'image/png',
  webp: 'image/webp',
  gif: 'image/gif',
  avif: 'image/avif',
  heic: 'image/heic',
  heif: 'image/heif',
  tiff: 'image/tiff',
};

/** A photo by its hash: the original as it came, or a smaller copy. Nothing else of the folder can be asked for. */
export const media =
  (diary: Diary): RequestHandler<{ hash: string; copy: string }> =>
  async (req, res, next) => {
    const { hash, copy } = req.params;
    if (!/^[0-9a-f]{64}$/.test(hash) || !/^(small|large|original|mask)$/.test(copy)) return next();
    const row = await diary.db
      .selectFrom('photos')
      .select(['kind', 'name'])
      .where('id', '=', hash)
      .executeTakeFirst();
    if (!row) return next();
    if (copy === 'mask') return sendMask(maskPath(diary.mediaFolder, hash), req, res, next);
    const original = originalPath(diary.mediaFolder, hash);
    const wanted = copy === 'original' ? original : copyPath(diary.mediaFolder, hash, copy as SmallerCopy);
    const ready = await stat(wanted).catch(() => null);
    // A photo that has just come is not developed yet; until it is, the original stands in.
    const path = ready ? wanted : original;
    const found = ready ?? (await stat(original).catch(() => null));
    if (!found) return next();
    res.set({
      'Content-Type': path === original ? (KINDS[row.kind] ?? 'application/octet-stream') : 'image/webp',
      'Content-Length': String(found.size),
      'Cache-Control': ready ? 'private, max-age=31536000, immutable' : 'no-cache',
      // An original is never run as a page, whatever it holds.
      'Content-Security-Policy': "default-src 'none'; sandbox",
    });
    if (copy === 'original') res.attachment(row.name);
    if (req.method === 'HEAD') return void res.end();
    await pipeline(createReadStream(path), res).catch(() => res.destroy());
  };

/** Measuring again may draw it anew, so that it is asked for each time. */
const sendMask = async (path: string, req: Request, res: Response, next: NextFunction): Promise<void> => {
  const found = await stat(path).catch(() => null);
  if (!found) return next();
  res.set({ 'Content-Type': 'image/png', 'Content-Length': String(found.size), 'Cache-Control': 'no-cache' });
  if (req.method === 'HEAD') return void res.end();
  await pipeline(createReadStream(path), res).catch(() => res.destroy());
};
