/** Ties pieces of work of one plot together: `drain, topdress, water back` is one plan with its steps. */
import type { ActionKind } from '../reading/record.ts';
import { UNDONE_WORK } from './item.ts';
import { type Item, type Ledger, liveOfKind } from './ledger.ts';
import { neighboursIn } from './sequences.ts';
import type { Note } from './timeline.ts';
import { keepWatch } from './wake.ts';

/** `touched`: the items that the note's plans opened or added to. */
export function tiePlans(ledger: Ledger, note: Note, touched: Item[]): void {
  for (const plot of new Set(touched.map((item) => item.plot))) {
    const here = touched.filter((item) => item.plot === plot && UNDONE_WORK.includes(item.state));
    for (const [first, then] of neighboursIn(new Set(here.map((item) => item.kind)))) {
      const before = here.find((item) => item.kind === first)!;
      const after = here.find((item) => item.kind === then)!;
      tie(ledger, note, before, after);
      if (after.when) continue;
      Object.assign(after, { when: { trigger: `after:${first}` }, whenFromPlan: true });
      keepWatch(ledger, after);
    }
    for (const item of here) tieToNamed(ledger, note, item);
  }
}

/** `topdress after weeding`, `drain before spraying`: tied to the weeding or spraying that stands open there. */
function tieToNamed(ledger: Ledger, note: Note, item: Item): void {
  const trigger = item.when && 'trigger' in item.when ? item.when.trigger : '';
  const [side, kind] = trigger.split(':') as [string, ActionKind | undefined];
  if (!kind) return;
  const other = liveOfKind(ledger, item.plot, kind).find((o) => UNDONE_WORK.includes(o.state) && o !== item);
  if (other && side === 'after') tie(ledger, note, other, item);
  if (other && side === 'before') tie(ledger, note, item, other);
}

function tie(ledger: Ledger, note: Note, before: Item, after: Item): void {
  const plan = before.plan ?? after.plan ?? `plan~${note.id}~${before.plot ?? ''}`;
  const items = ledger.plans.get(plan) ?? new Set();
  ledger.plans.set(plan, items);
  for (const item of [before, after]) {
    item.plan ??= plan;
    items.add(item);
  }
}
