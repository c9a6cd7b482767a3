/**
 * The page of follow-ups with 10,000 items, over real HTTP against the real application, against bare express and ejs
 * printing the same HTML; and one list of it, a page further on.
 */
import { createServer } from 'node:http';
import type { Diary } from '../../src/diary/diary.ts';
import { followUpCounts, followUpLists } from '../../src/diary/follow-up-lists.ts';
import { keepNote } from '../../src/diary/keep-note.ts';
import { makeApp } from '../../src/web/app.ts';
import { buildClient } from '../../src/web/build-client.ts';
import { openTestDiary } from '../diary/test-diary.ts';
import { medianOf, p95Of, timesOf } from './timing.ts';
import { bareApp, listen, read } from './web.ts';

const ITEMS = 10_000;

export async function benchLists(): Promise<void> {
  const { diary, end } = await openTestDiary();
  const items = await fillLists(diary);
  const server = await listen(createServer(makeApp(diary, { buildFolder: await buildClient() })));
  const html = await read(`${server.url}/follow-ups`);
  const next = /href="([^"]*list=late[^"]*)"/.exec(html)?.[1]?.replaceAll('&amp;', '&');
  for (const [name, path] of [
    ['all lists', '/follow-ups'],
    ['late ones, a page further on', next ?? '/follow-ups?list=late'],
    ['one plot', '/follow-ups?plot=B2'],
  ] as const) {
    const page = await read(server.url + path);
    const bare = await listen(createServer(bareApp(page)));
    const ours = await timesOf(60, 10, () => read(server.url + path));
    const yardstick = await timesOf(60, 10, () => read(bare.url));
    const ratio = medianOf(ours) / medianOf(yardstick);
    console.log(
      `follow-ups of ${items} items, ${name}, ${Math.round(page.length / 1024)} kB: median ${medianOf(ours)} ms, p95 ${p95Of(ours)} ms; ` +
        `the same HTML from bare express and ejs ${medianOf(yardstick)} ms; ratio ${ratio.toFixed(2)} (aim: below 3)`,
    );
    bare.close();
  }
  server.close();
  await end();
}

/**
 * Items as a few real notes bring them, copied under ids of their own. How long the items take to be worked out is not
 * measured here: that happens once after a note, the page is asked for again and again.
 */
async function fillLists(diary: Diary): Promise<number> {
  const works = ['hand weed the north bund', 'mend the bund at the gate', 'topdress 30 kg N per hectare'];
  for (let n = 0; n < 36; n++) {
    await keepNote(diary, {
      id: `list-${n}`,
      observedAt: `2031-07-${String(1 + Math.floor(n / 4)).padStart(2, '0')}T07:00`,
      text: `B${1 + (n % 4)}: ${works[Math.floor(n / 4) % works.length]} by ${5 + ((n * 7) % 26)} July.`,
    });
  }
  await followUpLists(diary);
  const rows = await diary.db.selectFrom('follow_ups').selectAll().execute();
  const copies = Array.from({ length: ITEMS - rows.length }, (_, n) => {
    const row = rows[n % rows.length]!;
    const id = `${row.id}-copy-${n}`;
    return { ...row, id, item: JSON.stringify({ ...JSON.parse(row.item), id }) };
  });
  for (let at = 0; at < copies.length; at += 50)
    await diary.db
      .insertInto('follow_ups')
      .values(copies.slice(at, at + 50))
      .execute();
  return (await followUpCounts(diary, {})).total;
}
