/**
 * The annotated notes, scored. Floors are what has been reached, a little below for safety; they only rise.
 * `untuned` notes are kept apart: nobody looks at them while tuning.
 */
import { existsSync, readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import floors from './score-floors.json' with { type: 'json' };
import { annotated, f1, MAIN_LISTS, scoreNotes, sumOf } from './scores.ts';

const folder = fileURLToPath(new URL('./notes/', import.meta.url));
const notesIn = (name: string): string[] =>
  existsSync(folder + name)
    ? readdirSync(folder + name)
        .filter((file) => file.endsWith('.jsonl'))
        .map((file) => `${folder}${name}/${file}`)
    : [];
const sets: [string, string[]][] = [
  ['tuned', [`${folder}tuned.jsonl`]],
  ['untuned', [`${folder}untuned.jsonl`]],
  ['own', notesIn('own')],
  ['further', notesIn('further')],
];

for (const [name, paths] of sets) {
  const notes = paths.flatMap(annotated);
  const floor = (floors as Record<string, Record<string, number>>)[name] ?? {};
  describe(`the ${name} notes`, () => {
    test.each(['typed', 'dictated'] as const)('%s', (channel) => {
      const scores = scoreNotes(notes.filter(({ note }) => note.channel === channel));
      expect(f1(sumOf(scores, MAIN_LISTS))).toBeGreaterThanOrEqual(floor[channel] ?? 0);
    });
    test('each list', () => {
      const scores = scoreNotes(notes);
      const low = Object.entries(scores)
        .map(([list, tally]) => ({ list, f1: Number(f1(tally).toFixed(1)), floor: floor[list] ?? 0 }))
        .filter((row) => row.f1 < row.floor);
      expect(low).toEqual([]);
    });
  });
}
