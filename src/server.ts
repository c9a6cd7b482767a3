/** Configuration and start; the only reader of the environment. */
import {
  createServer,
  type IncomingMessage,
  type RequestListener,
  type Server,
  type ServerResponse,
} from 'node:http';
import type { AddressInfo } from 'node:net';
import { resolve } from 'node:path';
import { z } from 'zod';
import type { Diary } from './diary/diary.ts';
import { catchUp, openDiary } from './diary/open-diary.ts';
import { loadSampleSeason } from './diary/sample-season.ts';
import { StoreRefused } from './storage/open-store.ts';
import { makeApp } from './web/app.ts';
import { buildClient } from './web/build-client.ts';

const environment = z.object({
  PORT: z.coerce.number({ error: 'PORT is no number' }).int().min(0).max(65535).default(8040),
  HOST: z.string().min(1).default('localhost'),
  DATA: z.string().min(1).default('./data'),
  /** `no` leaves an empty diary empty. */
  SAMPLE: z.enum(['yes', 'no'], { error: 'write yes or no' }).default('yes'),
});

await start();

async function start(): Promise<void> {
  const read = environment.safeParse(process.env);
  if (!read.success)
    return refuse(read.error.issues.map(({ path, message }) => `${path.join('.')}: ${message}`).join('\n'));
  const { PORT, HOST, DATA, SAMPLE } = read.data;
  try {
    const diary = openDiary(resolve(DATA));
    // The port is taken first: a clash is told at once, and an early visitor is told to wait.
    let answer: RequestListener = notReadyYet;
    const server = createServer((req, res) => answer(req, res));
    const port = await listen(server, PORT, HOST);
    stopCleanly(server, diary);
    if (SAMPLE === 'yes') await loadSampleSeason(diary, sayHowFar);
    await catchUp(diary);
    answer = makeApp(diary, { buildFolder: await buildClient() });
    console.log(`Bundwalk is ready: http://${HOST}:${port}`);
  } catch (error) {
    if (!(error instanceof StoreRefused)) throw error;
    refuse(error.message);
  }
}

/** Answers with the port, which differs from the asked one where 0 was asked. */
function listen(server: Server, port: number, host: string): Promise<number> {
  return new Promise((resolve) => {
    server.on('error', (error: NodeJS.ErrnoException) => refuse(portWords(error, port)));
    server.listen(port, host, () => resolve((server.address() as AddressInfo).port));
  });
}

function notReadyYet(_req: IncomingMessage, res: ServerResponse): void {
  res.writeHead(503, { 'Content-Type': 'text/plain; charset=utf-8', 'Retry-After': '3', Refresh: '3' });
  res.end('Bundwalk is starting. This page asks again by itself in three seconds.');
}

function stopCleanly(server: Server, diary: Diary): void {
  const stop = (): void => {
    server.close(() => diary.close().then(() => process.exit(0)));
    server.closeIdleConnections();
    // A phone may hold its connection open; what is being written has two seconds to reach the disk.
    setTimeout(() => server.closeAllConnections(), 2000).unref();
  };
  process.once('SIGTERM', stop);
  process.once('SIGINT', stop);
}

/** Said once at the first run, so that nobody waits in front of a silent screen. */
function sayHowFar(done: number, of: number): void {
  if (done <= 1) console.log(`Taking in the sample season, ${of} notes, once; some seconds…`);
}

function portWords(error: NodeJS.ErrnoException, port: number): string {
  return error.code === 'EADDRINUSE'
    ? `Port ${port} is taken by another program. Stop that one, or choose another with PORT=8041.`
    : `The server cannot listen: ${error.message}.`;
}

function refuse(words: string): never {
  console.error(words);
  process.exit(1);
}
