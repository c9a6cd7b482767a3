/** What a note says beside a piece of work: the problem that it answers, its place and its size. */
import type { ActionFact, FindingFact, FindingKind, Quantity } from '../reading/record.ts';
import { ANSWERS, aboutAnything, answers, SHOWN_BY, SIZED_BY } from './answers.ts';
import { dayOf, daysBetween } from './days.ts';
import type { DiaryFact } from './item.ts';
import { type Item, type Ledger, memoryOf, type Source } from './ledger.ts';
import type { Note } from './timeline.ts';

/** A problem seen this recently is taken to be what the work is for, where only one fits. [common practice] */
const SEEN_LATELY_DAYS = 14;

export type Context = Pick<Item, 'problem' | 'taxon' | 'place' | 'severity' | 'problemStood' | 'figures'>;

export const sourceOfFact = (fact: DiaryFact): Source => ({
  id: fact.id,
  at: fact.observedAt,
  by: fact.by,
  words: fact.words,
  noteId: fact.noteId,
});

export function contextOf(ledger: Ledger, note: Note, fact: DiaryFact): Context {
  const { kind } = fact.fact.fact as ActionFact;
  const here = findingsIn(note, fact.plot).filter((finding) => answers(kind, finding.kind));
  const inNote = onlyProblem(kind, here);
  const finding = inNote ?? seenLately(ledger, fact, kind);
  const places = new Set(here.filter((f) => f.kind === inNote?.kind).map((f) => f.where));
  const [place] = places;
  return {
    problem: finding?.kind,
    taxon: finding?.taxon,
    place: places.size === 1 ? place : undefined,
    severity: finding?.severity,
    problemStood: !finding ? 'unknown' : finding.status === 'present' ? 'there' : 'not_yet',
    figures: figuresOf(ledger, note, fact.plot, kind, finding?.kind),
  };
}

const findingsIn = (note: Note, plot: string | null): FindingFact[] =>
  note.facts.flatMap((f) =>
    f.plot === plot && f.fact.list === 'findings' && !isGood(f.fact.fact) ? [f.fact.fact] : [],
  );

export const isGood = (finding: FindingFact): boolean =>
  finding.status === 'absent' || finding.status === 'cleared';

/** The one problem among them that the work is usually for, else the one that it can be for. */
function onlyProblem(kind: ActionFact['kind'], findings: FindingFact[]): FindingFact | undefined {
  const usual = findings.filter((f) => ANSWERS[kind].usual.includes(f.kind));
  const fitting = usual.length > 0 ? usual : findings;
  const kinds = new Set(fitting.map((f) => f.kind));
  if (kinds.size !== 1) return undefined;
  return fitting.find((f) => f.status === 'present') ?? fitting[0];
}

function seenLately(ledger: Ledger, fact: DiaryFact, kind: ActionFact['kind']): FindingFact | undefined {
  if (aboutAnything(kind)) return undefined;
  const on = dayOf(fact.observedAt);
  const usual: FindingKind[] = ANSWERS[kind].usual;
  const recent = usual.flatMap((problem) => {
    const seen = memoryOf(ledger, fact.plot).findings.get(problem);
    return seen && !isGood(seen.fact) && daysBetween(seen.on, on) <= SEEN_LATELY_DAYS ? [seen.fact] : [];
  });
  return recent.length === 1 ? recent[0] : undefined;
}

/** The figures that the result will be held against: the note's own, else the last known of that plot. */
function figuresOf(
  ledger: Ledger,
  note: Note,
  plot: string | null,
  kind: ActionFact['kind'],
  problem: FindingKind | undefined,
): Map<Quantity, number> {
  const wanted = [
    ...((problem && SIZED_BY[problem]) ?? []),
    ...(SHOWN_BY[kind] ?? []).map((shown) => shown.quantity),
  ];
  const figures = new Map<Quantity, number>();
  for (const quantity of wanted) {
    const own = note.facts.flatMap((f) =>
      f.plot === plot && f.fact.list === 'measurements' && f.fact.fact.quantity === quantity
        ? [f.fact.fact.value]
        : [],
    )[0];
    const before = memoryOf(ledger, plot).figures.get(quantity);
    const recent = before && daysBetween(before.on, dayOf(note.observedAt)) <= SEEN_LATELY_DAYS;
    const value = own ?? (recent ? before.value : undefined);
    if (value !== undefined) figures.set(quantity, value);
  }
  return figures;
}
