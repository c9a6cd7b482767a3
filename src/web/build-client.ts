import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));
const SOURCES = ['client', 'reading', 'plots', 'followups', 'agronomy'];
/** One script an entry: `page` runs everywhere, `capture` carries the reader, `send-photos` a folder of photos. */
const ENTRIES = ['page', 'capture', 'send-photos'];

/** Bundles the browser's scripts into `folder`, unless their sources are the same as when they were last built. */
export async function buildClient(folder: string = join(root, 'build')): Promise<string> {
  const stampFile = join(folder, '.sources');
  const stamp = stampOf(SOURCES.map((name) => join(root, 'src', name)));
  const built = ENTRIES.every((name) => existsSync(join(folder, `${name}.js`)));
  if (built && existsSync(stampFile) && readFileSync(stampFile, 'utf8') === stamp) return folder;
  mkdirSync(folder, { recursive: true });
  const { build } = await import('esbuild');
  await build({
    entryPoints: ENTRIES.map((name) => join(root, 'src/client', `${name}.ts`)),
    outdir: folder,
    bundle: true,
    minify: true,
    format: 'iife',
    target: ['es2022'],
    legalComments: 'none',
    logLevel: 'silent',
  });
  writeFileSync(stampFile, stamp);
  return folder;
}

function stampOf(folders: string[]): string {
  const hash = createHash('sha256');
  for (const folder of folders.filter((path) => existsSync(path))) {
    for (const name of readdirSync(folder, { recursive: true, encoding: 'utf8' }).sort()) {
      if (name.endsWith('.ts')) hash.update(name).update(readFileSync(join(folder, name)));
    }
  }
  return hash.digest('hex');
}
