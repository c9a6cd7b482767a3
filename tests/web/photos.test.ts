import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Browser, openChromium } from './chromium.ts';
import { greenPng } from './green-png.ts';
import { seen } from './seen.ts';
import { type Server, startServer } from './start-server.ts';

let server: Server;
let browser: Browser;
let page: Page;
let plain: Browser;
let bare: Page;

/** A photo of the sample with a byte more is another photo: it carries the same time and place, and comes without a plot. */
const photoAgain = (file: string): Buffer =>
  Buffer.concat([
    readFileSync(fileURLToPath(new URL(`../../sample-notes/photos/${file}`, import.meta.url))),
    Buffer.from([0]),
  ]);

async function sendLoose(
  ...photos: [name: string, bytes: Buffer][]
): Promise<{ id: string; known?: boolean }[]> {
  const body = new FormData();
  for (const [name, bytes] of photos) body.append('photos', new File([new Uint8Array(bytes)], name));
  const answer = await fetch(`${server.url}/photos`, {
    method: 'POST',
    body,
    headers: { accept: 'application/json' },
  });
  const { photos: kept } = (await answer.json()) as { photos: { id: string; known?: boolean }[] };
  for (;;) {
    const progress = await (await fetch(`${server.url}/photos/progress`)).json();
    if ((progress as { waiting: number }).waiting === 0) return kept;
    await new Promise((resolve) => setTimeout(resolve, 200));
  }
}

const inTray = async (): Promise<number> => {
  await page.goto(`${server.url}/photos/tray`);
  const words = await seen(page.locator('.lead'));
  return words.startsWith('One') ? 1 : Number(/^\d+/.exec(words)![0]);
};

beforeAll(async () => {
  server = await startServer();
  browser = await openChromium();
  page = await browser.context.newPage();
  plain = await openChromium({ script: false });
  bare = await plain.context.newPage();
});
afterAll(async () => {
  await browser?.close();
  await plain?.close();
  await server?.stop();
});

describe('The tray', () => {
  test('says the likely plots, places with one tap, and undo brings the photo back', async () => {
    const before = await inTray();
    const first = page.locator('.tray > li').first();
    expect(await seen(first.locator('h2'))).toMatch(/^[EW]\d+ \(about \d+ %\)/);
    const code = (await seen(first.locator('.likely').first())).replace('Place the photo in ', '').trim();
    await first.locator('.likely').first().click();
    await page.locator('.told').waitFor();
    expect(await seen(page.locator('.told'))).toContain(`The photo is in ${code} now.`);
    expect(await inTray()).toBe(before - 1);
    await page.goto(`${server.url}/photos/tray`);
    await page.locator('.likely').first().click();
    await page.locator('.told button').click();
    await page.locator('.told:has-text("Taken back")').waitFor();
    expect(await inTray()).toBe(before - 1);
  });

  test('is linked from Plots and Notes with its count', async () => {
    const count = await inTray();
    for (const from of ['/plots', '/notes']) {
      await page.goto(server.url + from);
      expect(await seen(page.locator('a[href="/photos/tray"]'))).toBe(`${count} photos without a plot`);
    }
  });

  test('works without script: another plot by choice, and a photo that shows no plot goes', async () => {
    const before = await inTray();
    await bare.goto(`${server.url}/photos/tray`);
    const first = bare.locator('.tray > li').first();
    const photo = await first.locator('figure a').first().getAttribute('href');
    await first.locator('details').evaluate((details) => details.setAttribute('open', ''));
    await first.locator('select').selectOption('E7');
    await first.getByText('Place it there').click();
    expect(await seen(bare.locator('.told'))).toContain('in E7 now');
    await bare.goto(server.url + photo);
    expect(await seen(bare.locator('main'))).toContain('In E7. A person said so.');
    await bare.goto(`${server.url}/photos/tray`);
    const next = bare.locator('.tray > li').first();
    await next.locator('details').evaluate((details) => details.setAttribute('open', ''));
    await next.getByText('It shows no plot').click();
    expect(await seen(bare.locator('.told'))).toContain('shows no plot');
    expect(await inTray()).toBe(before - 2);
  });

  test('a choice that was not made is refused in words', async () => {
    await page.goto(`${server.url}/photos/tray`);
    const first = page.locator('.tray > li').first();
    if (!(await first.locator('select').isVisible())) await first.locator('summary').click();
    await first.getByText('Place it there').click();
    expect(await seen(page.locator('.told.bad'))).toContain('No plot was chosen');
  });
});

describe('A photo’s page', () => {
  test('says when, where and how its plot was settled', async () => {
    await page.goto(`${server.url}/plots/E1/photos`);
    await page.goto(server.url + (await page.locator('.days figure a').first().getAttribute('href'))!);
    const words = await seen(page.locator('main'));
    expect(words).toMatch(/2031, \d\d:\d\d by the clock on the wall\. Offset \+08:00, written by the phone/);
    expect(words).toMatch(/15\.51\d+° north, 120\.72\d+° east, good to about \d+ m/);
    expect(words).toContain('In E1.');
  });

  test('a file without time and place says so', async () => {
    const [{ id }] = (await sendLoose(['plain.png', await greenPng(61)])) as [{ id: string }];
    await page.goto(`${server.url}/photos/${id}`);
    const words = await seen(page.locator('main'));
    expect(words).toContain('The file says no time.');
    expect(words).toContain('The file gives no position.');
    expect(words).toContain('No plot yet');
  });

  test('taken straight down: the cover is measured, laid over the photo, and taken away again', async () => {
    const [{ id }] = (await sendLoose(['above.jpg', photoAgain('e4-down-0721.jpg')])) as [{ id: string }];
    await bare.goto(`${server.url}/photos/${id}`);
    await bare.getByText('It was taken straight down: measure').click();
    expect(await seen(bare.locator('.told'))).toMatch(/Green cover measured: \d+ %/);
    expect(await seen(bare.locator('main'))).toMatch(/\d+ % of the picture is plant, by excess green/);
    const mask = await fetch(`${server.url}/media/${id}/mask`);
    expect([mask.status, mask.headers.get('content-type')]).toEqual([200, 'image/png']);
    await bare.getByText('Lay the measured green over it').click();
    expect(await bare.locator('svg.measured image').count()).toBe(2);
    await bare.getByText('It was not taken straight down').click();
    expect(await seen(bare.locator('main'))).not.toContain('of the picture is plant');
    await bare.locator('.told button').click();
    expect(await seen(bare.locator('main'))).toContain('of the picture is plant');
  });

  test('the original comes down byte for byte', async () => {
    const bytes = await greenPng(62);
    const [{ id }] = (await sendLoose(['origin.png', bytes])) as [{ id: string }];
    await page.goto(`${server.url}/photos/${id}`);
    const [file] = await Promise.all([
      page.waitForEvent('download'),
      page.getByText('Download the original').click(),
    ]);
    expect(file.suggestedFilename()).toBe('origin.png');
    expect(readFileSync((await file.path())!).equals(bytes)).toBe(true);
  });

  test('an address that is no photo’s is answered in words', async () => {
    for (const path of ['/photos/none', `/photos/${'0'.repeat(64)}`, '/media/none/mask']) {
      const answer = await fetch(server.url + path, { headers: { accept: 'text/html' } });
      expect(answer.status).toBe(404);
    }
  });
});

describe('A plot’s photos', () => {
  test('any two days stand side by side, without script, the earlier first', async () => {
    await bare.goto(`${server.url}/plots/E1/photos`);
    const days = await bare
      .locator('[name="first"] option')
      .evaluateAll((options) => options.map((option) => (option as HTMLOptionElement).value));
    await bare.selectOption('[name="first"]', days[1]!);
    await bare.selectOption('[name="second"]', days[2]!);
    await bare.getByText('Show these two').click();
    expect(new URL(bare.url()).searchParams.get('second')).toBe(days[2]);
    expect(await bare.inputValue('[name="first"]')).toBe(days[2]);
    expect(await bare.locator('.pair img').count()).toBe(2);
  });

  test('green cover over time stands on the plot’s page as a line and in words', async () => {
    await page.goto(`${server.url}/plots/E1`);
    const line = page.locator('svg.cover-line');
    expect(await line.locator('circle.sure, circle.unsure').count()).toBeGreaterThan(2);
    expect(await line.getAttribute('aria-label')).toMatch(/^Green cover of E1: \d+ % on \w+ \d+ Jul/);
  });
});

describe('Photos over the page', () => {
  test('open by Enter, go on by arrow keys, close by Escape, and the focus comes back', async () => {
    await page.goto(`${server.url}/plots/E1/photos`);
    const links = page.locator('.days a[data-large]');
    await links.nth(1).focus();
    await page.keyboard.press('Enter');
    const dialog = page.locator('dialog.lightbox');
    await dialog.waitFor();
    const source = () => dialog.locator('img').getAttribute('src');
    expect(await dialog.locator('img').getAttribute('alt')).toBe(
      await links.nth(1).locator('img').getAttribute('alt'),
    );
    const first = await source();
    await page.keyboard.press('ArrowRight');
    expect(await source()).not.toBe(first);
    await page.keyboard.press('ArrowLeft');
    expect(await source()).toBe(first);
    expect(await dialog.evaluate((box) => box.contains(document.activeElement))).toBe(true);
    await page.keyboard.press('Escape');
    await dialog.waitFor({ state: 'detached' });
    expect(await links.nth(1).evaluate((link) => link === document.activeElement)).toBe(true);
  });

  test('a swipe to the left goes on', async () => {
    await page.goto(`${server.url}/plots/E1/photos`);
    await page.locator('.days a[data-large]').first().click();
    const picture = page.locator('dialog.lightbox img');
    const before = await picture.getAttribute('src');
    await picture.evaluate((target) => {
      const touch = (x: number) => new Touch({ identifier: 1, target, clientX: x, clientY: 200 });
      target.dispatchEvent(
        new TouchEvent('touchstart', { touches: [touch(300)], changedTouches: [touch(300)] }),
      );
      target.dispatchEvent(new TouchEvent('touchend', { touches: [], changedTouches: [touch(100)] }));
    });
    expect(await picture.getAttribute('src')).not.toBe(before);
    await page.getByRole('button', { name: 'Close' }).click();
  });

  test('without script the same link leads to the photo’s page', async () => {
    await bare.goto(`${server.url}/plots/E1/photos`);
    await bare.locator('.days a[data-large]').first().click();
    expect(new URL(bare.url()).pathname).toMatch(/^\/photos\/[0-9a-f]{64}$/);
  });
});

describe('Many photos', () => {
  test('are sent one by one with words on how far it is; sent again they stay the same photos', async () => {
    const lot = await Promise.all(
      [71, 72, 73].map(async (shade) => ({
        name: `${shade}.png`,
        mimeType: 'image/png',
        buffer: await greenPng(shade),
      })),
    );
    for (const words of [
      'Done. 4 of 4 photos: 3 kept, 1 not kept.',
      'Done. 4 of 4 photos: 0 kept, 3 here already, 1 not kept.',
    ]) {
      await page.goto(`${server.url}/photos/send`);
      await page.setInputFiles('#photos', [
        ...lot,
        { name: 'broken.jpg', mimeType: 'image/jpeg', buffer: Buffer.from('no picture') },
      ]);
      await page.getByText('Send the photos').click();
      await page.locator('#sent-words', { hasText: 'Done.' }).waitFor();
      expect(await seen(page.locator('#sent-words'))).toBe(words);
      expect(await seen(page.locator('#not-kept'))).toContain('broken.jpg');
      await page.locator('#opened-words', { hasText: 'have been opened' }).waitFor();
    }
  });

  test('come in without script too', async () => {
    await bare.goto(`${server.url}/photos/send`);
    await bare.setInputFiles('#photos', [
      { name: 'a.png', mimeType: 'image/png', buffer: await greenPng(74) },
      { name: 'b.png', mimeType: 'image/png', buffer: await greenPng(71) },
    ]);
    await bare.getByText('Send the photos').click();
    expect(await seen(bare.locator('.told'))).toContain('1 photo kept. 1 photo was here already');
  });

  test('pages answer while photos are being opened', async () => {
    const body = new FormData();
    for (const file of ['e1-down-0710.jpg', 'e1-down-0731.jpg', 'e4-down-0807.jpg', 'w1-down-0804.jpg'])
      body.append('photos', new File([new Uint8Array(photoAgain(file))], file));
    await fetch(`${server.url}/photos`, { method: 'POST', body });
    expect((await fetch(`${server.url}/plots`)).status).toBe(200);
    await bare.goto(`${server.url}/photos/send`);
    expect(await seen(bare.locator('#opened-words'))).toMatch(/opened/);
  });
});
