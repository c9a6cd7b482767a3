/** The watch against processes that are caught in a loop and can't be asked to stop. */
import { spawnSync } from 'node:child_process';
import { expect, test } from 'vitest';

const watch = new URL('../../src/photos/darkroom-watch.mjs', import.meta.url).href;

/** A process under watch that then does nothing but `loop`. */
const watched = (loop: string, mostBytes: number): string[] => [
  '-e',
  `const { Worker } = require('node:worker_threads');
   new Worker(new URL(${JSON.stringify(watch)}), { workerData: { mostBytes: ${mostBytes}, parent: process.ppid } })
     .once('online', () => setTimeout(() => { console.log(process.pid); ${loop} }, 100));`,
];

test('memory outside of JavaScript goes over the limit: ended with its own signal', () => {
  const greedy = 'const kept = []; for (;;) kept.push(Buffer.alloc(1e7, 1));';
  const { signal } = spawnSync(process.execPath, watched(greedy, 4e8), { timeout: 50_000 });
  expect(signal).toBe('SIGUSR2');
});

test('the process that started it is gone: the loop ends too', async () => {
  const starter = `const { spawn } = require('node:child_process');
    const child = spawn(process.execPath, ${JSON.stringify(watched('for (;;);', 4e9))}, { stdio: ['ignore', 'pipe', 'ignore'] });
    child.stdout.once('data', (pid) => { process.stdout.write(pid, () => process.exit(0)); });`;
  const pid = Number(spawnSync(process.execPath, ['-e', starter], { encoding: 'utf8' }).stdout);
  expect(pid).toBeGreaterThan(0);
  await expect.poll(() => isAlive(pid), { timeout: 30_000 }).toBe(false);
});

/** A process that has ended but that nobody has waited for yet counts as ended. */
function isAlive(pid: number): boolean {
  const { stdout } = spawnSync('ps', ['-o', 'stat=', '-p', String(pid)], { encoding: 'utf8' });
  return stdout.trim() !== '' && !stdout.trim().startsWith('Z');
}
