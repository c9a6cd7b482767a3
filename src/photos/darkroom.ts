/**
 * Where photos are opened: child processes with limits of time, memory and pixels. A file that hangs or crashes its
 * child takes nothing else with it: the child is killed, another is started, the queue goes on.
 */
import { type DarkroomLimits, openBenches } from './darkroom-benches.ts';
import type { CoverAnswer, Developed, Order, Report } from './darkroom-orders.ts';
import { type Examined, notOpened } from './examined.ts';
import { type RefusalReason, refusalWords } from './ingest.ts';

export type { Cover, CoverAnswer, Developed } from './darkroom-orders.ts';

export interface Darkroom {
  /** Metadata and whether a picture can be made of it. Never rejects for what a file holds. */
  examine(path: string): Promise<Examined>;
  /** Two smaller upright copies, WebP in sRGB without metadata, long side 480 and 1600 px. */
  develop(path: string, to: { small: string; large: string }): Promise<Developed>;
  /** Green cover of a photo taken straight down; the mask, if asked for, is written as PNG. */
  cover(path: string, maskPath?: string): Promise<CoverAnswer>;
  /** Ends the children; what was waiting or under way is answered as refused with `stopped`. */
  close(): Promise<void>;
  /** From the call of close on. A refusal that arrives now says nothing about its photo and should not be kept. */
  isClosed(): boolean;
}

export function openDarkroom({
  workers = 2,
  timeLimitMs = 20_000,
  memoryLimitMb = 1024,
}: Partial<DarkroomLimits> = {}): Darkroom {
  const benches = openBenches({ workers, timeLimitMs, memoryLimitMb });

  async function ask<Answer extends Report['answer']>(
    order: Order,
    otherwise: (reason: RefusalReason) => Answer,
  ): Promise<Answer> {
    const outcome = await benches.ask(order);
    return 'refused' in outcome ? otherwise(outcome.refused) : (outcome.answer as Answer);
  }

  return {
    examine: (path) => ask<Examined>({ do: 'examine', path }, notOpened),
    develop: (path, to) => ask<Developed>({ do: 'develop', path, ...to }, noPicture),
    cover: (path, maskPath) =>
      ask<CoverAnswer>({ do: 'cover', path, ...(maskPath && { maskPath }) }, noPicture),
    close: benches.close,
    isClosed: benches.isClosed,
  };
}

const noPicture = (reason: RefusalReason): { fault: string } => ({ fault: refusalWords[reason] });
