import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

/** What each part may import besides itself; a part that is not listed may import nothing of ours. */
const MAY_IMPORT: Record<string, string[]> = {
  agronomy: [],
  reading: ['agronomy'],
  plots: ['agronomy', 'reading'],
  followups: ['agronomy', 'reading', 'plots'],
  photos: ['agronomy', 'plots'],
  speech: ['agronomy', 'reading'],
  storage: ['agronomy', 'reading', 'plots', 'followups'],
  diary: ['agronomy', 'reading', 'plots', 'followups', 'photos', 'speech', 'storage'],
  web: ['agronomy', 'reading', 'plots', 'followups', 'photos', 'speech', 'storage', 'diary'],
  client: ['agronomy', 'reading', 'plots', 'followups'],
  cli: ['agronomy', 'reading', 'plots', 'followups', 'photos', 'speech', 'storage', 'diary', 'web'],
  'server.ts': [
    'agronomy',
    'reading',
    'plots',
    'followups',
    'photos',
    'speech',
    'storage',
    'diary',
    'web',
    'cli',
  ],
};
const PURE = ['agronomy', 'reading', 'plots', 'followups'];
const IMPURE =
  /\bfrom '(node:|express|sharp|kysely|libsql)|\bprocess\.|\bDate\.now\(|\bnew Date\(\)|\bMath\.random\(|\bTemporal\.Now\b|\bfetch\(/;
const ONE_IMPORTER = ['natural', 'exifr', 'multer', 'libsql'];
const REFUSED_NAMES = /(^|\/)(utils?|helpers?|services?|managers?|core|common)(\/|\.ts$)/;

const src = fileURLToPath(new URL('../src', import.meta.url));
const files = readdirSync(src, { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.ts'))
  .map((file) => file.replaceAll('\\', '/'));
const textOf = new Map(files.map((file) => [file, readFileSync(join(src, file), 'utf8')]));
const partOf = (file: string): string => file.split('/')[0]!;
const importsOf = (file: string): string[] =>
  [...textOf.get(file)!.matchAll(/(?:from|import)\s*\(?\s*'([^']+)'/g)].map((match) => match[1]!);
const ownImportsOf = (file: string): string[] =>
  importsOf(file)
    .filter((path) => path.startsWith('.'))
    .map((path) => relative(src, resolve(src, file, '..', path)).replaceAll('\\', '/'));

test('imports run one way', () => {
  const wrong = files.flatMap((file) =>
    ownImportsOf(file)
      .filter((to) => partOf(to) !== partOf(file) && !(MAY_IMPORT[partOf(file)] ?? []).includes(partOf(to)))
      .map((to) => `${file} imports ${to}`),
  );
  expect(wrong).toEqual([]);
});

test('no file imports itself round a circle', () => {
  const state = new Map<string, 'open' | 'done'>();
  const circles: string[] = [];
  const visit = (file: string, path: string[]): void => {
    if (state.get(file) === 'done' || !textOf.has(file)) return;
    if (state.get(file) === 'open')
      return void circles.push([...path.slice(path.indexOf(file)), file].join(' -> '));
    state.set(file, 'open');
    const real = ownImportsOf(file).filter((to) => !onlyTypes(file, to));
    for (const to of real) visit(to, [...path, file]);
    state.set(file, 'done');
  };
  for (const file of files) visit(file, []);
  expect(circles).toEqual([]);
});

/** A type-only import vanishes when the code runs. */
function onlyTypes(file: string, to: string): boolean {
  const name = to.split('/').at(-1)!.replaceAll('.', '\\.');
  const lines = textOf.get(file)!.match(new RegExp(`import[^;]*?from '[^']*${name}'`, 'g')) ?? [];
  return lines.length > 0 && lines.every((line) => /^import type\b/.test(line.trim()));
}

test('the pure parts touch no file, network, clock or chance', () => {
  const wrong = files.filter(
    (file) =>
      PURE.includes(partOf(file)) && IMPURE.test(textOf.get(file)!.replace(/\/\*[\s\S]*?\*\/|\/\/.*$/gm, '')),
  );
  expect(wrong).toEqual([]);
});

test.each(ONE_IMPORTER)('%s has exactly one importer', (name) => {
  const importers = files.filter((file) =>
    importsOf(file).some((path) => path === name || path.startsWith(`${name}/`)),
  );
  expect(importers).toHaveLength(1);
});

test('only the server reads the environment', () => {
  const wrong = files.filter((file) => file !== 'server.ts' && /process\.env/.test(textOf.get(file)!));
  expect(wrong).toEqual([]);
});

test('no folder or file is a drawer for everything', () => {
  expect(files.filter((file) => REFUSED_NAMES.test(file))).toEqual([]);
});
