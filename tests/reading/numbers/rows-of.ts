import { readFileSync } from 'node:fs';

/** Rows of the tables in a document, each with the place where it stands, heading rows left out. */
export function rowsOf(document: string): { at: string; cells: string[] }[] {
  const url = new URL(`../../../docs/reading/${document}`, import.meta.url);
  const rows = readFileSync(url, 'utf8')
    .split('\n')
    .map((line, index) => ({ at: `docs/reading/${document}:${index + 1}`, line }))
    .filter(({ line }) => line.startsWith('| ') && !line.startsWith('| words') && !line.startsWith('| ---'))
    .map(({ at, line }) => ({
      at,
      cells: line
        .slice(1, -1)
        .split('|')
        .map((cell) => cell.trim()),
    }));
  if (rows.length === 0) throw new Error(`no rows in ${document}`);
  return rows;
}
