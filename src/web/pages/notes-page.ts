import type { RequestHandler } from 'express';
import type { Diary } from '../../diary/diary.ts';
import { trayCount } from '../../diary/place-photos.ts';
import { type NoteFound, searchNotes } from '../../diary/search-notes.ts';
import type { Span } from '../../reading/record.ts';
import { asked } from '../form.ts';
import { showPage } from '../show-page.ts';
import { withQuery } from '../words.ts';

/** `?words=gap bund` finds, `?before=<cursor>` pages. */
export const notesPage =
  (diary: Diary): RequestHandler =>
  async (req, res) => {
    const words = asked(req, 'words').trim();
    const { notes, older } = await searchNotes(diary, words, { before: asked(req, 'before') || undefined });
    await showPage(req, res, 'notes', {
      title: 'Notes',
      place: 'Notes',
      words,
      unplaced: await trayCount(diary),
      days: byDay(notes),
      count: notes.length,
      found: (text: string) => placesOf(text, words),
      olderHref: older && withQuery('/notes', { words, before: older }),
    });
  };

function byDay(notes: NoteFound[]): { day: string; notes: NoteFound[] }[] {
  const days: { day: string; notes: NoteFound[] }[] = [];
  for (const note of notes) {
    const day = note.observedAt.slice(0, 10);
    if (days.at(-1)?.day !== day) days.push({ day, notes: [] });
    days.at(-1)!.notes.push(note);
  }
  return days;
}

function placesOf(text: string, words: string): Span[] {
  const lower = text.toLowerCase();
  // Some letters change their length in lower case; then nothing is marked rather than the wrong place.
  if (lower.length !== text.length) return [];
  return words
    .toLowerCase()
    .split(/\s+/)
    .filter(Boolean)
    .flatMap((word) => {
      const spans: Span[] = [];
      for (let at = lower.indexOf(word); at >= 0; at = lower.indexOf(word, at + word.length)) {
        spans.push({ start: at, end: at + word.length });
      }
      return spans;
    });
}
