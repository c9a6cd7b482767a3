import { execFile } from 'node:child_process';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { endlessHeic, fieldPhoto } from '../photos/written-photos.ts';

const root = fileURLToPath(new URL('../../', import.meta.url));
let folder = '';
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'photo-command-'));
});
afterAll(() => rm(folder, { recursive: true }));

test('one line of JSON a file, in the order of the names, and an end by itself', {
  timeout: 120_000,
}, async () => {
  const good = await fieldPhoto();
  const files = {
    'plot 7 – 早.jpg': good,
    'cut.jpg': good.subarray(0, good.length - 60),
    'hangs.heic': endlessHeic(),
    'words.jpg': Buffer.from('no photo'),
    'empty.jpg': Buffer.alloc(0),
  };
  for (const [name, bytes] of Object.entries(files)) await writeFile(join(folder, name), bytes);
  const names = ['hangs.heic', 'plot 7 – 早.jpg', 'cut.jpg', 'words.jpg', 'empty.jpg', 'not there.jpg'].map(
    (name) => join(folder, name),
  );
  const { stdout } = await promisify(execFile)('npm', ['run', '--silent', 'photo', '--', ...names], {
    cwd: root,
  });
  const lines = stdout
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line));
  expect(lines.map(({ file }) => file)).toEqual(names);
  expect(lines.map(({ ingest }) => [ingest.decision, ingest.reason])).toEqual([
    ['reject', 'truncated-or-corrupt'],
    ['accept', ''],
    ['reject', 'truncated-or-corrupt'],
    ['reject', 'not-a-supported-image'],
    ['reject', 'empty-file'],
    ['reject', 'file-not-found'],
  ]);
  expect(lines[1]).toMatchObject({
    position: { status: 'valid', latitude: 14.17, longitude: 121.251 },
    time: { utc: '2026-07-13T22:31:07Z' },
  });
  expect(lines[2].position, 'a cut photo still says where it was taken').toMatchObject({ status: 'valid' });
});
