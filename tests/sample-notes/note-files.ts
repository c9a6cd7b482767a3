import { readdirSync, readFileSync } from 'node:fs';

export interface NoteFile {
  name: string;
  /** Local date and time at the farm, `YYYY-MM-DD HH:MM`. */
  on: string;
  by: string;
  plot?: string;
  spoken: boolean;
  photos: string[];
  /** Header lines that no rule knows. */
  unknown: string[];
  words: string;
}

const FOLDER = new URL('../../sample-notes/notes/', import.meta.url);

export const noteFiles = (): NoteFile[] =>
  readdirSync(FOLDER)
    .sort()
    .map((name) => parseNoteFile(name, readFileSync(new URL(name, FOLDER), 'utf8')));

function parseNoteFile(name: string, text: string): NoteFile {
  const blank = text.indexOf('\n\n');
  const lines = text.slice(0, blank).split('\n');
  const header = new Map(lines.map((line) => line.split(/: (.*)/s, 2) as [string, string]));
  const known = ['On', 'By', 'Plot', 'Spoken', 'Photos'];
  return {
    name,
    on: header.get('On') ?? '',
    by: header.get('By') ?? '',
    plot: header.get('Plot'),
    spoken: header.get('Spoken') === 'yes',
    photos: header.get('Photos')?.split(', ') ?? [],
    unknown: [...header.keys()].filter((key) => !known.includes(key)),
    words: text.slice(blank + 2).trim(),
  };
}
