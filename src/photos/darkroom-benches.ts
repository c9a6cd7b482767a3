/**
 * The child processes of the darkroom and the queue before them. Each order is answered exactly once, in words if need
 * be: a child that takes too long, too much memory, or dies (at its start too) costs the order that it had, no other.
 */
import { type ChildProcess, fork } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import type { Order, Report } from './darkroom-orders.ts';
import type { RefusalReason } from './ingest.ts';

export interface DarkroomLimits {
  workers: number;
  /** For one order, once the child that gets it has started. */
  timeLimitMs: number;
  /** For one child, everything counted. */
  memoryLimitMb: number;
}

export type Outcome = { answer: Report['answer'] } | { refused: RefusalReason };

export interface Benches {
  ask(order: Order): Promise<Outcome>;
  /** Returns when no child is left; what was waiting or under way is answered with `stopped`. */
  close(): Promise<void>;
  isClosed(): boolean;
}

interface Job {
  order: Order;
  done(outcome: Outcome): void;
}

interface Bench {
  child: ChildProcess;
  job: Job | null;
  timer: NodeJS.Timeout | null;
  ready: boolean;
  killedFor: RefusalReason | null;
  gone: Promise<void>;
}

/** A busy machine may be slow to start a child, which is no fault of the photo. */
const startLimitMs = 60_000;

export function openBenches(limits: DarkroomLimits): Benches {
  const waiting: Job[] = [];
  const benches = new Set<Bench>();
  let closed = false;

  function takeNext(): void {
    if (closed) return;
    const free = [...benches].find((bench) => bench.job === null && bench.killedFor === null);
    if (waiting.length === 0 || (!free && benches.size >= limits.workers)) return;
    give(waiting.shift()!, free ?? startBench());
    takeNext();
  }

  function give(job: Job, bench: Bench): void {
    bench.job = job;
    keepAlive(bench, true);
    setTimer(bench);
    // Where the child died between two orders, its exit answers for this one.
    bench.child.send(job.order, () => {});
  }

  function setTimer(bench: Bench): void {
    if (bench.timer) clearTimeout(bench.timer);
    const limitMs = bench.ready ? limits.timeLimitMs : startLimitMs;
    bench.timer = setTimeout(() => kill(bench, 'took-too-long'), limitMs);
  }

  function startBench(): Bench {
    const child = startChild(limits.memoryLimitMb);
    const gone = new Promise<void>((resolve) => {
      child.once('exit', () => resolve());
      child.on('error', () => child.pid === undefined && resolve());
    });
    const bench: Bench = { child, job: null, timer: null, ready: false, killedFor: null, gone };
    benches.add(bench);
    child.on('message', (message: 'ready' | Report) => {
      if (message === 'ready') {
        bench.ready = true;
        if (bench.job) setTimer(bench);
        return;
      }
      const { answer, tired } = message;
      if (tired) kill(bench, 'stopped');
      finish(bench, { answer });
    });
    child.once('exit', (_, signal) => leave(bench, bench.killedFor ?? reasonOf(signal)));
    child.on('error', () => child.pid === undefined && leave(bench, 'could-not-be-read'));
    return bench;
  }

  function leave(bench: Bench, refused: RefusalReason): void {
    benches.delete(bench);
    finish(bench, { refused });
  }

  function finish(bench: Bench, outcome: Outcome): void {
    const { job, timer } = bench;
    if (timer) clearTimeout(timer);
    bench.job = null;
    bench.timer = null;
    keepAlive(bench, false);
    job?.done(outcome);
    takeNext();
  }

  return {
    ask: (order) =>
      new Promise((done) => {
        if (closed) return done({ refused: 'stopped' });
        waiting.push({ order, done });
        takeNext();
      }),
    close: async () => {
      closed = true;
      for (const { done } of waiting.splice(0)) done({ refused: 'stopped' });
      const left = [...benches];
      for (const bench of left) {
        keepAlive(bench, true);
        kill(bench, 'stopped');
      }
      await Promise.all(left.map(({ gone }) => gone));
    },
    isClosed: () => closed,
  };
}

function startChild(memoryLimitMb: number): ChildProcess {
  return fork(fileURLToPath(new URL('./darkroom-child.ts', import.meta.url)), [String(memoryLimitMb)], {
    execArgv: [
      '--import',
      import.meta.resolve('tsx'),
      `--max-old-space-size=${Math.max(1, Math.floor(memoryLimitMb / 2))}`,
    ],
    stdio: ['ignore', 'ignore', 'ignore', 'ipc'],
    serialization: 'advanced',
  });
}

function kill(bench: Bench, why: RefusalReason): void {
  bench.killedFor ??= why;
  bench.child.kill('SIGKILL');
}

/** A child without work must not keep the process running that started it. */
function keepAlive({ child }: Bench, alive: boolean): void {
  if (alive) {
    child.ref();
    child.channel?.ref();
  } else {
    child.unref();
    child.channel?.unref();
  }
}

/** SIGUSR2 from the watch, SIGABRT from a full heap, SIGKILL from a system that ran out. */
const memorySignals: (NodeJS.Signals | null)[] = ['SIGUSR2', 'SIGABRT', 'SIGKILL'];

const reasonOf = (signal: NodeJS.Signals | null): RefusalReason =>
  memorySignals.includes(signal) ? 'took-too-much-memory' : 'could-not-be-read';
