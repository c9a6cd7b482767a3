/** Runs in a child process of the darkroom: opens one file at a time and answers; whatever happens here stays here. */
import { readFile } from 'node:fs/promises';
import { greenCover } from '../agronomy/canopy-cover.ts';
import type { CoverAnswer, Developed, Order } from './darkroom.ts';
import { examineBytes } from './examine-bytes.ts';
import { openPixels, writeMask, writeSmaller } from './pixels.ts';

process.on('message', async (order: Order) => {
  process.send!(await answer(order));
});
process.on('disconnect', () => process.exit(0));

async function answer(order: Order): Promise<unknown> {
  const bytes = await readFile(order.path).catch(() => null);
  if (bytes === null)
    return order.do === 'examine' ? examineBytes(new Uint8Array()) : { fault: 'The file is not there.' };
  if (order.do === 'examine') return examineBytes(bytes);
  return order.do === 'develop' ? develop(bytes, order) : cover(bytes, order);
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
    const pixels = await openPixels(bytes, 800);
    const { coverPercent, method, warnings, mask } = greenCover(pixels);
    if (maskPath) await writeMask(mask, pixels, maskPath);
    return { coverPercent, method, warnings };
  } catch (error) {
    return { fault: inWords(error) };
  }
}

const inWords = (error: unknown): string =>
  `No picture could be made of this file (${(error as Error).message.split('\n')[0]}); the original is kept.`;
