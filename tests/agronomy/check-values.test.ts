import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import checks from './check-values.json' with { type: 'json' };
import { cropCalls } from './checks/crop-calls.ts';
import { figuresCalls } from './checks/figures-calls.ts';
import type { Calls, Given } from './checks/given.ts';
import { inputsCalls } from './checks/inputs-calls.ts';
import { troublesCalls } from './checks/troubles-calls.ts';
import { weatherCalls } from './checks/weather-calls.ts';

const calls: Calls = { ...cropCalls, ...weatherCalls, ...inputsCalls, ...troublesCalls, ...figuresCalls };
const covered = checks.filter(({ id }) => id in calls);
const page = readFileSync(new URL('../../docs/calculations.md', import.meta.url), 'utf8');
const leftOut = idsLeftOut();

describe('published values come out within their tolerance', () => {
  test.each(covered.map((check) => [`${check.id}: ${check.source}`, check] as const))('%s', (_, check) => {
    const result = calls[check.id]!(check.inputs as unknown as Given);
    expect(differences(check.expected, result, check.tolerance as Tolerance)).toEqual([]);
  });
});

describe('no check is passed over in silence', () => {
  test('each is run or named with its reason in docs/calculations.md', () => {
    expect(checks.map(({ id }) => id).filter((id) => !(id in calls) && !leftOut.has(id))).toEqual([]);
  });

  test('what is named as left out is a check, and is not run', () => {
    const known = new Set(checks.map(({ id }) => id));
    expect([...leftOut.keys()].filter((id) => !known.has(id) || id in calls)).toEqual([]);
    expect([...leftOut.values()].filter((reason) => reason.length < 20)).toEqual([]);
  });

  test('no call without a check', () => {
    const known = new Set(checks.map(({ id }) => id));
    expect(Object.keys(calls).filter((id) => !known.has(id))).toEqual([]);
  });

  test('the copy is whole', () => {
    expect(new Set(checks.map(({ id }) => id)).size).toBe(214);
  });
});

test('docs/calculations.md names every file of calculations', () => {
  const folder = new URL('../../src/agronomy/', import.meta.url);
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.ts') && !file.startsWith('canopy-'))
    .map((file) => file.replaceAll('\\', '/').replace(/\.ts$/, ''));
  expect(files.length).toBeGreaterThan(60);
  expect(files.filter((file) => !page.includes(`\`${file}\``))).toEqual([]);
});

describe('the comparison itself can fail', () => {
  test.each([
    ['a number outside its tolerance', 2, 2.02, 0.01],
    ['not a number', 2, Number.NaN, 0.01],
    ['a fault instead of a number', 2, { fault: 'words' }, 0.01],
    ['a missing key', { a: 1 }, {}, 0],
    ['a list too short', [1, 2], [1], 0],
    ['other words', 'a', 'b', 0],
  ])('%s', (_, expected, actual, tolerance) => {
    expect(differences(expected, actual, tolerance)).not.toEqual([]);
  });
});

type Tolerance = number | Record<string, number>;

/** Where `actual` departs from `expected`, by path; keys that the check does not name are free. */
function differences(expected: unknown, actual: unknown, tolerance: Tolerance, path = ''): string[] {
  if (typeof expected === 'number') return near(expected, actual, toleranceAt(tolerance, path), path);
  if (typeof expected === 'string' && typeof actual === 'string' && bare(actual) === bare(expected))
    return [];
  if (typeof expected !== 'object' || expected === null)
    return expected === actual
      ? []
      : [`${path}: ${JSON.stringify(actual)} instead of ${JSON.stringify(expected)}`];
  if (typeof actual !== 'object' || actual === null) return [`${path}: ${String(actual)} is not a table`];
  if (Array.isArray(expected) && Array.isArray(actual) && expected.length !== actual.length)
    return [`${path}: ${actual.length} values instead of ${expected.length}`];
  return Object.entries(expected).flatMap(([key, value]) =>
    differences(value, (actual as Record<string, unknown>)[key], tolerance, path ? `${path}.${key}` : key),
  );
}

function near(expected: number, actual: unknown, tolerance: number, path: string): string[] {
  const rounding = 4 * Number.EPSILON * Math.abs(expected);
  return typeof actual === 'number' && Math.abs(actual - expected) <= tolerance + rounding
    ? []
    : [`${path}: ${JSON.stringify(actual)} instead of ${expected} +/- ${tolerance}`];
}

function toleranceAt(tolerance: Tolerance, path: string): number {
  if (typeof tolerance === 'number') return tolerance;
  return tolerance[path.split('.')[0]!] ?? tolerance.default ?? 0;
}

/** Bands are printed with their unit now and then: `<20 relative lesion height`. */
const bare = (text: string): string => text.replace(/^([<>]=?\d+)\s.*$/, '$1');

function idsLeftOut(): Map<string, string> {
  const section =
    page.split(/^## /m).find((part) => part.startsWith('Published checks that are not run')) ?? '';
  return new Map([...section.matchAll(/^- `([^`]+)`: (.+)$/gm)].map((row) => [row[1]!, row[2]!]));
}
