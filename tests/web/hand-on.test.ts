import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Browser, openChromium } from './chromium.ts';
import { greenPng } from './green-png.ts';
import { seen } from './seen.ts';
import { type Server, startServer } from './start-server.ts';

/** Twelve plots of an invented trial in one field. */
const CODES = Array.from({ length: 12 }, (_, n) => `K${n + 1}`);
const SEASON = `
farm: { name: Heron Fold, timeZone: UTC }
season: { name: Trial, from: 2020-01-01, to: 2090-12-31 }
people: [ { name: Odalys }, { name: Teun } ]
plots:
${CODES.map((code, n) => `  - { code: ${code}, walk: ${n + 1}, size: { widthM: 5, lengthM: 20 }${n === 3 ? ', protocol: ["zero nitrogen: meant to be yellow"]' : ''} }`).join('\n')}
`;

let server: Server;
const browsers = new Map<string, Browser>();

beforeAll(async () => {
  server = await startServer({ sample: false });
  const file = new FormData();
  file.set('text', SEASON);
  await sent('/season/file', file);
  for (const [n, code] of CODES.entries()) await write(code, `${code}: ${WORK[n % WORK.length]}`, n);
});
afterAll(async () => {
  for (const browser of browsers.values()) await browser.close();
  await server?.stop();
});

const WORK = [
  'weeds along the north bund, hand weed them today.',
  'topdress 30 kg N per hectare today.',
  'mend the leaking bund at the gate today.',
  'spray the weeds today.',
];

async function write(code: string, text: string, n: number): Promise<void> {
  const note = new FormData();
  note.set('id', `crew-note-${n}`);
  note.set('text', text);
  note.set('plot', code);
  note.set('photos', new Blob([new Uint8Array(await greenPng(40 + n))]), `${code}.png`);
  await sent('/notes', note);
}

async function sent(path: string, body: FormData): Promise<void> {
  const answer = await fetch(server.url + path, {
    method: 'POST',
    body,
    headers: { accept: 'application/json' },
  });
  if (!answer.ok) throw new Error(`${path}: ${answer.status} ${await answer.text()}`);
}

/** The office and the crew's phone share no cookies. */
async function openPage(who: 'desk' | 'phone', script = true): Promise<Page> {
  const key = `${who} ${script}`;
  const browser = browsers.get(key) ?? (await openChromium({ script }));
  browsers.set(key, browser);
  return browser.context.newPage();
}

/** A link for today's whole sheet; answers with its path. */
async function handOn(page: Page): Promise<string> {
  await page.goto(`${server.url}/crew-sheet`);
  await page.getByRole('button', { name: /Make (a|another) link/ }).click();
  await page.locator('.told:has-text("The link is made")').waitFor();
  return (await page.locator('.address a').first().getAttribute('href'))!;
}

describe('The crew sheet', () => {
  let page: Page;
  beforeAll(async () => {
    page = await openPage('desk');
    await page.goto(`${server.url}/follow-ups`);
    await page.getByRole('link', { name: 'Crew sheet for today' }).click();
  });

  test('goes in walking order, with a box to tick and a photo for every plot', async () => {
    const codes = await page.locator('.sheet h2').allInnerTexts();
    expect(codes.map((code) => code.trim())).toEqual(CODES);
    expect(await page.locator('.sheet-job .box').count()).toBe(12);
    expect(await page.locator('.sheet > li > img').count()).toBe(12);
  });

  test('says where in the plot, how much for it, and what the protocol wants', async () => {
    const plot = (code: string) =>
      seen(page.locator('.sheet > li', { has: page.locator('h2', { hasText: new RegExp(`^${code}$`) }) }));
    expect(await plot('K1')).toMatch(/Hand weed, along the north bund/);
    // 30 kg/ha on 5 m x 20 m: 30 x 100 / 10 000 = 0.3 kg.
    expect(await plot('K2')).toContain('300 g N on this plot (30 kg/ha N)');
    expect(await plot('K4')).toContain('Zero nitrogen: meant to be yellow.');
  });

  test('brings the cautions of work that can hurt once, before the work', async () => {
    const caution = page.locator('.sheet-caution');
    expect(await caution.count()).toBe(1);
    expect(await seen(caution)).toMatch(/label.*law.*licensed/s);
    const above = await page.evaluate(
      () =>
        document.querySelector('.sheet-caution')!.compareDocumentPosition(document.querySelector('.sheet')!) &
        Node.DOCUMENT_POSITION_FOLLOWING,
    );
    expect(above).toBeGreaterThan(0);
  });

  test('a dozen jobs in a dozen plots with photos fit on one A4 page', async () => {
    expect(await pagesPrinted(page)).toBe(1);
  });

  test('asks for another day in words where none was written', async () => {
    const answer = await page.goto(`${server.url}/crew-sheet?day=friday`);
    expect(answer!.status()).toBe(400);
    expect(await seen(page.locator('.wrong'))).toMatch(/Write the day as/);
  });
});

async function pagesPrinted(page: Page): Promise<number> {
  await page.evaluate(() =>
    Promise.all([...document.images].map((image) => image.decode().catch(() => null))),
  );
  const pdf = await page.pdf({ preferCSSPageSize: true });
  return pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)!.length;
}

describe.each([true, false])('A sheet handed on, with script: %s', (script) => {
  let phone: Page;
  let path: string;
  beforeAll(async () => {
    path = await handOn(await openPage('desk', script));
    phone = await openPage('phone', script);
  });

  test('is read on a phone without an account, and leads nowhere else', async () => {
    await phone.goto(server.url + path);
    expect(await seen(phone.locator('h1'))).toMatch(/^Work for /);
    expect(await phone.locator('.sheet > li').count()).toBe(12);
    expect(await phone.locator('a').count()).toBe(0);
    expect(await phone.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
    expect(await seen(phone.locator('.lead'))).toMatch(/can be read until \w{3} \d/);
  });

  test('Done without a name is refused beside the field, and nothing is reported', async () => {
    await phone.goto(server.url + path);
    await phone.fill('#name', '');
    const reported = await phone.locator('.reported').count();
    await phone.locator('.sheet-job button').first().click();
    expect(await seen(phone.locator('#wrong-name'))).toMatch(/Write your name/);
    expect(await phone.locator('.reported').count()).toBe(reported);
  });

  test('Enter in the name is no Done', async () => {
    await phone.goto(server.url + path);
    const reported = await phone.locator('.reported').count();
    await phone.fill('#name', 'Teun');
    await phone.press('#name', 'Enter');
    await phone.locator('.told:has-text("now press Done")').waitFor();
    expect(await phone.inputValue('#name')).toBe('Teun');
    expect(await phone.locator('.reported').count()).toBe(reported);
  });

  test('Done under a name is a report that waits for a look; undo takes it back', async () => {
    await phone.goto(server.url + path);
    await phone.fill('#name', 'Teun');
    const job = phone.locator('.sheet-job', { hasText: 'Mend' }).first();
    await job.locator('button').click();
    expect(await seen(phone.locator('.told'))).toMatch(/said to be done by Teun.*look at it/s);
    expect(await seen(job)).toMatch(/Said to be done by Teun\. It still waits for somebody’s look\./);
    expect(await job.locator('button').count()).toBe(0);

    const desk = await openPage('desk', script);
    await desk.goto(`${server.url}/follow-ups?plot=K3`);
    expect(await seen(desk.locator('section', { hasText: 'To be looked at again' }))).toContain(
      'Bund mending in K3',
    );

    await phone.locator('.told button').click();
    await phone.locator('.told:has-text("taken back")').waitFor();
    expect(await job.locator('button').count()).toBe(1);
  });

  test('a link that is ended says so with 410, in words, without a way to the rest', async () => {
    const desk = await openPage('desk', script);
    const other = await handOn(desk);
    await desk.locator(`form[action$="${other.split('/').at(-1)}/end"] button`).click();
    await desk.locator('.told:has-text("ended")').waitFor();
    const answer = await phone.goto(server.url + other);
    expect(answer!.status()).toBe(410);
    expect(await seen(phone.locator('main'))).toMatch(/expired.*Ask for a new one/s);
    expect(await phone.locator('a').count()).toBe(0);
  });
});

describe('Through a link', () => {
  const post = (path: string, fields: Record<string, string>) =>
    fetch(server.url + path, {
      method: 'POST',
      body: new URLSearchParams(fields),
      headers: { accept: 'application/json' },
    });

  test('a second press ticks once; other steps cannot be taken back', async () => {
    const page = await openPage('desk');
    const path = await handOn(page);
    await page.goto(server.url + path);
    const item = (await page.locator('.sheet-job button').first().getAttribute('value'))!;
    const tick = { id: 'form-000001', item, name: 'Odalys' };
    expect((await post(path, tick)).status).toBe(200);
    expect((await post(path, tick)).status).toBe(200);
    await page.goto(`${server.url}/follow-ups/${encodeURIComponent(item)}`);
    expect(await page.locator('.life > li:has-text("Odalys")').count()).toBe(1);

    const decided = await page.locator('.life input[name="undoes"]').first().getAttribute('value');
    const undo = { id: 'undo-000001', item, undoes: decided!, name: 'Odalys' };
    expect((await post(`${path}/undo`, undo)).status).toBe(409);
  });

  test('work that is not on the sheet is refused', async () => {
    const path = await handOn(await openPage('desk'));
    expect((await post(path, { id: 'form-000002', item: 'other', name: 'Teun' })).status).toBe(409);
  });

  test('a guessed link is 404 in words', async () => {
    const answer = await fetch(`${server.url}/handed-on/${'x'.repeat(24)}`, {
      headers: { accept: 'text/html' },
    });
    expect(answer.status).toBe(404);
    expect(await answer.text()).toMatch(/not known here\. Ask for a new one/);
    expect(
      (await post(`/handed-on/${'x'.repeat(24)}`, { id: 'form-000003', item: 'a', name: 'T' })).status,
    ).toBe(404);
  });
});
