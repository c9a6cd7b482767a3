/**
 * Puts what is known into one order that does not depend on how it arrived: notes by their own time, then
 * persons' steps; the same thing sent twice counts once.
 */
import { later } from './days.ts';
import type { DiaryFact, ItemSnapshot, PersonStep } from './item.ts';

export interface Note {
  id: string;
  observedAt: string;
  by: string;
  facts: DiaryFact[];
}

export type Event =
  | { at: string; rank: 0; id: string; opens: { itemId: string; snapshot: ItemSnapshot; step: PersonStep } }
  | { at: string; rank: 1; id: string; note: Note }
  | { at: string; rank: 2; id: string; step: PersonStep };

export interface Timeline {
  events: Event[];
  /** Steps taken back, with the step that took them back. */
  undone: Map<string, PersonStep>;
  /** `undo` steps by what they take back, where that came from a note. */
  undoneFromNotes: Map<string, PersonStep[]>;
  /** What a person settled about a fact: the item that it belongs to, or null for none of those asked about. */
  settled: Map<string, { itemId: string | null; step: PersonStep }>;
}

export function timelineOf(allFacts: DiaryFact[], allSteps: PersonStep[]): Timeline {
  const facts = onceEach(allFacts);
  const sent = onceEach(allSteps).sort((a, b) => compare(a.at, b.at) || compare(a.id, b.id));
  const { steps, kept } = atTheirItems(sent, facts);
  const notes = notesOf(facts);
  const undone = undoneSteps(steps);
  const startedAt = startTimes(notes, steps, kept);

  const events: Event[] = [
    ...notes.map((note): Event => ({ at: note.observedAt, rank: 1, id: note.id, note })),
    ...steps.map((step): Event => {
      const start = startedAt.get(step.itemId) ?? startedAt.get(sourceOf(step.itemId)) ?? step.at;
      return { at: later(step.at, start), rank: 2, id: step.id, step };
    }),
    ...kept.map((step): Event => {
      const { itemId, snapshot } = step;
      return { at: snapshot.openedAt, rank: 0, id: itemId, opens: { itemId, snapshot, step } };
    }),
  ];
  return {
    events: events.sort(
      (a, b) => compare(a.at, b.at) || a.rank - b.rank || byStep(a, b) || compare(a.id, b.id),
    ),
    undone,
    undoneFromNotes: group(
      steps.filter((s) => s.kind === 'undo' && s.undoes && !undone.has(s.id)),
      (s) => s.undoes!,
    ),
    settled: settledFacts(steps, undone),
  };
}

/** Two steps that wait for the same note keep their own order. */
const byStep = (a: Event, b: Event): number =>
  a.rank === 2 && b.rank === 2 ? compare(a.step.at, b.step.at) : 0;

/** Of two things with one id the same one is kept, whichever came first. */
function onceEach<T extends { id: string }>(things: T[]): T[] {
  const kept = new Map<string, T>();
  for (const thing of things) {
    const other = kept.get(thing.id);
    if (!other || (other !== thing && JSON.stringify(thing) < JSON.stringify(other)))
      kept.set(thing.id, thing);
  }
  return [...kept.values()];
}

function notesOf(facts: DiaryFact[]): Note[] {
  return [...group(facts, (fact) => fact.noteId)].map(([id, own]) => {
    const sorted = own.sort((a, b) => position(a.id) - position(b.id) || compare(a.id, b.id));
    const observedAt = own.map((fact) => fact.observedAt).sort()[0]!;
    return { id, observedAt, by: sorted[0]!.by, facts: sorted };
  });
}

const position = (id: string): number => Number(/(\d+)$/.exec(id)?.[1] ?? 0);

/** A step is undone while an `undo` of it stands that is not itself undone. */
function undoneSteps(steps: PersonStep[]): Map<string, PersonStep> {
  const undoes = group(
    steps.filter((s) => s.kind === 'undo' && s.undoes),
    (s) => s.undoes!,
  );
  const known = new Map<string, PersonStep | null>();
  const takenBack = (id: string): PersonStep | null => {
    const answer = known.get(id);
    if (answer !== undefined) return answer;
    known.set(id, null);
    const by = undoes.get(id)?.find((undo) => !takenBack(undo.id)) ?? null;
    known.set(id, by);
    return by;
  };
  const undone = new Map<string, PersonStep>();
  for (const step of steps) {
    const by = takenBack(step.id);
    if (by) undone.set(step.id, by);
  }
  return undone;
}

function settledFacts(steps: PersonStep[], undone: Map<string, PersonStep>): Timeline['settled'] {
  const settled: Timeline['settled'] = new Map();
  for (const step of steps) {
    if (!step.factId || undone.has(step.id)) continue;
    if (step.kind === 'match') settled.set(step.factId, { itemId: step.itemId, step });
    if (step.kind === 'apart') settled.set(step.factId, { itemId: null, step });
  }
  return settled;
}

/** Items that grow from another are named after the fact or step that made them grow: `source~kind~…`. */
export const sourceOf = (itemId: string): string => itemId.split('~')[0]!;

/**
 * A step on an item whose opening fact is read otherwise now goes with the same work under another id of that
 * note; where there is none, its item is `kept` under an id of its own (one step an item, the earliest).
 */
function atTheirItems(sent: PersonStep[], facts: DiaryFact[]): { steps: PersonStep[]; kept: PersonStep[] } {
  if (sent.length === 0) return { steps: [], kept: [] };
  const openers = new Map<string, { work: string; noteId: string }>();
  const byWork = new Map<string, string>();
  for (const { id, noteId, plot, fact } of facts) {
    if (fact.list !== 'actions') continue;
    const work = JSON.stringify([noteId, plot, fact.fact.kind]);
    openers.set(id, { work, noteId });
    const other = byWork.get(work);
    if (!other || id < other) byWork.set(work, id);
  }
  const added = new Set(sent.filter((step) => step.kind === 'add').map((step) => step.id));
  const kept = new Map<string, PersonStep>();
  const steps = sent.map((step) => {
    const { snapshot } = step;
    const [id, grown] = step.itemId.split(KEPT) as [string, string | undefined];
    if (step.kind === 'add' || added.has(id) || (grown === undefined && id.includes('~'))) return step;
    const opener = openers.get(id);
    const work = JSON.stringify([snapshot.noteId ?? opener?.noteId, snapshot.plot, snapshot.kind]);
    if (opener?.work === work) return { ...step, itemId: id };
    const now = byWork.get(work);
    if (now) return { ...step, itemId: now };
    const itemId = opener ? `${id}${KEPT}${snapshot.kind}~${snapshot.plot ?? ''}` : id;
    const moved = { ...step, itemId };
    if (!kept.has(itemId)) kept.set(itemId, moved);
    return moved;
  });
  return { steps, kept: [...kept.values()] };
}

/** Stands in the id of an item that was kept although its fact is read otherwise. */
const KEPT = '~kept~';

function startTimes(notes: Note[], steps: PersonStep[], kept: PersonStep[]): Map<string, string> {
  const times = new Map(steps.map((step) => [step.id, step.at]));
  if (steps.length === 0) return times;
  for (const note of notes) for (const fact of note.facts) times.set(fact.id, note.observedAt);
  for (const { itemId, snapshot } of kept) times.set(itemId, snapshot.openedAt);
  return times;
}

export function group<T, K>(things: T[], key: (thing: T) => K): Map<K, T[]> {
  const groups = new Map<K, T[]>();
  for (const thing of things) {
    const own = groups.get(key(thing));
    if (own) own.push(thing);
    else groups.set(key(thing), [thing]);
  }
  return groups;
}

export const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
