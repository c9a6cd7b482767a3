/** Drafts become facts: one a plot, doubles left out, with evidence and trace, in the order of the text. */

import type { PlaceFound } from '../around/find-places.ts';
import type { Passage } from '../engine/passage.ts';
import { within } from '../engine/within.ts';
import type { MeasurementFound } from '../measurements/find-measurements.ts';
import { type PlotsOf, plotsOf } from '../plots/settle-plots.ts';
import {
  type Entry,
  emptyRecord,
  type Fact,
  type Heard,
  type NoteRecord,
  type PlotCode,
  type Reading,
} from '../record.ts';
import type {
  AgeMention,
  ComparisonMention,
  LessonMention,
  StageMention,
  UnvisitedMention,
} from '../rules/mentions.ts';
import type { ActionDraft } from './actions.ts';
import { type Draft, spanOf, wordsBetween } from './draft.ts';
import type { FindingDraft } from './findings.ts';
import { mergeFindings } from './merge-findings.ts';
import { placeMeasurements } from './place-measurements.ts';

export interface Settled {
  stages: StageMention[];
  ages: AgeMention[];
  findings: FindingDraft[];
  measurements: MeasurementFound[];
  actions: ActionDraft[];
  lessons: LessonMention[];
  unvisited: UnvisitedMention[];
  comparisons: ComparisonMention[];
  places: PlaceFound[];
}

export interface Laid {
  draft: Draft<unknown>;
  plots: PlotsOf;
  fact: (plot: PlotCode) => Fact;
}

export function entriesOf(passage: Passage, heard: Heard[], settled: Settled): Reading {
  const figures = placeMeasurements(passage, settled);
  const entries = [
    ...simpleFacts(passage, settled),
    ...mergeFindings(passage, settled.findings),
    ...figures,
    ...actionFacts(passage, settled.actions),
  ]
    .flatMap((laid) => laid.plots.codes.map((plot) => entryOf(passage, heard, laid, plot)))
    .sort((a, b) => (a.evidence[0]?.start ?? 0) - (b.evidence[0]?.start ?? 0));
  const kept = withoutDoubles(withStages(withoutSuperseded(entries)));
  return { record: recordOf(kept), entries: kept, heard };
}

const plain = (place: { first: number; last: number; rule: string }): Draft<unknown> => ({
  first: place.first,
  last: place.last,
  rule: place.rule,
  cues: [],
  beat: [],
  also: [],
  rest: null,
});

function simpleFacts(passage: Passage, { stages, ages, lessons, unvisited, comparisons }: Settled): Laid[] {
  const laid: Laid[] = [];
  for (const stage of stages)
    laid.push({
      draft: plain(stage),
      plots: plotsOf(passage, stage.first, stage.last),
      fact: (plot) => ({
        list: 'stages',
        fact: { plot, stage: stage.stage, status: stage.near ? 'approaching' : 'current' },
      }),
    });
  for (const age of ages)
    laid.push({
      draft: plain(age),
      plots: plotsOf(passage, age.first, age.last),
      fact: (plot) => ({ list: 'ages', fact: { plot, days: age.days, since: age.since } }),
    });
  for (const lesson of lessons)
    laid.push({
      draft: plain(lesson),
      plots: lessonPlots(passage, lesson),
      fact: (plot) => ({
        list: 'lessons',
        fact: { plot, text: wordsBetween(passage, lesson.first, lesson.last) },
      }),
    });
  for (const one of unvisited)
    laid.push({
      draft: plain(one),
      plots: plotsOf(passage, one.first, one.last),
      fact: (plot) => ({ list: 'unvisited', fact: { plot } }),
    });
  for (const { attribute, more, less, ...place } of comparisons)
    if (more && less)
      laid.push({
        draft: plain(place),
        plots: { codes: [null], how: 'both named', found: null },
        fact: () => ({ list: 'comparisons', fact: { attribute, more, less } }),
      });
  return laid;
}

/** A plot named within the lesson is the one it is for. */
function lessonPlots(passage: Passage, lesson: LessonMention): PlotsOf {
  const inside = within(passage.plots, lesson.first, lesson.last).find(
    (plot) => plot.first >= lesson.first && plot.last <= lesson.last && plot.role === 'subject',
  );
  return inside
    ? { codes: inside.codes, how: 'named in the lesson', found: inside }
    : plotsOf(passage, lesson.first, lesson.last);
}

const actionFacts = (passage: Passage, drafts: ActionDraft[]): Laid[] =>
  drafts.map((draft) => ({
    draft,
    plots: plotsOf(passage, draft.first, draft.last),
    fact: (plot) => ({ list: 'actions', fact: { plot, ...draft.rest } }),
  }));

function entryOf(passage: Passage, heard: Heard[], { draft, plots, fact }: Laid, plot: PlotCode): Entry {
  const own = spanOf(passage, draft.first, draft.last);
  const also = draft.also.map(({ first, last }) => spanOf(passage, first, last));
  const evidence = [own, ...also].filter(
    (span, at, all) => all.findIndex(({ start, end }) => start === span.start && end === span.end) === at,
  );
  return {
    ...fact(plot),
    evidence,
    trace: {
      rule: draft.rule,
      words: wordsBetween(passage, draft.first, draft.last),
      cues: draft.cues.map(({ row, first, last }) => ({
        cue: row.id,
        words: wordsBetween(passage, first, last),
        says: row.says,
      })),
      heard: heard
        .filter(({ start, end }) => evidence.some((span) => start < span.end && end > span.start))
        .map(({ said, meant }) => ({ said, meant })),
      beat: draft.beat,
      plot: plots.how,
    },
  } as Entry;
}

/** `do we spray or hand weed … hand weeding on Monday it is`: what was weighed and then decided stands as decided. */
function withoutSuperseded(entries: Entry[]): Entry[] {
  const decided = new Set<string>();
  const kept: Entry[] = [];
  for (const entry of [...entries].reverse()) {
    if (entry.list !== 'actions') {
      kept.push(entry);
      continue;
    }
    const key = `${entry.fact.plot} ${entry.fact.kind} ${entry.fact.when ? 'timed' : ''}`;
    if (entry.fact.status === 'planned' || entry.fact.status === 'ruled_out') decided.add(key);
    if (entry.fact.status !== 'proposed' || !decided.has(key)) kept.push(entry);
  }
  return kept.reverse();
}

/** A share of heads out is the heading stage; a whole plot cut is harvested (guide). */
function withStages(entries: Entry[]): Entry[] {
  const staged = new Set(
    entries.filter(({ list }) => list === 'stages').map(({ fact }) => ('plot' in fact ? fact.plot : null)),
  );
  return entries.flatMap((entry): Entry[] => {
    if (
      entry.list === 'measurements' &&
      entry.fact.quantity === 'heading_pct' &&
      entry.fact.value > 0 &&
      !staged.has(entry.fact.plot)
    )
      return [
        entry,
        {
          ...entry,
          list: 'stages',
          fact: { plot: entry.fact.plot, stage: 'heading', status: 'current' },
          trace: { ...entry.trace, rule: 'heads-counted' },
        },
      ];
    if (
      entry.list === 'actions' &&
      entry.fact.kind === 'harvest' &&
      entry.fact.status === 'done' &&
      !isSample(entry)
    )
      return [
        entry,
        {
          ...entry,
          list: 'stages',
          fact: { plot: entry.fact.plot, stage: 'harvested', status: 'current' },
          trace: { ...entry.trace, rule: 'plot-cut' },
        },
      ];
    return [entry];
  });
}

const isSample = ({ trace }: Entry): boolean => /crop|sample|cuts/i.test(trace.words);

/** One entry a kind, plot and status; the first keeps its place and takes what the later ones add. */
function withoutDoubles(entries: Entry[]): Entry[] {
  const kept: Entry[] = [];
  const seen = new Map<string, Entry>();
  for (const entry of entries) {
    const key = keyOf(entry);
    const before = seen.get(key);
    if (!before) {
      seen.set(key, entry);
      kept.push(entry);
      continue;
    }
    const first = before.fact as unknown as Record<string, unknown>;
    for (const [name, value] of Object.entries(entry.fact))
      if (first[name] === undefined && name !== 'hearsay') first[name] = value;
    before.evidence.push(...entry.evidence);
    before.trace.beat.push({ rule: entry.trace.rule, words: entry.trace.words, why: 'says the same again' });
  }
  return kept;
}

function keyOf(entry: Entry): string {
  const { list, fact } = entry;
  if (list === 'stages') return `s ${fact.plot} ${fact.stage}`;
  if (list === 'ages') return `a ${fact.plot} ${fact.since}`;
  if (list === 'actions') return `w ${fact.plot} ${fact.kind} ${fact.status}`;
  if (list === 'unvisited') return `u ${fact.plot}`;
  if (list === 'comparisons') return `c ${fact.attribute} ${fact.more} ${fact.less}`;
  return `${list} ${entry.evidence[0]?.start} ${JSON.stringify(fact)}`;
}

function recordOf(entries: Entry[]): NoteRecord {
  const record = emptyRecord();
  for (const { list, fact } of entries) (record[list] as unknown[]).push(fact);
  return record;
}
