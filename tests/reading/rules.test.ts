/** Each rule's own examples: notes in which it finds something, and notes in which it finds nothing. */
import { describe, expect, test } from 'vitest';
import { readNote } from '../../src/reading/read.ts';
import { WORK_RULES } from '../../src/reading/rules/work-rules.ts';

const read = (text: string) =>
  readNote({
    id: 'rule',
    observedAt: '2031-03-14T07:00',
    plots: [{ code: 'B2', names: [] }],
    plot: 'B2',
    channel: 'typed',
    text,
  });

const kindOf = (id: string) =>
  id
    .replace(/-(noun|object-first)$/, '')
    .replace('weed-by-hand', 'hand_weed')
    .replaceAll('-', '_');
const KINDS: Record<string, string> = {
  remove_it: 'rogue',
  fill_it: 'replant',
  mend_it: 'mend_bund',
  finish_it: 'hand_weed',
};

describe('rules of work', () => {
  const rows = WORK_RULES.filter(({ yes, no }) => yes.length + no.length > 0);
  test.each(rows.map((rule) => [rule.id, rule] as const))('%s', (id, rule) => {
    const kind = KINDS[kindOf(id)] ?? kindOf(id);
    const before: Record<string, string> = {
      remove_it: 'Off-types by the road. ',
      fill_it: 'Gaps along the drain. ',
      finish_it: 'Hand weeded half yesterday. ',
    };
    for (const yes of rule.yes) {
      const { record } = read(`${before[kindOf(id)] ?? ''}${yes}`);
      expect(
        record.actions.map((action) => action.kind),
        yes,
      ).toContain(kind);
    }
    for (const no of rule.no)
      expect(
        read(no).record.actions.map((action) => action.kind),
        no,
      ).not.toContain(kind);
  });
});
