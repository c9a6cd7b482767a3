/** Findings of one plot: a later word for the same problem adds what it knows and no entry of its own. */
import type { Passage } from '../engine/passage.ts';
import { plotsOf } from '../plots/settle-plots.ts';
import type { Laid } from './entries.ts';
import type { FindingDraft } from './findings.ts';

interface Placed {
  draft: FindingDraft;
  plots: ReturnType<typeof plotsOf>;
}

export function mergeFindings(passage: Passage, drafts: readonly FindingDraft[]): Laid[] {
  const kept: Placed[] = [];
  const byKind = new Map<string, Placed[]>();
  for (const draft of drafts) {
    const plots = plotsOf(passage, draft.first, draft.last);
    const key = `${draft.rest.kind} ${plots.codes.join()}`;
    const same = byKind.get(key) ?? [];
    const before = same.find((one) => restates(one.draft, draft));
    if (before) {
      absorb(before.draft, draft);
      continue;
    }
    const placed = { draft: { ...draft, rest: { ...draft.rest } }, plots };
    kept.push(placed);
    byKind.set(key, [...same.slice(-11), placed]);
  }
  return kept.map(({ draft, plots }) => ({
    draft,
    plots,
    fact: (plot) => ({ list: 'findings', fact: { plot, ...draft.rest } }),
  }));
}

const NEAR = 18;

function restates(before: FindingDraft, later: FindingDraft): boolean {
  const a = before.rest;
  const b = later.rest;
  const near = later.first - before.last < NEAR;
  if (later.sign && near && a.status === b.status) return true;
  if (a.status === 'cleared' && b.status === 'absent') return near || a.taxon === b.taxon || !b.taxon;
  if (a.status === 'suspected' && near && (b.status === 'absent' || (b.status === 'present' && !later.sign)))
    return true;
  if (a.status !== b.status) {
    if (a.status === 'present' && (b.status === 'suspected' || b.status === 'risk')) return near;
    return a.status === 'suspected' && b.status === 'present' && later.sign && near;
  }
  if (a.taxon && b.taxon && a.taxon !== b.taxon && a.kind !== 'weeds') return false;
  return !(a.where && b.where && a.where !== b.where && a.status === 'present');
}

function absorb(before: FindingDraft, later: FindingDraft): void {
  const { severity, taxon, where, cause } = later.rest;
  if (
    before.rest.status === 'suspected' &&
    (later.rest.status === 'absent' || (later.rest.status === 'present' && !later.sign))
  )
    before.rest.status = later.rest.status;
  if (before.sign && before.rest.kind === 'disease' && later.rest.status === 'suspected')
    before.rest.status = 'suspected';
  before.rest.taxon ??= taxon;
  before.rest.severity ??= severity;
  before.rest.where ??= where;
  before.rest.cause ??= cause;
  for (const name of ['taxon', 'severity', 'where', 'cause'] as const)
    if (before.rest[name] === undefined) delete before.rest[name];
  before.also.push({ first: later.first, last: later.last });
  before.beat.push({ rule: later.rule, words: '', why: 'says the same again' });
}
