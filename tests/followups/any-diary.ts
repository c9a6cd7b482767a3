/** Any diary of some weeks over two plots and none, and any steps on the items that it brings. */
import fc from 'fast-check';
import { addDays } from '../../src/followups/days.ts';
import { followUps } from '../../src/followups/follow-ups.ts';
import {
  type DiaryFact,
  type FollowUp,
  type PersonStep,
  type PersonStepKind,
  snapshotOf,
} from '../../src/followups/item.ts';
import { LOOK_AFTER } from '../../src/followups/look-after.ts';
import type { ActionFact, ActionKind, Fact, When } from '../../src/reading/record.ts';

const START = '2030-03-01';
export const TODAY = '2030-05-01';
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

export const fold = (facts: DiaryFact[], steps: PersonStep[] = []): FollowUp[] =>
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

export const diary: fc.Arbitrary<DiaryFact[]> = fc
  .array(aNote, { minLength: 1, maxLength: 14 })
  .map((notes) =>
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
export const intents = fc.array(
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
export function stepsOn(facts: DiaryFact[], wished: Intent[], onlyOfNotes = false): PersonStep[] {
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
