/**
 * Where photos are opened: child processes with limits of time, memory and pixels. A file that hangs or crashes its
 * child takes nothing else with it: the child is killed, another is started, the queue goes on.
 */
import { type ChildProcess, fork } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import type { Examined } from './examined.ts';

export interface Cover {
  coverPercent: number;
  method: string;
  warnings: string[];
}
export type CoverAnswer = Cover | { fault: string };
export interface Developed {
  /** Why no picture could be made, in words; null where both copies are there. */
  fault: string | null;
}

export interface Darkroom {
  /** Metadata and whether a picture can be made of it. Never rejects for what a file holds. */
  examine(path: string): Promise<Examined>;
  /** Two smaller upright copies, WebP in sRGB, long side 480 and 1600 px. */
  develop(path: string, to: { small: string; large: string }): Promise<Developed>;
  /** Green cover of a photo taken straight down; the mask, if asked for, is written as PNG. */
  cover(path: string, maskPath?: string): Promise<CoverAnswer>;
  close(): Promise<void>;
}

export type Order =
  | { do: 'examine'; path: string }
  | { do: 'develop'; path: string; small: string; large: string }
  | { do: 'cover'; path: string; maskPath?: string };

interface Job {
  order: Order;
  done(answer: unknown): void;
}
interface Bench {
  child: ChildProcess;
  job: Job | null;
  timer: NodeJS.Timeout | null;
}

export interface DarkroomLimits {
  workers?: number;
  timeLimitMs?: number;
  memoryLimitMb?: number;
}

export function openDarkroom({
  workers = 2,
  timeLimitMs = 20_000,
  memoryLimitMb = 512,
}: DarkroomLimits = {}): Darkroom {
  const waiting: Job[] = [];
  const benches = new Set<Bench>();
  let closed = false;

  const ask = <T>(order: Order): Promise<T> =>
    new Promise((resolve, reject) => {
      if (closed) return reject(new Error('The darkroom is closed.'));
      waiting.push({ order, done: (answer) => resolve(answer as T) });
      takeNext();
    });

  function takeNext(): void {
    const free = [...benches].find((bench) => bench.job === null);
    if (waiting.length === 0 || (!free && benches.size >= workers)) return;
    const bench = free ?? startBench();
    const job = waiting.shift()!;
    bench.job = job;
    bench.child.ref();
    bench.child.channel?.ref();
    bench.timer = setTimeout(() => bench.child.kill('SIGKILL'), timeLimitMs);
    bench.child.send(job.order);
    takeNext();
  }

  function startBench(): Bench {
    const child = fork(fileURLToPath(new URL('./darkroom-child.ts', import.meta.url)), [], {
      execArgv: ['--import', import.meta.resolve('tsx'), `--max-old-space-size=${memoryLimitMb}`],
      stdio: ['ignore', 'ignore', 'ignore', 'ipc'],
      serialization: 'advanced',
    });
    const bench: Bench = { child, job: null, timer: null };
    benches.add(bench);
    child.on('message', (answer) => finish(bench, answer));
    child.on('exit', () => {
      benches.delete(bench);
      finish(bench, { killed: true });
    });
    return bench;
  }

  function finish(bench: Bench, answer: unknown): void {
    if (bench.timer) clearTimeout(bench.timer);
    const { job } = bench;
    bench.job = null;
    bench.timer = null;
    if (bench.child.connected) {
      bench.child.unref();
      bench.child.channel?.unref();
    }
    job?.done(answer);
    takeNext();
  }

  return {
    examine: async (path) => {
      const answer = await ask<Examined | { killed: true }>({ do: 'examine', path });
      return 'killed' in answer ? couldNotBeRead() : answer;
    },
    develop: async (path, to) => {
      const answer = await ask<Developed | { killed: true }>({ do: 'develop', path, ...to });
      return 'killed' in answer ? { fault: TOO_MUCH } : answer;
    },
    cover: async (path, maskPath) => {
      const answer = await ask<CoverAnswer | { killed: true }>({
        do: 'cover',
        path,
        ...(maskPath && { maskPath }),
      });
      return 'killed' in answer ? { fault: TOO_MUCH } : answer;
    },
    close: async () => {
      closed = true;
      for (const { child } of benches) child.kill('SIGKILL');
    },
  };
}

const TOO_MUCH = 'It took too long or too much memory to open, so it was put aside; the original is kept.';

const couldNotBeRead = (): Examined => ({
  kind: null,
  position: {
    status: 'absent',
    latitude: null,
    longitude: null,
    source: null,
    accuracy_m: null,
    direction_deg: null,
    direction_ref: null,
  },
  time: {
    status: 'absent',
    wall: null,
    source: null,
    offset: null,
    offset_source: null,
    utc: null,
    flags: [],
  },
  ingest: { decision: 'reject', reason: 'truncated-or-corrupt' },
  width: null,
  height: null,
});
