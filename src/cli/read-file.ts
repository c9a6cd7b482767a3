/** A file of notes, one a line, read to records, one a line; what cannot be read is named with its line. */
import { z } from 'zod';
import { readNote } from '../reading/read.ts';
import type { NoteToRead } from '../reading/record.ts';

const NOTE = z.object({
  id: z.string(),
  observedAt: z.string().regex(/^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}/, 'must be like 2031-03-14T07:10'),
  plots: z.array(z.object({ code: z.string(), names: z.array(z.string()).default([]) })).default([]),
  plot: z.string().nullable().default(null),
  channel: z.enum(['typed', 'dictated']).default('typed'),
  text: z.string(),
});

export function readFile(text: string, withTrace: boolean): { lines: string[]; problems: string[] } {
  const lines: string[] = [];
  const problems: string[] = [];
  for (const [index, line] of text
    .replace(/^\uFEFF/, '')
    .split(/\r?\n/)
    .entries()) {
    if (!line.trim()) continue;
    const note = noteOf(line);
    if (typeof note === 'string') problems.push(`Line ${index + 1}: ${note}`);
    else lines.push(recordLine(note, withTrace));
  }
  return { lines, problems };
}

function noteOf(line: string): NoteToRead | string {
  let value: unknown;
  try {
    value = JSON.parse(line);
  } catch {
    return 'not read, because it is no JSON. Each line must hold one note.';
  }
  const inner = typeof value === 'object' && value !== null && 'note' in value ? value.note : value;
  const parsed = NOTE.safeParse(inner);
  if (parsed.success) return parsed.data;
  const issue = parsed.error.issues[0];
  return `not read, because ${issue ? `"${issue.path.join('.') || 'the note'}" is wrong: ${issue.message}` : 'it is no note'}.`;
}

function recordLine(note: NoteToRead, withTrace: boolean): string {
  const { record, entries, heard } = readNote(note);
  return JSON.stringify({ id: note.id, record, ...(withTrace && { trace: { entries, heard } }) });
}
