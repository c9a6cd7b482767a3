import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { extname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import type { RequestHandler } from 'express';

export interface Assets {
  /** `style.css` -> `/assets/<hash of all>/style.css`. Throws on a name that is not there. */
  url(name: string): string;
  /** Answers below `/assets`. */
  serve: RequestHandler;
}

const TYPES: Record<string, string> = {
  '.css': 'text/css; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.woff2': 'font/woff2',
};
const FONTS = 'node_modules/@fontsource-variable/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next';
const root = fileURLToPath(new URL('../..', import.meta.url));

/** Reads style, fonts and built scripts once; one hash over all of them stands in their address, so that they never go stale. */
export function readAssets(buildFolder: string): Assets {
  const files = new Map<string, { body: Buffer; packed: Buffer | null; type: string }>();
  for (const [name, path] of assetPaths(buildFolder)) {
    const body = readFileSync(path);
    const type = TYPES[extname(name)]!;
    files.set(name, { body, type, packed: extname(name) === '.woff2' ? null : gzipSync(body) });
  }
  const hash = createHash('sha256');
  for (const [name, { body }] of files) hash.update(name).update(body);
  const version = hash.digest('hex').slice(0, 16);

  return {
    url(name) {
      if (!files.has(name)) throw new Error(`No such asset: ${name}`);
      return `/assets/${version}/${name}`;
    },
    serve(req, res, next) {
      const [, asked, name] = /^\/([0-9a-f]{16})\/(.+)$/.exec(req.path) ?? [];
      const file = asked === version && name ? files.get(name) : undefined;
      if (!file || (req.method !== 'GET' && req.method !== 'HEAD')) return next();
      res.set({ 'Content-Type': file.type, 'Cache-Control': 'public, max-age=31536000, immutable' });
      if (!file.packed) return res.send(file.body);
      res.vary('Accept-Encoding');
      if (!req.acceptsEncodings('gzip')) return res.send(file.body);
      return res.set('Content-Encoding', 'gzip').send(file.packed);
    },
  };
}

function assetPaths(buildFolder: string): [string, string][] {
  const views = join(root, 'views');
  const built = existsSync(buildFolder)
    ? readdirSync(buildFolder).filter((name) => name.endsWith('.js'))
    : [];
  return [
    ...readdirSync(views)
      .filter((name) => ['.css', '.svg'].includes(extname(name)))
      .sort()
      .map((name): [string, string] => [name, join(views, name)]),
    ['fonts/atkinson-latin.woff2', join(root, `${FONTS}-latin-wght-normal.woff2`)],
    ['fonts/atkinson-latin-ext.woff2', join(root, `${FONTS}-latin-ext-wght-normal.woff2`)],
    ...built.sort().map((name): [string, string] => [name, join(buildFolder, name)]),
  ];
}
