/** The rows of docs/reading/places.md: what a finding of the words says of its place. */
import { describe, expect, test } from 'vitest';
import { readNote } from '../../../src/reading/read.ts';
import { rowsOf } from '../numbers/rows-of.ts';

describe('places.md', () => {
  test.each(rowsOf('places.md').map(({ at, cells }) => [at, cells[0] ?? '', cells[1] ?? ''] as const))(
    '%s  %s',
    (at, words, where) => {
      const plots = [{ code: 'B1', names: [] }];
      const { record } = readNote({
        id: 'row',
        observedAt: '2031-03-14T07:00',
        plots,
        plot: 'B1',
        channel: 'typed',
        text: words,
      });
      expect(record.findings.map((finding) => finding.where ?? 'none')[0], at).toBe(where);
    },
  );
});
