/**
 * Photos against two yardsticks on the same files in the same run: ExifTool's batch mode for the metadata, sharp in a
 * plain loop for the copies. Uses the external set where it lies beside this folder, else the sample season's photos.
 * Alone: `npx tsx tests/bench/photos.ts`.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync } from 'node:fs';
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import sharp from 'sharp';
import { type Darkroom, openDarkroom } from '../../src/photos/darkroom.ts';
import { facts } from '../../src/photos/examined.ts';
import { readMetadata } from '../../src/photos/read-metadata.ts';
import { medianOf, timesOf } from './timing.ts';

const folders = ['../../../shared/photos/files', '../../sample-notes/photos'].map((path) =>
  fileURLToPath(new URL(path, import.meta.url)),
);

export async function benchPhotos(): Promise<void> {
  const folder = folders.find((path) => existsSync(path));
  if (!folder) return console.log('photos: no files to read');
  const files = readdirSync(folder).map((name) => join(folder, name));
  await benchMetadata(files);
  await benchCopies(files);
}

/** Start-up is left out on both sides: this one is running already, and `exiftool -ver` shows the other's. */
async function benchMetadata(files: string[]): Promise<void> {
  const ours = medianOf(
    await timesOf(5, 1, async () => {
      for (const file of files) facts(await readMetadata(await readFile(file)));
    }),
  );
  if (spawnSync('exiftool', ['-ver']).status !== 0)
    return console.log(
      `photos: metadata of ${files.length} files ${ours} ms; no ExifTool here to hold it against`,
    );
  const start = medianOf(await timesOf(5, 1, () => void spawnSync('exiftool', ['-ver'])));
  const whole = medianOf(
    await timesOf(5, 1, () => void spawnSync('exiftool', ['-n', '-j', '-G1', ...files], { maxBuffer: 1e9 })),
  );
  const theirs = whole - start;
  console.log(
    `photos: metadata of ${files.length} files ${ours} ms, ExifTool in one batch ${theirs.toFixed(0)} ms: ` +
      `${(ours / theirs).toFixed(2)} x (aim 1.5 x or less)`,
  );
}

/** Two copies of each photo that sharp can open by itself, so HEIC is not among them. */
async function benchCopies(files: string[]): Promise<void> {
  const folder = await mkdtemp(join(tmpdir(), 'bench-'));
  const darkrooms = [1, 2].map((workers) => openDarkroom({ workers }));
  const openable = await openableOf(files, darkrooms[1]!);
  const plain = medianOf(
    await timesOf(3, 1, async () => {
      for (const [n, file] of openable.entries())
        for (const side of [1600, 480]) await plainCopy(file, side, join(folder, `${n}-${side}.webp`));
    }),
  );
  const [alone = 0, paired = 0] = [
    await timeOfCopies(darkrooms[0]!, openable, folder),
    await timeOfCopies(darkrooms[1]!, openable, folder),
  ];
  console.log(
    `photos: two copies of ${openable.length} photos ${alone} ms in one child, ${paired} ms in two; ` +
      `sharp in a loop ${plain} ms: ${(alone / plain).toFixed(2)} x and ${(paired / plain).toFixed(2)} x (aim 1.3 x or less)`,
  );
  await Promise.all(darkrooms.map((darkroom) => darkroom.close()));
  await rm(folder, { recursive: true });
}

async function openableOf(files: string[], darkroom: Darkroom): Promise<string[]> {
  const examined = await Promise.all(files.map((file) => darkroom.examine(file)));
  return files.filter((_, n) => examined[n]!.ingest.decision === 'accept' && examined[n]!.kind !== 'heic');
}

const plainCopy = (file: string, side: number, to: string): Promise<unknown> =>
  sharp(file)
    .rotate()
    .resize({ width: side, height: side, fit: 'inside', withoutEnlargement: true })
    .webp({ quality: 80, effort: 2 })
    .toFile(to);

const timeOfCopies = async (darkroom: Darkroom, files: string[], folder: string): Promise<number> =>
  medianOf(
    await timesOf(3, 1, () =>
      Promise.all(
        files.map((file, n) =>
          darkroom.develop(file, { small: join(folder, `${n}-s`), large: join(folder, `${n}-l`) }),
        ),
      ),
    ),
  );

if (process.argv[1] === fileURLToPath(import.meta.url)) await benchPhotos();
