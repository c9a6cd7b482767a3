import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
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
  await allOpened();
  return kept;
}

async function allOpened(): Promise<void> {
  for (;;) {
    const progress = (await (await fetch(`${server.url}/photos/progress`)).json()) as { waiting: number };
    if (progress.waiting === 0) return;
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
  await allOpened();
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
    const code = await first.locator('.likely').first().getAttribute('value');
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
    expect(await bare.locator('svg.measured image[mask]').count()).toBe(1);
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

describe('A phone’s clock', () => {
  test('is put right with a preview, without script, and undo sets it back', async () => {
    await bare.goto(`${server.url}/photos/clock`);
    await bare.selectOption('#day', '2031-07-21');
    await bare.fill('#minutes', '90');
    await bare.getByText('Show what would change').click();
    const lines = bare.locator('.clock-photos > li');
    expect(await seen(lines.first())).toMatch(/\d\d:\d\d becomes \d\d:\d\d\./);
    const id = await lines.first().locator('input').getAttribute('value');
    const whole = await fetch(`${server.url}/photos/${id}`, { headers: { accept: 'text/html' } });
    expect(await whole.text()).not.toContain('somebody said');
    await bare.getByText('Put these times right').click();
    expect(await seen(bare.locator('.told'))).toMatch(/The times of \d+ photos are put right/);
    await bare.goto(`${server.url}/photos/${id}`);
    expect(await seen(bare.locator('main'))).toContain(
      'somebody said that the phone’s clock was 90 minutes fast',
    );
    await bare.goto(`${server.url}/photos/clock?day=2031-07-21&minutes=0&way=fast`);
    await bare.getByText('Put these times right').click();
    await bare.locator('.told button').click();
    expect(await seen(bare.locator('.told'))).toContain('Taken back');
    await bare.goto(`${server.url}/photos/${id}`);
    expect(await seen(bare.locator('main'))).toContain('90 minutes fast');
  });

  test('minutes that are none are refused beside the field', async () => {
    await bare.goto(`${server.url}/photos/clock?day=2031-07-21&minutes=soon&way=fast`);
    expect(await seen(bare.locator('#wrong-minutes'))).toContain('whole number');
  });
});

describe('Outlines', () => {
  const square = (name: string, east: number) => ({
    type: 'Feature',
    properties: { name },
    geometry: {
      type: 'Polygon',
      coordinates: [
        [
          [120.73 + east, 15.52],
          [120.7301 + east, 15.52],
          [120.7301 + east, 15.5201],
          [120.73 + east, 15.5201],
          [120.73 + east, 15.52],
        ],
      ],
    },
  });

  test('from GeoJSON: the areas are shown first, kept on a word, and undone', async () => {
    const features = [square('w1', 0), square('Z9', 0.001)];
    await bare.goto(`${server.url}/season/boundaries`);
    await bare.setInputFiles('#file', {
      name: 'plots.geojson',
      mimeType: 'application/geo+json',
      buffer: Buffer.from(JSON.stringify({ type: 'FeatureCollection', features })),
    });
    await bare.locator('form[action$="/file"] button').click();
    const words = await seen(bare.locator('main'));
    // 0.0001 degrees at 15.52 north: 10.73 m east, 11.06 m north.
    expect(words).toMatch(/W1: [\d.]+ m² becomes 119 m²/);
    expect(words).toContain('No plot is called Z9');
    const before = await (await fetch(`${server.url}/take-out/plots.geojson`)).text();
    expect(before).not.toContain('120.7301');
    await bare.getByText('Keep 1 outline').click();
    expect(await (await fetch(`${server.url}/take-out/plots.geojson`)).text()).toContain('120.7301');
    await bare.locator('.told button').click();
    expect(await (await fetch(`${server.url}/take-out/plots.geojson`)).text()).toBe(before);
  });

  test('from a corner: as many codes as plots are wanted, in words; then the areas stand there', async () => {
    await page.goto(`${server.url}/season/boundaries`);
    const values = { latitude: '15.52', longitude: '120.73', bearingDeg: '12', rows: '2', columns: '2' };
    const sizes = { widthM: '4', lengthM: '10', betweenColumnsM: '0.5', betweenRowsM: '1' };
    for (const [name, value] of Object.entries({ ...values, ...sizes })) await page.fill(`#${name}`, value);
    await page.fill('#codes', 'E1 E2 E3');
    await page.locator('form[action$="/grid"] button').click();
    expect(await seen(page.locator('#wrong-codes'))).toContain('are 4 plots, but 3 codes');
    await page.fill('#codes', 'E1 E2 E3 E4');
    await page.locator('form[action$="/grid"] button').click();
    expect(await seen(page.locator('main'))).toMatch(/E4: [\d.]+ m² becomes 40\.0 m²/);
    expect(await page.locator('svg.plan').count()).toBe(1);
  });
});

describe('The field plan', () => {
  test('shows photos and notes at their places by a link, and says the same in a list', async () => {
    await bare.goto(`${server.url}/plots`);
    expect(await bare.locator('.photo-dot').count()).toBe(0);
    await bare.getByText('Show photos and notes at their places').click();
    const dots = bare.locator('.plan .photo-dot');
    expect(await dots.count()).toBeGreaterThan(0);
    const title = await bare.locator('.plan a:has(.photo-dot) title').first().textContent();
    expect(title).toMatch(/^Photo at \d\d:\d\d, (in [EW]\d+|no plot)/);
    expect(await seen(bare.locator('.plan-figure .plain-list'))).toContain(title!);
    await bare.getByText('Without photos and notes').click();
    expect(await bare.locator('.photo-dot').count()).toBe(0);
  });
});

describe('The photo pages', () => {
  const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
  test.each([360, 1280])(
    'have nothing that axe-core finds at %i pixels, and never scroll sideways',
    async (width) => {
      await page.setViewportSize({ width, height: 800 });
      await page.goto(`${server.url}/plots/E1/photos`);
      const down = page.locator('.days figure', { hasText: 'green cover' }).first().locator('a').first();
      const photo = await down.getAttribute('href');
      const faults: string[] = [];
      for (const path of [
        '/photos/tray',
        photo!,
        `${photo}?mask=yes`,
        '/plots/E1',
        '/plots/E1/photos',
        '/photos/send',
        '/photos/clock?day=2031-07-21&minutes=40&way=fast',
        '/season/boundaries',
        '/plots?with=places',
      ]) {
        await page.goto(server.url + path);
        await page.evaluate(() => {
          for (const details of document.querySelectorAll('details')) details.open = true;
        });
        await page.evaluate(axe);
        const found = await page.evaluate(async () => {
          const { axe: run } = globalThis as unknown as {
            axe: { run(): Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> };
          };
          return (await run.run()).violations.map(
            ({ id, nodes }) => `${id}: ${nodes[0]?.html.slice(0, 140)}`,
          );
        });
        const needed = await page.evaluate(() => document.documentElement.scrollWidth);
        faults.push(...found.map((fault) => `${path}: ${fault}`));
        if (needed > width) faults.push(`${path} needs ${needed} of ${width}`);
      }
      expect(faults).toEqual([]);
    },
  );
});
