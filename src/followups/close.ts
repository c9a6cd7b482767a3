/** Somebody has looked: the item closes, and what is not mended grows on as a fresh item. */
import { workAgain } from './answers.ts';
import type { Found } from './item.ts';
import {
  addItem,
  type Item,
  type Ledger,
  liveOfKind,
  type Source,
  setState,
  takeUp,
  write,
} from './ledger.ts';
import { sameOccasion } from './match.ts';
import { wakeAtOnce } from './wake.ts';

export function close(ledger: Ledger, item: Item, found: NonNullable<Item['found']>): void {
  item.found = found;
  setState(ledger, item, 'closed');
}

export function looked(
  ledger: Ledger,
  item: Item,
  source: Source,
  on: string,
  found: Found,
  reason: string,
): void {
  if (!write(ledger, item, source, 'looked', reason, { on, found })) return;
  close(ledger, item, found);
  if (found === 'partly' || found === 'not_fixed') growFrom(ledger, item, source, on, found);
}

function growFrom(
  ledger: Ledger,
  item: Item,
  source: Source,
  on: string,
  found: 'partly' | 'not_fixed',
): void {
  const kind = workAgain(item.kind);
  if (!kind) return;
  const id = `${source.id}~${kind}~${item.plot ?? ''}~${item.place ?? ''}`;
  const reason =
    found === 'partly' ? 'only partly mended: decide on the rest' : 'not mended: it stays to be done';
  const said = { on, words: source.words, place: item.place, dose: item.dose };
  const there = ledger.items.get(id) ?? sameOccasion(liveOfKind(ledger, item.plot, kind), said)[0];
  if (there) {
    takeUp(ledger, there, id);
    write(ledger, there, source, 'mentioned', reason, { on });
    return;
  }
  const { plot, problem, taxon, place, severity, figures } = item;
  const child = addItem(ledger, {
    ...{ id, plot, kind, problem, taxon, place, severity, figures, grewFrom: item.id, openedAt: source.at },
    problemStood: 'there',
    state: found === 'partly' ? 'considered' : 'open',
  });
  const stands = write(ledger, child, source, found === 'partly' ? 'considered' : 'decided', reason, { on });
  if (!stands) setState(ledger, child, 'dropped');
  wakeAtOnce(ledger, child, source);
}
