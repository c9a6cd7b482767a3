import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { openStore, StoreRefused } from '../../src/storage/open-store.ts';
import { openTestDiary } from '../diary/test-diary.ts';

const WRITER = fileURLToPath(new URL('./keep-until-killed.ts', import.meta.url));

test('what was acknowledged is there after the process is killed, each note once and read', async () => {
  const { diary, folder } = await openTestDiary();
  await diary.close();
  const acknowledged: string[] = [];
  for (let round = 0; round < 4; round++)
    acknowledged.push(...(await writeUntilKilled(folder, round, 15 + round * 25)));

  const { db, close } = openStore(folder);
  const kept = (await db.selectFrom('notes').select('id').execute()).map(({ id }) => id);
  const read = await db.selectFrom('facts').select('note_id').where('kind', '=', 'weeds').execute();
  expect(acknowledged.length).toBeGreaterThan(60);
  expect(acknowledged.filter((id) => !kept.includes(id))).toEqual([]);
  expect(read.map(({ note_id }) => note_id).sort()).toEqual([...kept].sort());
  await close();
  rmSync(folder, { recursive: true, force: true });
});

/** Kills the writer once it has acknowledged so many notes. */
async function writeUntilKilled(folder: string, round: number, after: number): Promise<string[]> {
  const writer = spawn(
    process.execPath,
    ['--import', import.meta.resolve('tsx'), WRITER, folder, String(round)],
    { stdio: ['ignore', 'pipe', 'inherit'] },
  );
  let printed = '';
  writer.stdout.on('data', (chunk: Buffer) => {
    printed += chunk;
    if (printed.split('\n').length > after) writer.kill('SIGKILL');
  });
  await once(writer, 'close');
  return printed.split('\n').slice(0, -1);
}

test('a folder that cannot be written is refused in words', () => {
  const folder = mkdtempSync(join(tmpdir(), 'bundwalk-'));
  writeFileSync(join(folder, 'data'), 'a file where the folder should be');
  expect(() => openStore(join(folder, 'data'))).toThrow(StoreRefused);
  expect(() => openStore(join(folder, 'data'))).toThrow(/cannot be written.*start again/);
});

test('a database that is none is refused and left as it is', () => {
  const folder = mkdtempSync(join(tmpdir(), 'bundwalk-'));
  writeFileSync(join(folder, 'bundwalk.db'), 'no database at all '.repeat(400));
  expect(() => openStore(folder)).toThrow(/cannot be opened/);
});

test('a folder of a newer version is refused', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'bundwalk-'));
  const store = openStore(folder);
  await store.db
    .insertInto('migrations' as never)
    .values({ name: '999 of the future', applied_at: '' } as never)
    .execute();
  await store.close();
  expect(() => openStore(folder)).toThrow(/newer Bundwalk/);
});
