/** The tables of docs/reading/heard.md; a failing row is named by its line there. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { hear } from '../../../src/reading/hear/hear.ts';
import { NO_FARM_WORDS } from '../../../src/reading/record.ts';
import { tokenise } from '../../../src/reading/text.ts';

const PAGE = 'docs/reading/heard.md';
const lines = readFileSync(PAGE, 'utf8').split('\n');
const rows = lines
  .map((line, at) => ({
    line: at + 1,
    cells: line
      .split('|')
      .slice(1, -1)
      .map((cell) => cell.trim()),
  }))
  .slice(lines.indexOf('## Read as what was meant'))
  .filter(({ cells }) => cells.length > 0 && cells[0] !== 'Note' && !cells[0]!.startsWith('---'));
const changed = rows.filter(({ cells }) => cells.length === 3);
const kept = rows.filter(({ cells }) => cells.length === 1);

function heardIn(note: string, codes = ''): string {
  const plots = codes
    .split(', ')
    .filter(Boolean)
    .map((code) => ({ code, names: [] }));
  const { heard } = hear(tokenise(note), { channel: 'dictated', plots, farmWords: NO_FARM_WORDS });
  return heard.map(({ said, meant }) => `${said.toLowerCase()} → ${meant}`).join('; ');
}

test('the page has its two tables', () => {
  expect(changed.length).toBeGreaterThanOrEqual(80);
  expect(kept.length).toBeGreaterThanOrEqual(60);
});

describe('read as what was meant', () => {
  test.each(changed)(`${PAGE}:$line $cells.0`, ({ cells }) => {
    expect(heardIn(cells[0]!, cells[2])).toBe(cells[1]);
  });
});

describe('stays as it was said', () => {
  test.each(kept)(`${PAGE}:$line $cells.0`, ({ cells }) => {
    expect(heardIn(cells[0]!)).toBe('');
  });
});
