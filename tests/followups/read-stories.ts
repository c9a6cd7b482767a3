/** Reads the stories of docs/follow-ups.md: rows of `day | who | what | items after`, each with its line. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

export const STORIES_FILE = 'docs/follow-ups.md';

export interface StoryRow {
  line: number;
  day: string;
  who: string;
  what: string[];
  items: string[];
}
export interface Story {
  name: string;
  line: number;
  rows: StoryRow[];
}

const YEAR = 2030;
const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];
const DAY = /^(?:(?:Mon|Tue|Wed|Thu|Fri|Sat|Sun) )?(\d{1,2}) (\w{3})$/;

export const docText = (): string =>
  readFileSync(fileURLToPath(new URL(`../../${STORIES_FILE}`, import.meta.url)), 'utf8');

/** `Mon 4 Mar` or `4 Mar` of the stories' year. */
export function dayFrom(words: string): string {
  const [, date, month] = DAY.exec(words.trim()) ?? [];
  const m = MONTHS.indexOf(month ?? '');
  if (m < 0) throw new Error(`not a day: ${words}`);
  return `${YEAR}-${String(m + 1).padStart(2, '0')}-${String(date).padStart(2, '0')}`;
}

export function readStories(): Story[] {
  const stories: Story[] = [];
  docText()
    .split('\n')
    .forEach((text, i) => {
      const title = /^### Story \d+: (.+)$/.exec(text)?.[1];
      if (title) stories.push({ name: title, line: i + 1, rows: [] });
      else if (/^#/.test(text)) return;
      const cells = text.split('|').map((cell) => cell.trim());
      if (stories.length === 0 || cells.length !== 6 || /^(day|-+)$/.test(cells[1]!)) return;
      const [, day, who, what, items] = cells as [string, string, string, string, string];
      stories.at(-1)!.rows.push({
        line: i + 1,
        day: dayFrom(day),
        who,
        what: parts(what),
        items: parts(items),
      });
    });
  return stories;
}

const parts = (cell: string): string[] =>
  cell
    .split(';')
    .map((part) => part.trim())
    .filter(Boolean);
