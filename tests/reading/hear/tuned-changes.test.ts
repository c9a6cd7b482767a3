/**
 * Every change in the annotated notes that are for tuning, each checked by hand against the note and its record.
 * A change that is not on the list is to be looked at: add it where it is right, mend the rows where it is wrong.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { hear } from '../../../src/reading/hear/hear.ts';
import { NO_FARM_WORDS, type NoteToRead } from '../../../src/reading/record.ts';
import { tokenise } from '../../../src/reading/text.ts';

const lines = (file: string): string[] => readFileSync(file, 'utf8').trim().split('\n');
const checked = lines('tests/reading/hear/tuned-changes.txt');
const notes: NoteToRead[] = lines('tests/reading/notes/tuned.jsonl').map((line) => JSON.parse(line).note);

const changesIn = ({ text, channel, plots }: NoteToRead): string[] =>
  hear(tokenise(text), { channel, plots, farmWords: NO_FARM_WORDS }).heard.map(
    ({ said, meant }) => `${said} → ${meant}`,
  );

describe('changes in the tuned notes are those checked by hand', () => {
  test.each(notes)('$id', (note) => {
    const wanted = checked
      .filter((line) => line.startsWith(`${note.id} `))
      .map((line) => line.slice(note.id.length + 1));
    expect(changesIn(note)).toEqual(wanted);
  });
});
