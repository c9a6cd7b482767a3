import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Browser, openChromium } from './chromium.ts';
import { seen } from './seen.ts';
import { type Server, startServer } from './start-server.ts';

let server: Server;
let browser: Browser;
let page: Page;

beforeAll(async () => {
  server = await startServer({ sample: false });
  browser = await openChromium({ width: 1280, height: 900 });
  page = await browser.context.newPage();
});
afterAll(async () => {
  await browser?.close();
  await server?.stop();
});

const SEASON = `farm: { name: Testhoek, timeZone: Africa/Maputo }
season: { name: Dry season 2032, from: 2032-05-01, to: 2032-10-31 }
crews: [{ name: Bund crew, leader: Tomas, people: 4 }]
fields: [{ code: N, name: North field }]
plots:
  - code: N1
    names: [the first plot]
    field: N
    treatment: { nitrogen: 60N }
    walk: 1
    crop: { variety: Olave, sown: 2032-05-03, planted: 2032-05-25 }
  - code: N2
    field: N
    walk: 2
`;

const sendFile = async (name: string, text: string): Promise<void> => {
  await page.goto(`${server.url}/season`);
  await page.setInputFiles('#season-file', { name, mimeType: 'text/yaml', buffer: Buffer.from(text) });
  await page.click('text=Take in the file');
};

describe('Before anything is set up', () => {
  test.each(['/plots', '/walk', '/follow-ups', '/notes'])('%s says what to do first', async (path) => {
    await page.goto(server.url + path);
    expect(await page.locator('main .button.main').count()).toBe(1);
  });
});

describe('The season file', () => {
  test('faults are named by their line, and nothing is taken in', async () => {
    await sendFile(
      'season.yaml',
      SEASON.replace('planted: 2032-05-25', 'planted: 2032-13-45').replace('walk: 2', 'walk: second'),
    );
    const faults = await page.locator('.file-faults li').allInnerTexts();
    expect(faults.map((words) => /Line (\d+)/.exec(words)?.[1])).toEqual(['11', '14']);
    expect(await seen(page.locator('#file-faults'))).toContain('was not taken in');
    expect(await page.locator('.plot-list li').count()).toBe(0);
  });

  test.each([
    ['empty.yaml', '', 'empty'],
    ['photo.yaml', '\u0000\u0001binary', 'not a text file'],
    ['broken.yaml', 'farm: [unclosed', 'was not taken in'],
  ])('%s is refused in words', async (name, text, words) => {
    await sendFile(name, text);
    expect(await seen(page.locator('main'))).toContain(words);
  });

  test('a good file is taken in whole and can be taken out again', async () => {
    await sendFile('season.yaml', SEASON);
    expect(await seen(page.locator('.told'))).toContain('2 plots, 1 crop, 1 field, 1 crew');
    const out = await (await fetch(`${server.url}/take-out/season.yaml`)).text();
    for (const words of ['Testhoek', 'the first plot', 'Olave', 'Bund crew', 'North field'])
      expect(out).toContain(words);
    await sendFile('again.yaml', out);
    expect(await seen(page.locator('.told'))).toContain('2 plots');
  });
});

describe('The forms of the season', () => {
  test.each([
    ['farm', 'timeZone', 'Atlantis/Nowhere', 'unknown time zone'],
    ['farm', 'latitude', 'north', 'no number'],
    ['season', 'to', '2031-01-01', 'ends before it begins'],
    ['crews', 'people', '0', 'at least 1'],
    ['fields', 'code', '<script>', 'may hold letters'],
  ])(
    '%s: a wrong %s is refused beside its field, with what was written',
    async (entry, field, value, words) => {
      const good: Record<string, Record<string, string>> = {
        farm: { name: 'Testhoek', timeZone: 'Africa/Maputo' },
        season: { name: 'Dry season 2032', from: '2032-05-01', to: '2032-10-31' },
        crews: { name: 'Bund crew' },
        fields: { code: 'N', name: 'North' },
      };
      const answer = await fetch(`${server.url}/season/${entry}`, {
        method: 'POST',
        body: new URLSearchParams({ ...good[entry], [field]: value }),
        headers: { accept: 'text/html' },
      });
      expect(answer.status).toBe(400);
      await page.setContent(await answer.text());
      const at = page.locator(`#${entry}-${field}`);
      expect(await at.inputValue()).toBe(value);
      expect(await at.getAttribute('aria-invalid')).toBe('true');
      expect((await seen(page.locator(`#wrong-${entry}-${field}`))).toLowerCase()).toContain(words);
    },
  );

  test('a plot with its crop is entered in one form and stands in the walk', async () => {
    await page.goto(`${server.url}/season/plot`);
    await page.fill('[name="code"]', 'N3');
    await page.fill('[name="field"]', 'N');
    await page.fill('[name="names"]', 'the corner plot\nthe low one');
    await page.fill('[name="treatment"]', 'nitrogen: 90N\nwater: flooded');
    await page.fill('[name="size.widthM"]', '5');
    await page.fill('[name="size.lengthM"]', '20');
    await page.fill('[name="boundary"]', '-25.1, 32.1\n-25.1, 32.1002\n-25.1001, 32.1002\n-25.1001, 32.1');
    await page.fill('[name="crop.variety"]', 'Tarin 4');
    await page.fill('[name="crop.sown"]', '2032-05-03');
    await page.fill('[name="crop.planted"]', '2032-05-01');
    await page.fill('[name="protocol"]', 'meant to be weedy');
    await page.click('text=Keep the plot');
    expect(await seen(page.locator('.wrong'))).toContain('Planted before it was sown');
    expect(await page.inputValue('[name="names"]')).toBe('the corner plot\nthe low one');
    await page.fill('[name="crop.planted"]', '2032-05-26');
    await page.click('text=Keep the plot');
    await page.goto(`${server.url}/plots/N3`);
    const words = await seen(page.locator('main'));
    for (const part of ['the corner plot', 'Nitrogen 90N, water flooded', 'Tarin 4', 'Meant to be weedy'])
      expect(words).toContain(part);
    await page.goto(`${server.url}/season/plot?code=N3`);
    expect(await page.inputValue('[name="boundary"]')).toContain('-25.1, 32.1002');
    expect(await page.inputValue('[name="treatment"]')).toBe('nitrogen: 90N\nwater: flooded');
    await page.goto(`${server.url}/walk`);
    expect(await seen(page.locator('.walk'))).toContain('N3');
  });

  test.each([
    ['code', ''],
    ['code', 'way too long a code for a peg'],
    ['replicate', '-1'],
    ['crop.daysToMaturity', '9'],
    ['crop.sown', 'yesterday'],
    ['boundary', '1, 2'],
    ['boundary', 'here, there\n1,2\n3,4'],
    ['size.widthM', '-4'],
  ])('a plot with %s “%s” is refused beside that field', async (field, value) => {
    const answer = await fetch(`${server.url}/season/plots`, {
      method: 'POST',
      body: new URLSearchParams({
        code: 'N9',
        [field]: value,
        ...(field.startsWith('size') && { 'size.lengthM': '4' }),
      }),
      headers: { accept: 'text/html' },
    });
    expect(answer.status).toBe(400);
    expect(await answer.text()).toContain(`id="wrong-plot-${field.replaceAll('.', '-')}"`);
  });
});
