/** The external set of photos, where it lies beside this folder: every row, or an exception that docs/photos.md argues. */
import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Darkroom, openDarkroom } from '../../src/photos/darkroom.ts';

const folder = fileURLToPath(new URL('../../../shared/photos/', import.meta.url));
const isThere = existsSync(`${folder}manifest.json`);

interface Row {
  file: string;
  expected_position: object;
  expected_time: object;
  expected_ingest: object;
}
const rows: Row[] = isThere ? JSON.parse(readFileSync(`${folder}manifest.json`, 'utf8')).files : [];

/** Argued in docs/photos.md, "Where we differ from the external set". */
const exceptions: Record<string, { position: object }> = {
  'files/goexif-geodegrees_as_string.jpg': { position: { latitude: 52.8427811, longitude: 11.1828566 } },
  'files/imagemeta-issue-590.png': {
    position: { status: 'ambiguous-no-ref', latitude: null, longitude: null },
  },
};

describe.runIf(isThere)('photos from public repositories', () => {
  let darkroom: Darkroom;
  beforeAll(() => {
    darkroom = openDarkroom({ timeLimitMs: 120_000 });
  });
  afterAll(() => darkroom.close());

  test.each(rows.map((row) => [row.file, row] as const))('%s', { timeout: 150_000 }, async (file, row) => {
    const { position, time, ingest } = await darkroom.examine(`${folder}${file}`);
    expect(near(position)).toEqual(near({ ...row.expected_position, ...exceptions[file]?.position }));
    expect(time).toEqual(row.expected_time);
    expect(ingest).toEqual(row.expected_ingest);
  });
});

/** JSON knows -0 and JavaScript tells it from 0; a place does not. */
const near = (fact: object): object =>
  Object.fromEntries(
    Object.entries(fact).map(([key, value]) => [key, typeof value === 'number' ? value + 0 : value]),
  );
