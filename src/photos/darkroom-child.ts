/** Runs in a child process of the darkroom: opens one file at a time and answers; whatever happens here stays here. */
import { readFile, stat } from 'node:fs/promises';
import { Worker } from 'node:worker_threads';
import sharp from 'sharp';
import { greenCover } from '../agronomy/canopy-cover.ts';
import type { CoverAnswer, Developed, Order, Report } from './darkroom-orders.ts';
import { examineBytes } from './examine-bytes.ts';
import { notOpened } from './examined.ts';
import { mostBytes, type RefusalReason, refusalWords } from './ingest.ts';
import { openPixels, writeMask, writeSmaller } from './pixels.ts';

const memoryLimitBytes = Number(process.argv[2]) * 1024 * 1024;

new Worker(new URL('./darkroom-watch.mjs', import.meta.url), {
  execArgv: [],
  workerData: { mostBytes: memoryLimitBytes, parent: process.ppid },
});
// Each file is opened once, by one of several processes: keeping pictures or starting threads only costs memory.
sharp.cache(false);
sharp.concurrency(1);

process.on('message', async (order: Order) => {
  const report: Report = {
    answer: await answer(order),
    tired: process.memoryUsage.rss() > memoryLimitBytes / 2,
  };
  process.send!(report);
});
process.on('disconnect', () => process.exit(0));
process.send!('ready');

async function answer(order: Order): Promise<Report['answer']> {
  const bytes = await bytesOf(order.path);
  if (typeof bytes === 'string')
    return order.do === 'examine' ? notOpened(bytes) : { fault: refusalWords[bytes] };
  if (order.do === 'examine') return examineBytes(bytes);
  return order.do === 'develop' ? develop(bytes, order) : cover(bytes, order);
}

async function bytesOf(path: string): Promise<Buffer | RefusalReason> {
  const found = await stat(path).catch(() => null);
  if (!found) return 'file-not-found';
  if (!found.isFile()) return 'not-a-supported-image';
  if (found.size > mostBytes) return 'too-large';
  return readFile(path).catch(() => 'could-not-be-read' as const);
}

async function develop(
  bytes: Uint8Array,
  { small, large }: { small: string; large: string },
): Promise<Developed> {
  try {
    await writeSmaller(bytes, [
      { path: large, longSidePx: 1600 },
      { path: small, longSidePx: 480 },
    ]);
    return { fault: null };
  } catch (error) {
    return { fault: inWords(error) };
  }
}

async function cover(bytes: Uint8Array, { maskPath }: { maskPath?: string }): Promise<CoverAnswer> {
  try {
    const pixels = await openPixels(bytes, 1600);
    const { coverPercent, method, warnings, mask } = greenCover(pixels);
    if (maskPath) await writeMask(mask, pixels, maskPath);
    return { coverPercent, method, warnings };
  } catch (error) {
    return { fault: inWords(error) };
  }
}

const inWords = (error: unknown): string =>
  `No picture could be made of this file (${(error as Error).message.split('\n')[0]}); the original is kept.`;
