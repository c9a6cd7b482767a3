import ICAL from 'ical.js';
import Papa from 'papaparse';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Browser, openChromium } from './chromium.ts';
import { greenPng } from './green-png.ts';
import { seen } from './seen.ts';
import { type Server, startServer } from './start-server.ts';

let server: Server;
const browsers: Browser[] = [];
let page: Page;

beforeAll(async () => {
  server = await startServer();
  for (const script of [true, false]) browsers.push(await openChromium({ script }));
  page = await browsers[0]!.context.newPage();
});
afterAll(async () => {
  for (const browser of browsers) await browser.close();
  await server?.stop();
});

const table = async (query: string): Promise<Record<string, string>[]> => {
  const text = await (await fetch(`${server.url}/follow-ups.csv${query}`)).text();
  return Papa.parse<Record<string, string>>(text, { header: true }).data;
};

async function write(id: string, at: string, text: string, photo?: number): Promise<void> {
  const note = new FormData();
  const plot = text.split(/[:,]/)[0]!;
  for (const [name, value] of Object.entries({ id, text, plot, observedAt: at })) note.set(name, value);
  if (photo !== undefined) note.set('photos', new Blob([new Uint8Array(await greenPng(photo))]), `${id}.png`);
  const headers = { accept: 'application/json' };
  const answer = await fetch(`${server.url}/notes`, { method: 'POST', body: note, headers });
  if (!answer.ok) throw new Error(await answer.text());
}

const job = (title: string) => page.locator('.jobs > li', { hasText: title });
const told = (words: string) => page.locator(`.told:has-text("${words}")`).waitFor();

describe('The lists', () => {
  test('say in the title of the page how many are late and how many are for today', async () => {
    await page.goto(`${server.url}/follow-ups`);
    const late = (await table('')).filter(({ list }) => list === 'late').length;
    const today = (await table('')).filter(({ list }) => list === 'today').length;
    expect(late).toBeGreaterThan(0);
    expect(await page.title()).toBe(`${late} late, ${today} today · Follow-ups · Bundwalk`);
    expect(await seen(page.locator('h2').first())).toMatch(/^Late/);
  });

  test.each<[string, string, (row: Record<string, string>) => boolean]>([
    ['plot', 'E1', (row) => row.plot === 'E1'],
    ['who', 'Celso', (row) => row.who === 'Celso'],
    ['kind', 'irrigate', (row) => row.kind === 'irrigate'],
    ['by', '2031-08-31', (row) => row.due_to !== '' && row.due_to! <= '2031-08-31'],
  ])('narrowed by %s show and give as a table just those', async (name, value, fits) => {
    const all = await table('');
    const expected = all.filter(fits).map(({ id }) => id);
    expect(expected.length).toBeGreaterThan(0);
    expect(expected.length).toBeLessThan(all.length);
    expect((await table(`?${name}=${value}`)).map(({ id }) => id)).toEqual(expected);
    await page.goto(`${server.url}/follow-ups?${name}=${value}`);
    const shown = await page.locator('.jobs > li').evaluateAll((items) => items.map(({ id }) => id));
    expect([...shown].sort()).toEqual([...expected].sort());
  });

  test('are narrowed by hand without script too', async () => {
    const bare = await browsers[1]!.context.newPage();
    await bare.goto(`${server.url}/follow-ups`);
    await bare.locator('details.filters summary').click();
    await bare.selectOption('#f-plot', 'E1');
    await bare.getByRole('button', { name: 'Show', exact: true }).click();
    expect(new URL(bare.url()).searchParams.get('plot')).toBe('E1');
    for (const title of await bare.locator('.jobs .what').allInnerTexts()) expect(title).toContain('E1');
    await bare.close();
  });

  test('are a calendar that a public parser reads, one event for each that has a day', async () => {
    await page.goto(`${server.url}/follow-ups`);
    const href = await page.getByRole('link', { name: /as a calendar/ }).getAttribute('href');
    const answer = await fetch(server.url + href);
    expect(answer.headers.get('content-type')).toMatch(/^text\/calendar/);
    const events = new ICAL.Component(ICAL.parse(await answer.text())).getAllSubcomponents('vevent');
    expect(events.length).toBe((await table('')).filter(({ due_to }) => due_to).length);
    expect(events.length).toBeGreaterThan(0);
  });

  test('go on where a list is longer than one reads, and show each once', async () => {
    for (let n = 0; n < 24; n++)
      await write(
        `long-${n}`,
        '2031-09-12T06:00',
        `E${1 + (n % 12)}: ${n < 12 ? 'rogue' : 'scare birds'} by 20 October.`,
      );
    await page.goto(`${server.url}/follow-ups`);
    const ids = async (): Promise<string[]> =>
      page
        .locator('section:has(h2:text-matches("^Later|^Soon")) .jobs > li')
        .evaluateAll((items) => items.map(({ id }) => id));
    const more = page.getByRole('link', { name: /^Show more: (later|soon)/ });
    const first = await ids();
    await more.click();
    const rest = await ids();
    const list = new URL(page.url()).searchParams.get('list')!;
    const expected = (await table('')).filter((row) => row.list === list).map(({ id }) => id);
    expect([...first.filter((id) => expected.includes(id)), ...rest]).toEqual(expected);
    expect(expected.length).toBeGreaterThan(20);
  });
});

describe('Closing', () => {
  test('two taps, with the plot then and now between them', async () => {
    await write('then-note', '2031-09-04T06:30', 'E6: bund leaking at the gate, mend it today.', 60);
    await write('done-note', '2031-09-05T06:30', 'E6: mended the bund at the gate yesterday.');
    await write('now-note', '2031-09-11T06:30', 'E6, looks fine.', 90);
    await page.goto(`${server.url}/follow-ups?plot=E6&kind=mend_bund`);
    const item = job('Bund mending in E6').first();
    await item.locator('summary').first().click();
    const pair = item.locator('.then-and-now');
    expect(await seen(pair)).toMatch(/Then, Thu 4 Sep.*Now, Thu 11 Sep/s);
    const [then, now] = await pair
      .locator('img')
      .evaluateAll((images) => images.map((one) => one.getAttribute('src')));
    expect(then).not.toBe(now);
    const boxes = await pair.locator('figure').all();
    const [left, right] = await Promise.all(boxes.map((box) => box.boundingBox()));
    expect(left!.y).toBe(right!.y);
    expect(right!.x).toBeGreaterThan(left!.x + left!.width - 1);
    await item.locator('.found').getByRole('button', { name: 'Fixed', exact: true }).click();
    await told('fixed.');
    expect(await job('Bund mending in E6').count()).toBe(0);
  });

  test('a question whether work is still wanted is answered in words, and can be taken back', async () => {
    await page.goto(`${server.url}/follow-ups?plot=W1&kind=replant`);
    const item = job('Gap filling in W1').first();
    expect(await seen(item.locator('.asks'))).toMatch(/still wanted\?/);
    await item.getByRole('button', { name: 'No longer needed' }).click();
    await told('dropped');
    expect(await job('Gap filling in W1').count()).toBe(0);
    await page.locator('.told button').click();
    await told('taken back');
    await job('Gap filling in W1').getByRole('button', { name: 'Still to be done' }).click();
    await told('to be done');
    expect(await job('Gap filling in W1').locator('.asks').count()).toBe(0);
  });

  test('a question what was found is answered with one tap', async () => {
    await page.goto(`${server.url}/follow-ups?plot=E7&kind=hand_weed`);
    const asking = page.locator('.jobs > li:has(.asks)');
    const before = await asking.count();
    expect(await seen(asking.first().locator('.asks'))).toMatch(/What was found\?/);
    await asking.first().locator('.asks').getByRole('button', { name: 'Partly' }).click();
    await told('partly fixed');
    expect(await asking.count()).toBe(before - 1);
  });

  test('a question which work a note means moves the report to the one that is chosen', async () => {
    await page.goto(`${server.url}/follow-ups?kind=drain`);
    const asking = page.locator('.jobs > li:has(.asks)', { hasText: 'plot not named' });
    expect(await seen(asking.locator('.asks'))).toMatch(/names no plot/);
    const yes = asking.getByRole('button', { name: /^Yes, this one: W1/ });
    const candidate = await yes.getAttribute('value');
    await yes.click();
    await told('the note is about this one');
    expect(await page.locator('.jobs > li', { hasText: 'plot not named' }).count()).toBe(0);
    await page.goto(`${server.url}/follow-ups/${encodeURIComponent(candidate!)}`);
    expect(await seen(page.locator('.life'))).toMatch(
      /reported as done\..*“drained”.*somebody said on Fri 12 Sep that it is this one/s,
    );
  });
});

describe('An item’s own page', () => {
  test('tells its life with who, when, why and the note, and takes any step back', async () => {
    await page.goto(`${server.url}/follow-ups?plot=E12&kind=replant`);
    await job('Gap filling in E12').locator('.what a').click();
    const life = page.locator('.life > li');
    expect(await life.count()).toBeGreaterThan(0);
    expect(await seen(life.first())).toMatch(
      /\w{3} \d+ \w{3}.*decided, to be done.*the note.*Why it stands here/s,
    );
    expect(
      await life
        .first()
        .getByRole('link', { name: /the note/ })
        .getAttribute('href'),
    ).toMatch(/^\/notes\//);
    await life
      .first()
      .getByRole('button', { name: /Take this back/ })
      .click();
    await told('taken back');
    expect(await seen(page.locator('.lead'))).toMatch(/^Dropped|^Taken back|^Considered/);
    expect(await seen(life.first())).toMatch(/Taken back/);
    await page.locator('.life > li', { hasText: 'took a step back' }).last().locator('button').click();
    await told('taken back');
    expect(await seen(page.locator('.lead'))).toMatch(/^Open/);
  });

  test('of one that is not there says so', async () => {
    const answer = await page.goto(`${server.url}/follow-ups/none-such`);
    expect(answer!.status()).toBe(404);
    expect(await seen(page.locator('main'))).toMatch(/no follow-up at this address/);
  });
});

describe('The look afterwards', () => {
  test('is set to the farm’s own days, says what it replaced, and goes back', async () => {
    await page.goto(`${server.url}/season`);
    await page.getByRole('link', { name: /after which work/ }).click();
    const row = page.locator('.look-after > li', { hasText: 'Hand weeding' });
    await row.locator('summary').click();
    await row.locator('[name="days"]').fill('9');
    await row.locator('[name="source"]').fill('our own practice');
    await row.getByRole('button', { name: /Keep the row/ }).click();
    await told('the farm’s own');
    expect(await seen(row)).toMatch(
      /9 days after.*our own practice.*The farm’s own\. Every farm starts with 7 days/s,
    );
    expect(await page.locator('.look-after > li.own').count()).toBe(1);
    await row.getByRole('button', { name: /As every farm starts/ }).click();
    await told('as every farm starts');
    expect(await page.locator('.look-after > li.own').count()).toBe(0);
  });

  test('says beside the field what is wrong, and keeps what was written', async () => {
    await page.goto(`${server.url}/season/look-after`);
    const row = page.locator('.look-after > li', { hasText: 'Hand weeding' });
    await row.locator('summary').click();
    await row.locator('[name="days"]').fill('soon');
    await row.getByRole('button', { name: /Keep the row/ }).click();
    expect(await seen(row.locator('.field', { has: page.locator('[name="days"]') }))).toMatch(/no number/);
    expect(await row.locator('[name="days"]').inputValue()).toBe('soon');
    expect(await row.locator('[name="days"]').getAttribute('aria-invalid')).toBe('true');
  });
});

describe('Small things', () => {
  test('a fact that is sent twice by one form is added once', async () => {
    await page.goto(`${server.url}/notes/then-note/fact?list=measurements`);
    const id = await page.inputValue('form [name="id"]');
    const send = () =>
      fetch(`${server.url}/notes/then-note/fact/add`, {
        method: 'POST',
        body: new URLSearchParams({
          id,
          list: 'measurements',
          plot: 'E6',
          quantity: 'plant_height',
          value: '77',
        }),
        headers: { accept: 'application/json' },
      });
    for (const answer of [await send(), await send()]) expect(answer.status).toBe(200);
    await page.goto(`${server.url}/notes/then-note`);
    expect(await page.locator('.judged > li', { hasText: 'Plant height 77 cm' }).count()).toBe(1);
  });

  test('keeping the farm keeps the day that counts as today; the real date can be used, and taken back', async () => {
    await page.goto(`${server.url}/season`);
    await page.getByRole('button', { name: 'Keep the farm' }).click();
    await told('The farm is kept');
    expect(await seen(page.locator('.head .farm'))).toContain('as of 12 Sep 2031');
    await page.getByRole('button', { name: 'Use today’s real date' }).click();
    await told('today’s real date now');
    expect(await seen(page.locator('.head .farm'))).not.toContain('as of');
    await page.locator('.told button').click();
    await told('again');
    expect(await seen(page.locator('.head .farm'))).toContain('as of 12 Sep 2031');
  });
});
