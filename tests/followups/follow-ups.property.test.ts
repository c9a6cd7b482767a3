import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type DiaryFact,
  type FollowUp,
  type ItemStep,
  type PersonStep,
  snapshotOf,
} from '../../src/followups/item.ts';
import { diary, fold, intents, stepsOn, TODAY } from './any-diary.ts';

const undoOf = (step: PersonStep): PersonStep => ({
  ...step,
  id: `undo-${step.id}`,
  kind: 'undo',
  undoes: step.id,
  at: `${TODAY}T09:00`,
});

const makesItem = ({ fact }: DiaryFact): boolean => fact.list === 'actions' && fact.fact.kind !== 'leave';
const standing = (item: FollowUp) => ({ ...item, steps: null, alsoKnownAs: null });
const stepIds = (items: FollowUp[]): Set<string> =>
  new Set(items.flatMap((item) => item.steps.map((s) => s.id)));

describe('whatever the notes and steps', { timeout: 120_000 }, () => {
  test('order of arrival and double sending change nothing', () => {
    fc.assert(
      fc.property(diary, intents, fc.infiniteStream(fc.nat()), (facts, wished, numbers) => {
        const steps = stepsOn(facts, wished);
        const items = fold(facts, steps);
        const mixed = <T>(things: T[]): T[] =>
          [...things, ...things.slice(0, 5)]
            .map((thing) => ({ thing, at: numbers.next().value as number }))
            .sort((a, b) => a.at - b.at)
            .map(({ thing }) => structuredClone(thing));
        expect(fold(mixed(facts), mixed(steps))).toEqual(items);
      }),
      { numRuns: 100 },
    );
  });

  test('what is given is not changed, and the same gives the same', () => {
    fc.assert(
      fc.property(diary, intents, (facts, wished) => {
        const steps = stepsOn(facts, wished);
        const before = structuredClone({ facts, steps });
        const once = fold(facts, steps);
        expect(fold(facts, steps)).toEqual(once);
        expect({ facts, steps }).toEqual(before);
      }),
      { numRuns: 60 },
    );
  });

  test('every piece of work that a note speaks of is in exactly one item, and every step is in the story of one', () => {
    fc.assert(
      fc.property(diary, intents, (facts, wished) => {
        const steps = stepsOn(facts, wished);
        const items = fold(facts, steps);
        for (const fact of facts.filter(makesItem))
          expect(
            items.filter((item) => item.alsoKnownAs.includes(fact.id)).map((item) => item.id),
          ).toHaveLength(1);
        const known = stepIds(items);
        for (const step of steps) expect(known).toContain(step.id);
      }),
      { numRuns: 100 },
    );
  });

  test('nothing closes that nobody looked at', () => {
    fc.assert(
      fc.property(diary, intents, (facts, wished) => {
        const steps = stepsOn(facts, wished);
        for (const item of fold(facts, steps).filter(({ state }) => state === 'closed'))
          expect(item.steps.some((step) => isLook(step, item, facts, steps))).toBe(true);
      }),
      { numRuns: 200 },
    );
  });

  test('a note that arrives late loses no item that stood before it', () => {
    fc.assert(
      fc.property(diary, fc.nat(), (facts, pick) => {
        const late = facts[pick % facts.length]!.noteId;
        const full = new Set(fold(facts).flatMap((item) => item.alsoKnownAs));
        const before = fold(facts.filter((fact) => fact.noteId !== late));
        for (const item of before.filter((i) => !i.grewFrom)) expect(full).toContain(item.id);
      }),
      { numRuns: 100 },
    );
  });

  test('taking back every step gives what the notes alone give', () => {
    fc.assert(
      fc.property(diary, intents, (facts, wished) => {
        const steps = stepsOn(facts, wished, true);
        const undone = fold(facts, [...steps, ...steps.map(undoOf)]);
        expect(undone.map(standing)).toEqual(fold(facts).map(standing));
        const redone = steps
          .map(undoOf)
          .map((undo) => ({ ...undoOf(undo), id: `re${undo.id}`, at: `${TODAY}T10:00` }));
        const again = fold(facts, [...steps, ...steps.map(undoOf), ...redone]);
        expect(again.map(standing)).toEqual(fold(facts, steps).map(standing));
      }),
      { numRuns: 100 },
    );
  });

  test('a step outlives any new reading of the notes', () => {
    fc.assert(
      fc.property(diary, diary, intents, fc.nat(), (facts, otherReading, wished, pick) => {
        const steps = stepsOn(facts, wished);
        const readAgain = facts[pick % facts.length]!.noteId;
        const now = [
          ...facts.filter((fact) => fact.noteId !== readAgain),
          ...otherReading.filter((fact) => fact.noteId === readAgain),
        ];
        const items = fold(now, steps);
        const known = stepIds(items);
        for (const step of steps) expect(known).toContain(step.id);
        expect(new Set(items.map((item) => item.id)).size).toBe(items.length);
      }),
      { numRuns: 100 },
    );
  });

  test('a note’s move that is taken back has no effect on that item, and the work stands elsewhere', () => {
    fc.assert(
      fc.property(diary, fc.nat(), (facts, pick) => {
        const moves = fold(facts).flatMap((item) =>
          item.steps
            .filter((s) => s.what === 'reported_done' && s.noteId && item.openedAt !== s.at)
            .map((s) => ({ item, s })),
        );
        const move = moves[pick % Math.max(1, moves.length)];
        if (!move) return;
        const { item, s } = move;
        const undo: PersonStep = {
          ...{
            id: 'u',
            itemId: item.id,
            at: `${TODAY}T09:00`,
            by: 'Ben',
            kind: 'undo',
            undoes: s.id,
            words: '',
          },
          snapshot: snapshotOf(item),
        };
        const items = fold(facts, [undo]);
        const same = items.find((other) => other.id === item.id)!;
        expect(same.steps.find((step) => step.id === s.id)?.undone).toBeDefined();
        const factId = s.id.split('>')[0]!;
        const home = items.filter((other) => other.alsoKnownAs.includes(factId));
        expect(home).toHaveLength(1);
        expect(home[0]!.id).not.toBe(item.id);
      }),
      { numRuns: 100 },
    );
  });
});

/** A person's look, a finding, a figure or a stage from that plot, or looking, counting and telling done oneself. */
function isLook(step: ItemStep, item: FollowUp, facts: DiaryFact[], steps: PersonStep[]): boolean {
  if (step.undone) return false;
  if (step.stepId) return steps.find(({ id }) => id === step.stepId)?.kind === 'look';
  const fact = facts.find(({ id }) => step.id.startsWith(`${id}>`));
  if (!fact || fact.plot !== item.plot) return false;
  const { list } = fact.fact;
  if (step.what === 'looked') return list === 'findings' || list === 'measurements' || list === 'stages';
  return (
    list === 'actions' &&
    ['inspect', 'measure', 'tell'].includes(item.kind) &&
    fact.fact.fact.status === 'done' &&
    !fact.fact.fact.hearsay
  );
}
