/** Which plots a fact is about: the plot named in its clause, else the last one named, else the note's own. */
import { type Passage, wallBetween } from '../engine/passage.ts';
import type { PlotCode } from '../record.ts';
import type { PlotFound } from './find-plots.ts';

export interface PlotsOf {
  codes: PlotCode[];
  how: string;
  found: PlotFound | null;
}

/** How far in front of a plot's name words of the same sentence may stand and still be about it, where nothing divides. */
const LEAD = 5;

export function plotsOf(passage: Passage, first: number, last: number): PlotsOf {
  const { subject, next } = around(passage, first);
  if (next && bindsBack(passage, next, subject, first, last))
    return { codes: next.codes, how: 'named later in this clause', found: next };
  if (subject)
    return {
      codes: subject.codes,
      how: wallBetween(passage, subject.last, first) < 3 ? 'named in this sentence' : 'named last',
      found: subject,
    };
  return {
    codes: [passage.note.plot],
    how: passage.note.plot === null ? 'left open' : "the note's plot",
    found: null,
  };
}

/** The subject named last before a place, and the next one behind it. Binary search: many facts, many plots. */
function around(passage: Passage, place: number): { subject: PlotFound | null; next: PlotFound | null } {
  const subjects = subjectsOf(passage);
  let low = 0;
  let high = subjects.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (subjects[middle]!.first <= place) low = middle + 1;
    else high = middle;
  }
  return { subject: subjects[low - 1] ?? null, next: subjects[low] ?? null };
}

const SUBJECTS = new WeakMap<Passage, PlotFound[]>();
function subjectsOf(passage: Passage): PlotFound[] {
  const known = SUBJECTS.get(passage);
  if (known) return known;
  const subjects = passage.plots.filter(({ role }) => role === 'subject');
  SUBJECTS.set(passage, subjects);
  return subjects;
}

function bindsBack(
  passage: Passage,
  next: PlotFound,
  subject: PlotFound | null,
  first: number,
  last: number,
): boolean {
  const wall = wallBetween(passage, last, next.first);
  if (wall === 3) return false;
  if (closesSentence(passage, next) && (!subject || wallBetween(passage, subject.last, first) === 3))
    return true;
  const before = subject ? wallBetween(passage, subject.last, first) : 3;
  if (passage.walls[next.first]! >= 2) return isLeadIn(passage, next, first) && before === 3;
  if (wall === 2) return false;
  return before >= 2 || (before === 1 && wall === 0) || next.first - last <= 4;
}

/** `Rats by the boundary, seed plot.`: the only plot of the sentence, at its end. */
const closesSentence = (passage: Passage, plot: PlotFound): boolean => {
  const after = plot.last + 1;
  return (
    after >= passage.tokens.length ||
    (passage.tokens[after]!.kind === 'mark' && (passage.walls[after + 1] ?? 3) === 3)
  );
};

/** `Cut the house field today`, `okay so top check`: the name comes within the first words of its sentence. */
function isLeadIn(passage: Passage, next: PlotFound, first: number): boolean {
  if (next.first - first > LEAD) return false;
  for (let at = next.first - 1; at >= first; at--) if (passage.walls[at]! >= 2 && at > first) return false;
  let start = first;
  while (start > 0 && passage.walls[start]! < 3) start--;
  return next.first - start <= LEAD + 1;
}
