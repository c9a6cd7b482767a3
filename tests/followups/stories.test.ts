import { describe, expect, test } from 'vitest';
import { followUps } from '../../src/followups/follow-ups.ts';
import { type FollowUp, SETTLED } from '../../src/followups/item.ts';
import { LOOK_AFTER } from '../../src/followups/look-after.ts';
import { docText, readStories, STORIES_FILE, type StoryRow } from './read-stories.ts';
import { named, type Told, tell, wordsOf } from './tell-story.ts';

const stories = readStories();

describe(`stories of ${STORIES_FILE}`, () => {
  test('there are at least fourteen, over several weeks together', () => {
    expect(stories.length).toBeGreaterThanOrEqual(14);
  });

  test.each(stories)('$name', (story) => {
    const told: Told = { facts: [], steps: [], forecasts: [] };
    let items: FollowUp[] = [];
    for (const row of story.rows) {
      try {
        tell(told, row, items);
      } catch (error) {
        throw new Error(`${STORIES_FILE}:${row.line}: ${(error as Error).message}`);
      }
      items = itemsOn(told, row.day);
      expect(departures(row, items), `${STORIES_FILE}:${row.line} (${story.name})`).toEqual([]);
    }
  });
});

/** The items of the day; the same must come of the same things in the other order and sent twice. */
function itemsOn(told: Told, today: string): FollowUp[] {
  const input = { ...told, lookAfter: LOOK_AFTER, today };
  const items = followUps(input);
  const otherWay = followUps({
    ...input,
    facts: [...told.facts].reverse().concat(told.facts),
    steps: [...told.steps].reverse().concat(told.steps),
  });
  expect(otherWay).toEqual(items);
  return items;
}

/** What the row says and the items do not; items that stand open and the row leaves out. */
function departures(row: StoryRow, items: FollowUp[]): string[] {
  const wrong: string[] = [];
  const spokenOf = new Set<FollowUp>();
  for (const said of row.items.filter((words) => words !== 'nothing')) {
    const colon = said.indexOf(': ');
    const label = said.slice(0, colon);
    let item: FollowUp;
    try {
      item = named(items, label);
    } catch (error) {
      wrong.push((error as Error).message);
      continue;
    }
    spokenOf.add(item);
    const words = wordsOf(item, row.day);
    for (const word of said
      .slice(colon + 2)
      .split(' · ')
      .map((w) => w.trim()))
      if (!words.includes(word)) wrong.push(`${label}: not "${word}" but ${words.join(' · ')}`);
  }
  for (const item of items)
    if (!SETTLED.includes(item.state) && !spokenOf.has(item))
      wrong.push(`${item.kind} ${item.plot} is not in the row: ${wordsOf(item, row.day).join(' · ')}`);
  return wrong;
}

test('the table of looks in the document is the one that a farm starts with', () => {
  const rows = docText()
    .split('\n')
    .filter((line) => /^\| `\w+` \| \d/.test(line))
    .map((line) =>
      line
        .split('|')
        .slice(1, -1)
        .map((cell) => cell.trim().replaceAll('`', '')),
    );
  expect(rows).toEqual(
    LOOK_AFTER.map((r) => [
      r.action,
      String(r.days),
      String(r.spanDays),
      r.passes ? `${r.lookAt} (passes)` : r.lookAt,
      String(r.goodFromDays),
      String(r.badFromDays),
      r.source,
    ]),
  );
});
