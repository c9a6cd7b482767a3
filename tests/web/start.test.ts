import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { startServer } from './start-server.ts';

const entry = fileURLToPath(new URL('../../src/server.ts', import.meta.url));
const startWith = (environment: Record<string, string>) =>
  spawnSync(process.execPath, ['--import', 'tsx', entry], {
    env: { ...process.env, SAMPLE: 'no', ...environment },
    encoding: 'utf8',
  });

describe('Starting', () => {
  test('what was kept is there after a stop and a start, and the stop is clean', async () => {
    const first = await startServer({ sample: false });
    const body = new FormData();
    body.set('id', 'kept-over-a-stop');
    body.set('text', 'Still here tomorrow.');
    await fetch(`${first.url}/notes`, { method: 'POST', body, redirect: 'manual' });
    expect(await first.stop({ keepData: true })).toBe(0);
    const second = await startServer({ sample: false, dataFolder: first.dataFolder });
    expect(await (await fetch(`${second.url}/notes/kept-over-a-stop`)).text()).toContain(
      'Still here tomorrow.',
    );
    expect(await second.stop()).toBe(0);
  });

  test('a data folder that is a file is refused in words, with code 1', () => {
    const folder = mkdtempSync(join(tmpdir(), 'bundwalk-start-'));
    writeFileSync(join(folder, 'data'), 'a file');
    const { status, stderr } = startWith({ PORT: '0', DATA: join(folder, 'data') });
    expect(status).toBe(1);
    expect(stderr).toMatch(/data folder .* cannot be written/);
    expect(stderr).not.toMatch(/\n\s+at /);
    rmSync(folder, { recursive: true });
  });

  test('a port that is no number is refused in words', () => {
    const { status, stderr } = startWith({ PORT: 'eighty' });
    expect(status).toBe(1);
    expect(stderr).toContain('PORT');
    expect(stderr).not.toMatch(/\n\s+at /);
  });

  test('a port that is taken is refused in words', async () => {
    const server = await startServer({ sample: false });
    const data = mkdtempSync(join(tmpdir(), 'bundwalk-start-'));
    const { status, stderr } = startWith({ PORT: new URL(server.url).port, HOST: '127.0.0.1', DATA: data });
    expect(status).toBe(1);
    expect(stderr).toContain('is taken by another program');
    await server.stop();
    rmSync(data, { recursive: true });
  });
});
