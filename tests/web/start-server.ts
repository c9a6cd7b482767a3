/** The real server, as a child process with a data folder of its own. */
import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

export interface Server {
  url: string;
  dataFolder: string;
  /** Ends it as an operator would; resolves with its exit code. */
  stop(options?: { keepData?: boolean }): Promise<number | null>;
}

const entry = fileURLToPath(new URL('../../src/server.ts', import.meta.url));
const READY_WITHIN_MS = 120_000;

/** `sample: false` starts with nothing set up. */
export async function startServer({
  sample = true,
  dataFolder = mkdtempSync(join(tmpdir(), 'bundwalk-data-')),
} = {}): Promise<Server> {
  const child = spawn(process.execPath, ['--import', 'tsx', entry], {
    env: { ...process.env, PORT: '0', HOST: '127.0.0.1', DATA: dataFolder, SAMPLE: sample ? 'yes' : 'no' },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  const url = await ready(child);
  return {
    url,
    dataFolder,
    stop: async ({ keepData = false } = {}) => {
      const code = await ended(child);
      if (!keepData) rmSync(dataFolder, { recursive: true, force: true });
      return code;
    },
  };
}

function ready(child: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    let said = '';
    const late = setTimeout(
      () => reject(new Error(`The server was not ready in time:\n${said}`)),
      READY_WITHIN_MS,
    );
    const hear = (words: Buffer): void => {
      said += words;
      const url = /Bundwalk is ready: (http:\S+)/.exec(said)?.[1];
      if (!url) return;
      clearTimeout(late);
      resolve(url);
    };
    child.stdout!.on('data', hear);
    child.stderr!.on('data', hear);
    child.once('exit', (code) => reject(new Error(`The server ended with ${code}:\n${said}`)));
  });
}

const ended = (child: ChildProcess): Promise<number | null> =>
  new Promise((resolve) => {
    if (child.exitCode !== null) return resolve(child.exitCode);
    child.once('exit', (code) => resolve(code));
    child.kill('SIGTERM');
  });
