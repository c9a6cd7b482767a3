/** PURE. What stands on a note: what was read from it, with what people corrected on top. A correction always wins. */
import type { Entry, Fact, Span } from '../reading/record.ts';

export interface StandingFact {
  /** Stays the same when a note is read again: note, list, kind, plot and which of several. */
  id: string;
  origin: 'reading' | 'person';
  entry: Entry;
}

export interface Correction {
  id: string;
  verb: 'strike' | 'change' | 'add';
  /** The fact as it stood when it was struck or changed. */
  target: (Fact & { evidence: Span[] }) | null;
  /** The fact that a person says stands. */
  fact: Fact | null;
}

export interface Corrected {
  standing: StandingFact[];
  /** Facts that were read and that a person took away, each with the correction that did. */
  struck: { fact: StandingFact; correction: string }[];
}

/** Corrections in the order they were made, those that were undone left out. */
export function correctedFacts(noteId: string, entries: Entry[], corrections: Correction[]): Corrected {
  let facts = named(noteId, entries);
  const struck: Corrected['struck'] = [];
  for (const correction of corrections) {
    const hit = correction.target && bestMatch(facts, correction.target);
    if (hit) {
      facts = facts.filter((fact) => fact !== hit);
      struck.push({ fact: hit, correction: correction.id });
    }
    if (correction.fact) facts.push(byPerson(correction, hit?.id ?? `${noteId}:${correction.id}`));
  }
  return { standing: facts, struck };
}

function named(noteId: string, entries: Entry[]): StandingFact[] {
  const seen = new Map<string, number>();
  return entries.map((entry) => {
    const about = `${noteId}:${entry.list}:${kindOf(entry)}:${plotOf(entry) ?? '-'}`;
    const nth = (seen.get(about) ?? 0) + 1;
    seen.set(about, nth);
    return { id: nth === 1 ? about : `${about}:${nth}`, origin: 'reading', entry };
  });
}

/** The kind of a fact, whatever its list: what it is about. */
export function kindOf({ list, fact }: Fact): string {
  switch (list) {
    case 'stages':
      return fact.stage;
    case 'findings':
    case 'actions':
      return fact.kind;
    case 'measurements':
      return fact.quantity;
    case 'comparisons':
      return fact.attribute;
    case 'ages':
      return 'age';
    case 'lessons':
      return 'lesson';
    case 'unvisited':
      return 'unvisited';
  }
}

export const plotOf = ({ list, fact }: Fact): string | null =>
  list === 'comparisons' ? fact.more : fact.plot;
export const statusOf = ({ fact }: Fact): string | null => ('status' in fact ? fact.status : null);

/**
 * A note may be read otherwise later, so a correction finds its fact by what it was about and by its words:
 * same list and kind; among several the one with the same plot, the same status and the most shared words.
 */
function bestMatch(
  facts: StandingFact[],
  target: NonNullable<Correction['target']>,
): StandingFact | undefined {
  const likeness = ({ entry }: StandingFact): number =>
    (plotOf(entry) === plotOf(target) ? 4 : 0) +
    (statusOf(entry) === statusOf(target) ? 2 : 0) +
    (overlaps(entry.evidence, target.evidence) ? 3 : 0) +
    (JSON.stringify(entry.fact) === JSON.stringify(target.fact) ? 8 : 0);
  return facts
    .filter(({ entry }) => entry.list === target.list && kindOf(entry) === kindOf(target))
    .filter((fact) => likeness(fact) >= 3)
    .sort((a, b) => likeness(b) - likeness(a))[0];
}

const overlaps = (a: Span[], b: Span[]): boolean =>
  a.some((x) => b.some((y) => x.start < y.end && y.start < x.end));

/** A changed fact keeps the id of the one whose place it takes, so that what grew from it goes on. */
const byPerson = ({ fact, target }: Correction, id: string): StandingFact => ({
  id,
  origin: 'person',
  entry: {
    ...fact!,
    evidence: target?.evidence ?? [],
    trace: { rule: 'set by a person', words: '', cues: [], heard: [], beat: [], plot: 'set by a person' },
  },
});
