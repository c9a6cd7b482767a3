import type { Bucket, FollowUp } from './item.ts';
import { compare } from './timeline.ts';

/** The order in which the list shows its parts. */
export const BUCKETS: readonly Bucket[] = [
  'late',
  'today',
  'soon',
  'waiting',
  'to_look_again',
  'to_decide',
  'later',
  'settled',
];

const RANK = new Map(BUCKETS.map((bucket, i) => [bucket, i]));
const NO_DAY = '9999-12-31';

/** Sorts by part of the list, due day, plot, kind, id. */
export const inListOrder = (a: FollowUp, b: FollowUp): number =>
  RANK.get(a.bucket)! - RANK.get(b.bucket)! ||
  compare(a.due?.to ?? NO_DAY, b.due?.to ?? NO_DAY) ||
  compare(a.plot ?? '', b.plot ?? '') ||
  compare(a.kind, b.kind) ||
  compare(a.id, b.id);
