/** The plot's story: notes, photos, work and measurements, newest first, with the crop's age on each day. */
import { sql } from 'kysely';
import { cropAge, expectedStages } from '../plots/expected-stages.ts';
import { type Strip, seasonStrip } from '../plots/season-strip.ts';
import {
  type ActionFact,
  type Fact,
  FINDING_KINDS,
  type FindingKind,
  type Span,
  type Stage,
} from '../reading/record.ts';
import { STAGE_WORDS, sayFact } from '../reading/say-fact.ts';
import { factsOfNotes } from '../storage/note-rows.ts';
import type { Db } from '../storage/open-store.ts';
import { photosOfNotes } from '../storage/photo-rows.ts';
import type { NoteRow } from '../storage/tables.ts';
import type { Diary } from './diary.ts';
import { localToday, type Plot, readPlot } from './farm.ts';
import { followUpsOfToday } from './file-follow-ups.ts';
import { type FollowUpShown, openOnPlot } from './follow-up-lists.ts';
import { grouped } from './grouped.ts';
import { byList, type FactShown, type PhotoShown, showFact, showPhoto } from './shown.ts';

export const SHOWS = ['notes', 'problems', 'work', 'measurements', 'photos'] as const;
export type Show = (typeof SHOWS)[number];

export interface StoryFilter {
  problem?: FindingKind | undefined;
  show?: Show | undefined;
  /** Notes older than this one: `2031-07-14T06:55/id`. */
  before?: string | undefined;
}

export interface StoryNote {
  id: string;
  at: string;
  author: string;
  text: string;
  /** Facts of this plot only. */
  facts: FactShown[];
  photos: PhotoShown[];
  /** False where the note also speaks of other plots. */
  whole: boolean;
  /** Words that this plot's facts came from. */
  marks: Span[];
}

export interface StoryDay {
  day: string;
  age: string | null;
  notes: StoryNote[];
}

export interface Story {
  plot: Plot;
  ageToday: string | null;
  /** `Tillering expected; panicle initiation from Fri 14 Mar`. */
  expectedStage: string | null;
  days: StoryDay[];
  problems: { kind: FindingKind; count: number }[];
  /** Cursor for older notes, or null. */
  older: string | null;
  open: FollowUpShown[];
  strip: Strip | null;
}

const NOTES_A_PAGE = 25;
const LISTS_OF: Record<Exclude<Show, 'notes' | 'photos'>, string> = {
  problems: 'findings',
  work: 'actions',
  measurements: 'measurements',
};

export async function story(diary: Diary, code: string, filter: StoryFilter = {}): Promise<Story | null> {
  const plot = await readPlot(diary, code);
  if (!plot) return null;
  const { db } = diary;
  await followUpsOfToday(diary);
  const today = await localToday(diary);
  const notes = await notesOf(db, code, filter);
  const page = notes.slice(0, NOTES_A_PAGE);
  const last = page.at(-1);
  const [days, problems, open, strip] = await Promise.all([
    showDays(db, plot, page, filter),
    problemCounts(db, code),
    openOnPlot(diary, code),
    stripOf(db, plot, today),
  ]);
  return {
    plot,
    ageToday: plot.crop ? cropAge(plot.crop, today) : null,
    expectedStage: expectedNow(plot, today),
    days,
    problems,
    older: notes.length > NOTES_A_PAGE && last ? `${last.observed_at}/${last.id}` : null,
    open,
    strip,
  };
}

/** Notes written in the plot, naming it, or with a photo of it; one more than a page holds. */
async function notesOf(db: Db, code: string, { problem, show, before }: StoryFilter): Promise<NoteRow[]> {
  const list = show && show !== 'notes' && show !== 'photos' ? LISTS_OF[show] : null;
  const facts = () =>
    db
      .selectFrom('facts')
      .select('note_id as id')
      .where((eb) => eb.or([eb('plot', '=', code), eb('other_plot', '=', code)]));
  const photos = db
    .selectFrom('note_photos')
    .innerJoin('photos', 'photos.id', 'note_photos.photo_id')
    .select('note_photos.note_id as id')
    .where('photos.plot', '=', code);
  const written = db.selectFrom('notes').select('id').where('plot', '=', code);
  const ofKind =
    show === 'photos'
      ? photos
      : list
        ? facts().where('list', '=', list)
        : facts().union(written).union(photos);
  let query = db.selectFrom('notes').selectAll().where('id', 'in', ofKind);
  if (problem)
    query = query.where('id', 'in', facts().where('list', '=', 'findings').where('kind', '=', problem));
  const cursor = before?.match(/^(\d{4}-\d{2}-\d{2}T\d{2}:\d{2})\/(.+)$/);
  if (cursor) query = query.where(sql<boolean>`(observed_at, id) < (${cursor[1]}, ${cursor[2]})`);
  return query
    .orderBy('observed_at', 'desc')
    .orderBy('id', 'desc')
    .limit(NOTES_A_PAGE + 1)
    .execute();
}

async function showDays(
  db: Db,
  plot: Plot,
  notes: NoteRow[],
  { problem, show }: StoryFilter,
): Promise<StoryDay[]> {
  const ids = notes.map(({ id }) => id);
  const facts = grouped(await factsOfNotes(db, ids, 'without traces'), (row) => row.note_id);
  const photos = grouped(await photosOfNotes(db, ids), (row) => row.note_id);
  const list = show && show !== 'notes' && show !== 'photos' ? LISTS_OF[show] : null;
  const shown = notes.map((note): StoryNote => {
    const all = facts.get(note.id) ?? [];
    const own = all.filter(
      (row) =>
        row.plot === plot.code ||
        row.other_plot === plot.code ||
        (row.plot === null && note.plot === plot.code),
    );
    const wanted = own.filter(
      (row) =>
        (!list && !problem) ||
        (list && row.list === list && (row.list !== 'findings' || !problem || row.kind === problem)) ||
        (problem && row.list === 'findings' && row.kind === problem),
    );
    const factsShown = wanted.map(showFact).sort(byList);
    return {
      id: note.id,
      at: note.observed_at,
      author: note.author,
      text: note.text,
      facts: factsShown,
      photos: (photos.get(note.id) ?? [])
        .filter((photo) => photo.plot === plot.code || photo.plot === null)
        .map((photo) => showPhoto(photo, note.text)),
      whole: own.length === all.length,
      marks: factsShown.flatMap(({ evidence }) => evidence),
    };
  });
  const byDay = grouped(shown, (note) => note.at.slice(0, 10));
  return [...byDay].map(([day, ofDay]) => ({
    day,
    age: plot.crop ? cropAge(plot.crop, day) : null,
    notes: ofDay,
  }));
}

async function problemCounts(db: Db, code: string): Promise<Story['problems']> {
  const rows = await db
    .selectFrom('facts')
    .select(['kind', (eb) => eb.fn.countAll<number>().as('count')])
    .where('plot', '=', code)
    .where('list', '=', 'findings')
    .groupBy('kind')
    .execute();
  return rows
    .filter((row) => (FINDING_KINDS as readonly string[]).includes(row.kind))
    .map((row) => ({ kind: row.kind as FindingKind, count: Number(row.count) }))
    .sort((a, b) => b.count - a.count);
}

/** What the strip draws: each thing once a day, however often it was written down. */
async function stripOf(db: Db, plot: Plot, today: string): Promise<Strip | null> {
  const facts = await db
    .selectFrom('facts')
    .select(['list', 'fact', sql<string>`substr(observed_at, 1, 10)`.as('day')])
    .distinct()
    .where('plot', '=', plot.code)
    .where('list', 'in', ['stages', 'actions', 'findings'])
    .where('status', 'in', ['current', 'done', 'present'])
    .orderBy('day')
    .execute();
  const due = await db
    .selectFrom('follow_ups')
    .select(['due_to', 'kind'])
    .distinct()
    .where('plot', '=', plot.code)
    .where('bucket', 'not in', ['settled', 'to_decide'])
    .where('due_to', 'is not', null)
    .execute();
  const { observed, marks } = onTheStrip(facts);
  const dueMarks = due.map(({ due_to, kind }) => ({ day: due_to!, kind: 'due' as const, words: kind }));
  return seasonStrip(plot.crop, observed, [...marks, ...dueMarks], today);
}

/** A stage is drawn where it was first seen; work on the day that it was done. */
function onTheStrip(rows: { list: string; fact: string; day: string }[]) {
  const observed = new Map<Stage, string>();
  const marks: { day: string; kind: 'done' | 'problem'; words: string }[] = [];
  for (const { list, fact: text, day } of rows) {
    const read = { list, fact: JSON.parse(text) } as Fact;
    if (read.list === 'stages' && !observed.has(read.fact.stage)) observed.set(read.fact.stage, day);
    if (read.list === 'actions')
      marks.push({ day: doneOn(read.fact) ?? day, kind: 'done', words: sayFact(read) });
    if (read.list === 'findings') marks.push({ day, kind: 'problem', words: sayFact(read) });
  }
  return { observed: [...observed].map(([stage, day]) => ({ stage, day })), marks };
}

const doneOn = ({ when }: ActionFact): string | null => (when && 'from' in when ? when.from : null);

function expectedNow(plot: Plot, today: string): string | null {
  const stages = plot.crop ? expectedStages(plot.crop) : [];
  const at = stages.findIndex(({ from, to }) => from <= today && today <= to);
  return at < 0 ? null : STAGE_WORDS[stages[at]!.stage];
}
