import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Darkroom, openDarkroom } from '../../src/photos/darkroom.ts';
import { refusalWords } from '../../src/photos/ingest.ts';
import { drawStand } from '../agronomy/canopy-drawn.ts';
import { avif, endlessHeic, fieldPhoto, jpeg, picture, png, tiff, webp } from './written-photos.ts';

let folder = '';
let darkroom: Darkroom;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'darkroom-'));
  darkroom = openDarkroom();
});
afterAll(async () => {
  await darkroom.close();
  await rm(folder, { recursive: true });
});

const at = (name: string): string => join(folder, name);
async function put(name: string, bytes: Uint8Array): Promise<string> {
  await writeFile(at(name), bytes);
  return at(name);
}

const pair = (name: string) => ({ small: at(`${name}-small.webp`), large: at(`${name}-large.webp`) });

describe('copies', () => {
  test.each([
    ['jpeg', fieldPhoto],
    ['png', png],
    ['webp', webp],
    ['avif', avif],
    ['tiff', tiff],
  ])('%s gives two, in sRGB WebP and without the metadata of the original', async (kind, write) => {
    const to = pair(kind);
    expect(await darkroom.develop(await put(`a-${kind}`, await write()), to)).toEqual({ fault: null });
    for (const path of [to.small, to.large]) {
      const found = await sharp(path).metadata();
      expect(found).toMatchObject({ format: 'webp', space: 'srgb', width: 48, height: 32 });
      expect([found.exif, found.xmp]).toEqual([undefined, undefined]);
    }
  });

  test('long sides of 480 and 1600, never enlarged', async () => {
    const to = pair('long');
    await darkroom.develop(await put('long.jpg', await picture(1200, 2400).jpeg().toBuffer()), to);
    expect(await sharp(to.small).metadata()).toMatchObject({ width: 240, height: 480 });
    expect(await sharp(to.large).metadata()).toMatchObject({ width: 800, height: 1600 });
  });

  test('Orientation 6: what was stored left stands on top', async () => {
    const to = pair('turned');
    const turned = await picture().withMetadata({ orientation: 6 }).jpeg({ quality: 95 }).toBuffer();
    await darkroom.develop(await put('turned.jpg', turned), to);
    const { data, info } = await sharp(to.large).raw().toBuffer({ resolveWithObject: true });
    expect([info.width, info.height]).toEqual([32, 48]);
    const pixel = (x: number, y: number): string =>
      data[(y * info.width + x) * 3]! > data[(y * info.width + x) * 3 + 1]! ? 'red' : 'green';
    expect([pixel(4, 4), pixel(28, 4), pixel(4, 40), pixel(28, 40)]).toEqual([
      'red',
      'red',
      'green',
      'green',
    ]);
  });

  test('CMYK and 16 bits come out as sRGB too', async () => {
    const cmyk = await picture().toColourspace('cmyk').jpeg().toBuffer();
    const deep = await picture().toColourspace('rgb16').png().toBuffer();
    for (const [name, bytes] of Object.entries({ cmyk, deep })) {
      expect(await darkroom.develop(await put(name, bytes), pair(name))).toEqual({ fault: null });
      expect(await sharp(pair(name).large).metadata()).toMatchObject({ space: 'srgb', depth: 'uchar' });
    }
  });

  test('the same photo twice gives the same bytes', async () => {
    const path = await put('twice.jpg', await fieldPhoto());
    const hashes = await Promise.all(
      ['one', 'two'].map(async (name) => {
        await darkroom.develop(path, pair(name));
        const files = [await readFile(pair(name).small), await readFile(pair(name).large)];
        return files.map((bytes) => createHash('sha256').update(bytes).digest('hex'));
      }),
    );
    expect(hashes[0]).toEqual(hashes[1]);
  });

  test('no picture in it: words, and no file left behind', async () => {
    const to = pair('none');
    const { fault } = await darkroom.develop(await put('none.jpg', (await jpeg()).subarray(0, 200)), to);
    expect(fault).toMatch(/No picture could be made.*original is kept/);
    await expect(readFile(to.small)).rejects.toThrow(/ENOENT/);
  });
});

describe('cover', () => {
  test('of a JPEG from straight above, with its mask', async () => {
    const drawn = drawStand({
      seed: 9,
      blades: 12,
      bladeCm: 14,
      ground: [112, 92, 72],
      leaf: [110, 160, 60],
      light: [1, 1, 1],
    });
    const { data, width, height } = drawn.picture;
    const photo = await sharp(data, { raw: { width, height, channels: 3 } })
      .jpeg({ quality: 92 })
      .toBuffer();
    const found = await darkroom.cover(await put('down.jpg', photo), at('mask.png'));
    if ('fault' in found) throw new Error(found.fault);
    expect(Math.abs(found.coverPercent - drawn.coverPercent)).toBeLessThanOrEqual(3);
    expect(found).toMatchObject({ method: 'excess green, threshold by Otsu', warnings: [] });
    const mask = await sharp(at('mask.png')).raw().toBuffer();
    const opaque = mask.filter((_, byte) => byte % 4 === 3).reduce((sum, alpha) => sum + (alpha ? 1 : 0), 0);
    expect((100 * opaque) / (width * height)).toBeCloseTo(found.coverPercent, 0);
  });

  test('of no picture: words', async () => {
    expect(await darkroom.cover(await put('words.jpg', Buffer.from('no picture at all')))).toEqual({
      fault: expect.stringMatching(/No picture/),
    });
  });
});

describe('what cannot be opened is answered in words', () => {
  test('no such file, and a folder', async () => {
    expect((await darkroom.examine(at('nowhere.jpg'))).ingest.reason).toBe('file-not-found');
    expect((await darkroom.examine(folder)).ingest.reason).toBe('not-a-supported-image');
    expect(await darkroom.cover(at('nowhere.jpg'))).toEqual({ fault: refusalWords['file-not-found'] });
  });

  test('trap 1: a box of no length is refused while the next photo is served', async () => {
    const [caught, next] = await Promise.all([
      darkroom.examine(await put('trap.heic', endlessHeic())),
      darkroom.examine(await put('next.jpg', await fieldPhoto())),
    ]);
    expect(caught.ingest).toEqual({ decision: 'reject', reason: 'truncated-or-corrupt' });
    expect(next.ingest.decision).toBe('accept');
  });

  test('over the time limit: stopped, and the queue goes on', async () => {
    const hasty = openDarkroom({ workers: 1, timeLimitMs: 1 });
    const path = await put('hasty.jpg', await fieldPhoto());
    const reasons = await Promise.all([1, 2, 3].map(async () => (await hasty.examine(path)).ingest.reason));
    expect(reasons).toEqual(['took-too-long', 'took-too-long', 'took-too-long']);
    await hasty.close();
  });

  test('more memory than allowed, native memory counted: stopped, and the next photo is served', async () => {
    const narrow = openDarkroom({ workers: 1, memoryLimitMb: 300 });
    const flat = { create: { width: 12_000, height: 12_000, channels: 3, background: '#7a5' } } as const;
    const wide = await sharp(flat).png({ progressive: true, compressionLevel: 1 }).toBuffer();
    const [big, next] = await Promise.all([
      narrow.examine(await put('big.png', wide)),
      narrow.examine(await put('after.jpg', await fieldPhoto())),
    ]);
    expect(big.ingest).toEqual({ decision: 'reject', reason: 'took-too-much-memory' });
    expect(next.ingest.decision).toBe('accept');
    await narrow.close();
  });

  test('children that die at their start: words for each photo, and an end', async () => {
    const doomed = openDarkroom({ workers: 2, memoryLimitMb: 2 });
    const path = await put('doomed.jpg', await fieldPhoto());
    const answers = await Promise.all([doomed.examine(path), doomed.examine(path), doomed.examine(path)]);
    for (const { ingest } of answers) expect(ingest.reason).toMatch(/took-too-much-memory|could-not-be-read/);
    expect(await doomed.cover(path)).toHaveProperty('fault');
    await doomed.close();
  });
});

describe('closing', () => {
  test('what waits is answered, and no child is left', async () => {
    const before = ownChildren();
    const short = openDarkroom({ workers: 2 });
    const path = await put('short.jpg', await fieldPhoto());
    await short.examine(path);
    const pending = [1, 2, 3, 4].map(() => short.examine(path));
    expect(short.isClosed()).toBe(false);
    await short.close();
    expect(short.isClosed()).toBe(true);
    const reasons = (await Promise.all(pending)).map(({ ingest }) => ingest.reason);
    // The first two may have been answered while the children were being ended.
    for (const reason of reasons.slice(0, 2)) expect(['', 'stopped']).toContain(reason);
    expect(reasons.slice(2)).toEqual(['stopped', 'stopped']);
    expect((await short.examine(path)).ingest.reason).toBe('stopped');
    expect(ownChildren()).toEqual(before);
  });

  test('children without work do not keep the process running', async () => {
    const path = await put('idle.jpg', await fieldPhoto());
    const darkroomFile = fileURLToPath(new URL('../../src/photos/darkroom.ts', import.meta.url));
    const script = `import { openDarkroom } from ${JSON.stringify(darkroomFile)};
      void openDarkroom().examine(${JSON.stringify(path)}).then(({ ingest }) => console.log(ingest.decision));`;
    const run = spawnSync(
      process.execPath,
      ['--import', import.meta.resolve('tsx'), '--input-type=module', '-e', script],
      {
        encoding: 'utf8',
        timeout: 50_000,
      },
    );
    expect([run.stdout, run.status, run.signal]).toEqual(['accept\n', 0, null]);
  });
});

/** Process numbers of this process's children of the darkroom, the dead that nobody has waited for included. */
function ownChildren(): string[] {
  const { stdout } = spawnSync('ps', ['-A', '-o', 'pid=,ppid=,args='], { encoding: 'utf8' });
  return stdout
    .split('\n')
    .map((line) => line.trim().split(/\s+/))
    .filter(
      ([, parent, ...args]) =>
        parent === String(process.pid) && /darkroom-child|defunct/.test(args.join(' ')),
    )
    .map(([pid = '']) => pid);
}
