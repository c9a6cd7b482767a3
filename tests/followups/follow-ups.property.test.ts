import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addDays } from '../../src/followups/days.ts';
import { followUps } from '../../src/followups/follow-ups.ts';
import {
  type DiaryFact,
  type FollowUp,
  type ItemStep,
  type PersonStep,
  type PersonStepKind,
  snapshotOf,
} from '../../src/followups/item.ts';
import { LOOK_AFTER } from '../../src/followups/look-after.ts';
import type { ActionFact, ActionKind, Fact, When } from '../../src/reading/record.ts';

const START = '2030-03-01';
const TODAY = '2030-05-01';
const PLOTS = ['B1', 'B2', null];
const KINDS: ActionKind[] = [
  'hand_weed',
  'fertilise',
  'irrigate',
  'drain',
  'spray',
  'inspect',
  'measure',
  'leave',
];

const fold = (facts: DiaryFact[], steps: PersonStep[] = []): FollowUp[] =>
  followUps({ facts, steps, lookAfter: LOOK_AFTER, forecasts: [], today: TODAY });

const when = (day: number): fc.Arbitrary<When | undefined> =>
  fc.oneof(
    { weight: 2, arbitrary: fc.constant(undefined) },
    fc
      .integer({ min: -4, max: 9 })
      .map((d): When => ({ from: addDays(START, day + d), to: addDays(START, day + d) })),
    fc
      .constantFrom(
        'panicle_initiation',
        'drained',
        'rain',
        'if_worse',
        'next_walk',
        'after:hand_weed',
        'before:spray',
      )
      .map((trigger) => ({ trigger }) as When),
  );

const aFact = (day: number): fc.Arbitrary<Fact> =>
  fc.oneof(
    {
      weight: 4,
      arbitrary: fc
        .record({
          kind: fc.constantFrom(...KINDS),
          status: fc.constantFrom('done', 'planned', 'planned', 'proposed', 'ruled_out'),
          when: when(day),
          hearsay: fc.boolean(),
        })
        .map(({ hearsay, ...fact }) => {
          const said = hearsay && fact.status === 'done' ? { hearsay } : {};
          return { list: 'actions', fact: { plot: null, ...fact, ...said } as ActionFact } as Fact;
        }),
    },
    {
      weight: 3,
      arbitrary: fc
        .record({
          kind: fc.constantFrom('weeds', 'nutrient', 'dry', 'flooded', 'insects'),
          status: fc.constantFrom('present', 'absent', 'cleared', 'suspected', 'risk'),
          where: fc.constantFrom(undefined, undefined, 'north bund', 'inlet end'),
          severity: fc.constantFrom(undefined, 'slight', 'severe'),
        })
        .map((fact) => ({ list: 'findings', fact: { plot: null, ...fact } }) as Fact),
    },
    fc
      .record({
        quantity: fc.constantFrom('water_depth', 'rainfall', 'weed_density', 'leaf_colour'),
        value: fc.integer({ min: 0, max: 9 }),
      })
      .map((fact) => ({ list: 'measurements', fact: { plot: null, ...fact } }) as Fact),
    fc
      .constantFrom('tillering', 'panicle_initiation', 'booting')
      .map((stage) => ({ list: 'stages', fact: { plot: null, stage, status: 'current' } }) as Fact),
    fc.constant<Fact>({ list: 'unvisited', fact: { plot: null } }),
  );

const aNote = fc.integer({ min: 0, max: 40 }).chain((day) =>
  fc.record({
    day: fc.constant(day),
    facts: fc.array(fc.tuple(fc.constantFrom(...PLOTS), aFact(day)), { minLength: 1, maxLength: 4 }),
  }),
);

const diary: fc.Arbitrary<DiaryFact[]> = fc.array(aNote, { minLength: 1, maxLength: 14 }).map((notes) =>
  notes.flatMap(({ day, facts }, n) =>
    facts.map(
      ([plot, fact], i): DiaryFact => ({
        id: `n${n}:${fact.list}:${i}`,
        noteId: `n${n}`,
        observedAt: `${addDays(START, day)}T07:00`,
        plot,
        by: 'Ana',
        fact,
        words: `words ${n} ${i}`,
      }),
    ),
  ),
);

const STEP_KINDS: PersonStepKind[] = [
  'decide',
  'report_done',
  'look',
  'put_off',
  'drop',
  'rule_out',
  'reopen',
  'apart',
  'remark',
];
const intents = fc.array(
  fc.record({
    day: fc.integer({ min: 0, max: 45 }),
    pick: fc.nat(),
    kind: fc.constantFrom(...STEP_KINDS),
    found: fc.constantFrom('fixed', 'partly', 'not_fixed', 'seen'),
    when: when(20),
  }),
  { maxLength: 8 },
);
type Intent = (typeof intents extends fc.Arbitrary<infer T> ? T : never)[number];

/** Steps on items as a page would show them: those of the facts, and those that earlier steps brought. */
function stepsOn(facts: DiaryFact[], wished: Intent[], onlyOfNotes = false): PersonStep[] {
  const steps: PersonStep[] = [];
  wished.forEach(({ day, pick, kind, found, when: wanted }, i) => {
    const items = fold(facts, onlyOfNotes ? [] : steps);
    const item = items[pick % Math.max(1, items.length)];
    if (!item) return;
    steps.push({
      id: `s${i}`,
      itemId: item.id,
      at: `${addDays(START, day)}T12:00`,
      by: 'Ben',
      kind,
      words: '',
      snapshot: snapshotOf(item),
      found: found as PersonStep['found'],
      ...(kind === 'put_off' && { when: wanted ?? { from: TODAY, to: TODAY } }),
      ...(kind === 'apart' && item.unsure && { factId: item.unsure.factId }),
    });
  });
  return steps;
}

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
