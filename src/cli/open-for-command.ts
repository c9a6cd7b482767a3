/** The diary as a command uses it: the data folder from `--data FOLDER`, else ./data; refusals in words. */
import { resolve } from 'node:path';
import { parseArgs } from 'node:util';
import type { Diary } from '../diary/diary.ts';
import { openDiary } from '../diary/open-diary.ts';
import { StoreRefused } from '../storage/open-store.ts';

/** Exits with 2 and the usage where not exactly one folder is named, with 1 where the data folder cannot be used. */
export function openForCommand(usage: string): { diary: Diary; folder: string } {
  const { positionals, values } = parseArgs({
    allowPositionals: true,
    options: { data: { type: 'string', default: './data' } },
  });
  const folder = positionals[0];
  if (!folder || positionals.length > 1) stop(`Usage: ${usage}`, 2);
  try {
    return { diary: openDiary(resolve(values.data)), folder: resolve(folder) };
  } catch (error) {
    if (error instanceof StoreRefused) stop(error.message, 1);
    throw error;
  }
}

export function stop(words: string, code: number): never {
  console.error(words);
  process.exit(code);
}

/** `Photos 12 of 40`, in place on a terminal, every hundredth otherwise. */
export function showProgress(what: string, done: number, of: number): void {
  const line = `${what} ${done} of ${of}`;
  if (process.stderr.isTTY) process.stderr.write(`\r${line}${done === of ? '\n' : ''}`);
  else if (done === of || done % 100 === 0) console.error(line);
}
