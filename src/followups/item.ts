/**
 * What goes into the follow-ups and what comes out. Days are local calendar days at the farm, `YYYY-MM-DD`;
 * moments are local wall time, `YYYY-MM-DDTHH:MM` (seconds allowed).
 */
import type {
  ActionKind,
  Dose,
  Fact,
  FindingKind,
  Severity,
  Stage,
  Taxon,
  Trigger,
  When,
} from '../reading/record.ts';

/** One fact of one note, as the diary holds it now (read, corrected, filed to a plot). */
export interface DiaryFact {
  /** Stable: note id, list and position in the list. Must not contain `~` or `>`. */
  id: string;
  noteId: string;
  observedAt: string;
  /** The plot that the fact is filed to; rules over the plot inside `fact`. */
  plot: string | null;
  by: string;
  fact: Fact;
  /** The note's own words that the fact came from. */
  words: string;
}

export type ItemState =
  | 'considered'
  | 'open'
  | 'put_off'
  | 'reported'
  | 'to_look'
  | 'closed'
  | 'dropped'
  | 'ruled_out';

/** `seen` is for work with nothing to mend: an inspection, a count, a message, a harvest. */
export type Found = 'fixed' | 'partly' | 'not_fixed' | 'seen';

export type PersonStepKind =
  | 'add'
  | 'decide'
  | 'report_done'
  | 'look'
  | 'put_off'
  | 'drop'
  | 'rule_out'
  | 'reopen'
  | 'match'
  | 'apart'
  | 'remark'
  | 'undo';

/** The item as the person saw it: enough to keep it, should its opening fact be read otherwise later. */
export interface ItemSnapshot {
  plot: string | null;
  kind: ActionKind;
  problem?: FindingKind;
  place?: string;
  openedAt: string;
  words: string;
  noteId?: string;
  when?: When;
  who?: string;
  dose?: Dose;
}

/** What somebody did on a page. `add` opens an item whose id is the step's own id. */
export interface PersonStep {
  id: string;
  itemId: string;
  at: string;
  by: string;
  kind: PersonStepKind;
  words: string;
  snapshot: ItemSnapshot;
  /** With `look`. */
  found?: Found;
  /** The day of the work or the look; the day of `at` where it is left out. */
  on?: string;
  /** With `add`, `decide`, `put_off`: when it is wanted. */
  when?: When;
  who?: string;
  dose?: Dose;
  /** With `report_done`: the person saw it with their own eyes. */
  firstHand?: boolean;
  /** With `match` (this fact is about this item) and `apart` (it is about none of them). */
  factId?: string;
  /** With `undo`: a person's step id, or the id of an item step that a note brought. */
  undoes?: string;
}

export type ItemStepKind =
  | 'considered'
  | 'decided'
  | 'mentioned'
  | 'woke'
  | 'reported_done'
  | 'looked'
  | 'looked_early'
  | 'put_off'
  | 'dropped'
  | 'ruled_out'
  | 'reopened'
  | 'matched'
  | 'remark'
  | 'undo';

export interface ItemStep {
  /** A person's step id, or `factId>what` for what a note brought; `undoes` takes either. */
  id: string;
  what: ItemStepKind;
  at: string;
  /** The day that it is about: work done yesterday carries yesterday. */
  on: string;
  by: string;
  words: string;
  noteId?: string;
  stepId?: string;
  /** Why it was taken to be about this item, in words. */
  reason: string;
  found?: Found;
  undone?: { by: string; at: string; stepId: string };
}

/** Something that a person must settle; until then nothing moves. */
export interface Question {
  factId: string;
  noteId: string;
  asks: 'which' | 'found' | 'gone';
  sentence: string;
  words: string;
  candidates: { itemId: string; reason: string }[];
}

/** `forecast` is true while the date rests on a forecast or on another item's date. */
export interface Due {
  from: string;
  to: string;
  forecast: boolean;
  because: string;
}

export type Bucket =
  | 'late'
  | 'today'
  | 'soon'
  | 'waiting'
  | 'to_look_again'
  | 'to_decide'
  | 'later'
  | 'settled';

export type Timing = 'late' | 'today' | 'soon' | 'later' | 'undated';

export interface FollowUp {
  id: string;
  /** Ids of facts that were taken up into this item, its own first. */
  alsoKnownAs: string[];
  plot: string | null;
  kind: ActionKind;
  problem?: FindingKind;
  taxon?: Taxon;
  place?: string;
  severity?: Severity;
  state: ItemState;
  found?: Found;
  openedAt: string;
  openedByHand: boolean;
  due?: Due;
  waitsFor?: { trigger: Trigger; words: string };
  /** With `reported` and `to_look`: what to look at. */
  lookAt?: string;
  bucket: Bucket;
  /** How near the due day is, whatever the bucket. */
  timing: Timing;
  who?: string;
  dose?: Dose;
  when?: When;
  doneOn?: string;
  /** True where the only word for the work is somebody else's. */
  hearsay: boolean;
  /** Sprayed plots: nobody goes in through this day unless the label says a shorter time. */
  keepOut?: { through: string; because: string };
  cautions: string[];
  plan?: string;
  grewFrom?: string;
  unsure?: Question;
  steps: ItemStep[];
}

/** One row of the table that the farm can edit. */
export interface LookAfterRow {
  action: ActionKind;
  /** Days from the work to the first day of the look. */
  days: number;
  /** The look may be made over so many days more. */
  spanDays: number;
  lookAt: string;
  /** A clean finding counts as the result from so many days after the work. */
  goodFromDays: number;
  /** A bad finding counts as the result from so many days after the work. */
  badFromDays: number;
  /** Gives way to the action's next row once its days are over. */
  passes?: boolean;
  source: string;
}

export interface StageForecast {
  plot: string;
  stage: Stage;
  date: string;
  sure: 'observed' | 'forecast';
}

export const SETTLED: readonly ItemState[] = ['closed', 'dropped', 'ruled_out'];
export const UNDONE_WORK: readonly ItemState[] = ['considered', 'open', 'put_off'];
export const DONE_NOT_SEEN: readonly ItemState[] = ['reported', 'to_look'];

/** What a page stores with a person's step. */
export function snapshotOf(item: FollowUp): ItemSnapshot {
  const opening = item.steps[0];
  const { plot, kind, problem, place, openedAt, when, who, dose } = item;
  return {
    plot,
    kind,
    openedAt,
    words: opening?.words ?? '',
    ...(problem && { problem }),
    ...(place && { place }),
    ...(opening?.noteId && { noteId: opening.noteId }),
    ...(when && { when }),
    ...(who && { who }),
    ...(dose && { dose }),
  };
}
