/**
 * Watches its own process from a thread beside it, also while that is caught in a loop or in native code, and ends it
 * - with SIGUSR2 where it holds more memory than allowed, native memory included, which no flag of Node limits;
 * - with SIGKILL where the process that started it is gone, so that nothing is left spinning after a crash.
 * Plain JavaScript, because a thread starts it without any loader.
 */
import { workerData } from 'node:worker_threads';

const { mostBytes, parent } = workerData;

setInterval(() => {
  if (process.ppid !== parent) process.kill(process.pid, 'SIGKILL');
  if (process.memoryUsage.rss() > mostBytes) process.kill(process.pid, 'SIGUSR2');
}, 50);
