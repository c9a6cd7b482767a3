/** The tables of docs/reading run as tests: each row's words must read as the row says. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { readNote } from '../../src/reading/read.ts';
import type { NoteRecord, When } from '../../src/reading/record.ts';

const folder = fileURLToPath(new URL('../../docs/reading/', import.meta.url));
const PLOTS = [
  { code: 'B1', names: ['the canal plot'] },
  { code: 'B2', names: ['the late strip'] },
  { code: 'C1', names: ['the seed block'] },
  { code: 'T1R1', names: [] },
  { code: 'T1R2', names: [] },
];

interface Row {
  file: string;
  line: number;
  words: string;
  reads: string;
  channel: 'typed' | 'dictated';
}

/** Pages of plain tables `| words | reads |`; a page that names other columns is tested elsewhere. */
function rowsOf(file: string): Row[] {
  const lines = readFileSync(folder + file, 'utf8').split('\n');
  let inside = false;
  let channel: Row['channel'] = 'typed';
  return lines.flatMap((line, index) => {
    if (/^#/.test(line)) channel = /dictated/i.test(line) ? 'dictated' : 'typed';
    const cells = line.split('|').map((cell) => cell.trim());
    if (!line.startsWith('|')) inside = false;
    else if (cells[1] === 'words' && cells[2] === 'reads' && cells.length === 4) inside = true;
    else if (inside && !/^-+$/.test(cells[1] ?? ''))
      return [{ file, line: index + 1, words: cells[1] ?? '', reads: cells[2] ?? '', channel }];
    return [];
  });
}

const OWN_PAGES = [
  'stages.md',
  'ages.md',
  'findings.md',
  'actions.md',
  'plots.md',
  'unvisited-lessons-comparisons.md',
];
const pages = existsSync(folder) ? readdirSync(folder).filter((name) => OWN_PAGES.includes(name)) : [];

test('every page has its table', () => expect(pages.sort()).toEqual([...OWN_PAGES].sort()));

for (const page of pages) {
  describe(page, () => {
    test.each(rowsOf(page).map((row) => [`${row.file}:${row.line}  ${row.words}`, row] as const))(
      '%s',
      (_name, row) => {
        const { record } = readNote({
          id: 'row',
          observedAt: '2031-03-14T07:00',
          plots: PLOTS,
          plot: 'B1',
          channel: row.channel,
          text: row.words,
        });
        expect(tell(record), `docs/reading/${row.file}:${row.line}`).toBe(row.reads);
      },
    );
  });
}

/** Facts in few words: `B1 rodents absent`, `B1 spray planned 2031-03-15`. */
function tell(record: NoteRecord): string {
  const facts = [
    ...record.stages.map(({ plot, stage, status }) => `${plot} ${stage} ${status}`),
    ...record.ages.map(({ plot, days, since }) => `${plot} ${days} days since ${since}`),
    ...record.findings.map(({ plot, kind, status, severity, taxon }) =>
      [plot, taxon ?? kind, status, severity].filter(Boolean).join(' '),
    ),
    ...record.actions.map(({ plot, kind, status, when, who, hearsay }) =>
      [plot, kind, status, when && whenText(when), who && `by ${who}`, hearsay && 'hearsay']
        .filter(Boolean)
        .join(' '),
    ),
    ...record.lessons.map(({ plot }) => `${plot} lesson`),
    ...record.unvisited.map(({ plot }) => `${plot} not looked at`),
    ...record.comparisons.map(({ attribute, more, less }) => `${attribute} ${more} > ${less}`),
  ];
  return facts.length > 0 ? facts.join('; ') : 'nothing';
}

const whenText = (when: When): string =>
  'trigger' in when
    ? `${when.days ? `${when.days} days ` : ''}${when.trigger}`
    : when.from === when.to
      ? when.from
      : `${when.from} to ${when.to}`;
