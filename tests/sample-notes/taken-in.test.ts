import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { parseNoteFile } from '../../src/diary/note-file.ts';
import { checkSeasonFile } from '../../src/diary/season-file.ts';
import { noteFiles } from './note-files.ts';

const SAMPLE = new URL('../../sample-notes/', import.meta.url);

test('the diary finds no fault with the season file', () => {
  expect(checkSeasonFile(readFileSync(new URL('season.yaml', SAMPLE), 'utf8'))).not.toHaveProperty(
    'problems',
  );
});

test('the diary reads each note file as it was meant', () => {
  const names = readdirSync(new URL('notes/', SAMPLE)).sort();
  const read = names.map((name) => parseNoteFile(readFileSync(new URL(`notes/${name}`, SAMPLE), 'utf8')));
  const meant = noteFiles().map(({ on, by, plot, spoken, photos, words }) => ({
    observedAt: on.replace(' ', 'T'),
    author: by,
    plot: plot ?? null,
    channel: spoken ? 'dictated' : 'typed',
    photos,
    text: words,
  }));
  expect(read).toEqual(meant);
});
