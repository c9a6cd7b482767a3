import { readdirSync } from 'node:fs';
import { connect } from 'node:net';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { type Browser, openChromium } from './chromium.ts';
import { greenPng } from './green-png.ts';
import { seen } from './seen.ts';
import { type Server, startServer } from './start-server.ts';

let server: Server;
let browser: Browser;
let page: Page;

beforeAll(async () => {
  server = await startServer({ sample: false });
  browser = await openChromium();
  page = await browser.context.newPage();
  await page.goto(`${server.url}/season/plot`);
  await page.fill('[name="code"]', 'B2');
  await page.fill('[name="names"]', 'the pump plot');
  await page.click('text=Keep the plot');
});
afterAll(async () => {
  await browser?.close();
  await server?.stop();
});
beforeEach(async () => {
  await page.goto(`${server.url}/capture`);
  await page.evaluate(() => localStorage.clear());
  await page.goto(`${server.url}/capture`);
});

async function until(ready: () => boolean): Promise<void> {
  while (!ready()) await new Promise((resolve) => setTimeout(resolve, 20));
}

const noteCount = async (): Promise<number> => {
  const whole = (await (await fetch(`${server.url}/take-out/diary.json`)).json()) as {
    tables: { notes: unknown[] };
  };
  return whole.tables.notes.length;
};

function send(fields: Record<string, string>, accept = 'text/html'): Promise<Response> {
  const body = new FormData();
  for (const [name, value] of Object.entries(fields)) body.set(name, value);
  return fetch(`${server.url}/notes`, { method: 'POST', body, redirect: 'manual', headers: { accept } });
}

describe('Capture with script', () => {
  test('a note is kept and its page shows its words with what they say', async () => {
    await page.fill('#text', 'Plot B2. Gap along the north bund, refill it.');
    await page.click('text=Keep the note');
    await page.waitForURL(/\/notes\/[0-9a-f]{32}$/);
    expect(await seen(page.locator('.told'))).toContain('Kept.');
    expect(await seen(page.locator('.words'))).toBe('Plot B2. Gap along the north bund, refill it.');
    expect(await seen(page.locator('.judged'))).toContain('north bund');
    expect(await page.locator('.words mark').count()).toBeGreaterThan(0);
  });

  test('facts stand under the words while they are written, and one can be denied before sending', async () => {
    await page.fill('#text', 'Plot B2. Gap along the north bund. Water 5 cm.');
    await page.locator('#live').getByText('Water 5 cm deep').waitFor();
    await page.getByRole('button', { name: /it’s not: B2: Water 5 cm deep/ }).click();
    await page.click('text=Keep the note');
    await page.waitForURL(/\/notes\//);
    expect(await seen(page.locator('.judged'))).not.toContain('Water 5 cm');
    expect(await seen(page.locator('.struck'))).toContain('Water 5 cm deep');
  });

  test('a draft survives a reload with its words and its plot, and goes once the note is kept', async () => {
    await page.fill('#text', 'Half a note about the pump');
    await page.selectOption('#plot', 'B2');
    await page.reload();
    expect(await page.inputValue('#text')).toBe('Half a note about the pump');
    expect(await page.inputValue('#plot')).toBe('B2');
    expect(await seen(page.locator('#draft'))).toContain('as you left it');
    await page.click('text=Keep the note');
    await page.waitForURL(/\/notes\//);
    await page.goto(`${server.url}/capture`);
    expect(await page.inputValue('#text')).toBe('');
  });

  test('several photos at once are kept with the note, under the names that they came with', async () => {
    const before = await noteCount();
    await page.fill('#text', 'Plot B2 from the path.');
    await page.setInputFiles('#photos', [
      { name: 'pflöcke am weg.png', mimeType: 'image/png', buffer: await greenPng(40) },
      { name: 'second.png', mimeType: 'image/png', buffer: await greenPng(41) },
    ]);
    expect(await seen(page.locator('#chosen'))).toContain('2 photos');
    await page.setInputFiles('#camera', {
      name: 'camera.png',
      mimeType: 'image/png',
      buffer: await greenPng(42),
    });
    await page.click('text=Keep the note');
    await page.waitForURL(/\/notes\//);
    expect(await seen(page.locator('.told'))).toContain('With 3 photos');
    expect(await page.locator('.photos figure').count()).toBe(3);
    const address = await page.locator('.photos img').first().getAttribute('src');
    const picture = await fetch(server.url + address);
    expect(picture.status).toBe(200);
    expect(picture.headers.get('content-type')).toMatch(/^image\//);
    expect(await noteCount()).toBe(before + 1);
    expect(await (await fetch(`${server.url}/take-out/photos.csv`)).text()).toContain('pflöcke am weg.png');
  });

  test('a file that is no photo is named; the note and the good photo stand', async () => {
    await page.fill('#text', 'With a wrong file.');
    await page.setInputFiles('#photos', [
      { name: 'list.txt', mimeType: 'image/png', buffer: Buffer.from('not a picture') },
      { name: 'good.png', mimeType: 'image/png', buffer: await greenPng(43) },
    ]);
    await page.click('text=Keep the note');
    await page.waitForURL(/\/notes\//);
    const told = await seen(page.locator('.told'));
    expect(told).toContain('list.txt');
    expect(told).toContain('With 1 photo');
    expect(await page.locator('.photos figure').count()).toBe(1);
  });

  test('an empty note is refused beside the field', async () => {
    await page.click('text=Keep the note');
    expect(await seen(page.locator('#wrong-text'))).toContain('empty');
    expect(await page.locator('#text').getAttribute('aria-invalid')).toBe('true');
  });
});

describe('Capture without script', () => {
  test('a note with a photo is kept from the plain form', async () => {
    const plain = await openChromium({ script: false });
    const bare = await plain.context.newPage();
    await bare.goto(`${server.url}/capture`);
    await bare.fill('#text', 'Written without script in B2.');
    await bare.setInputFiles('#photos', {
      name: 'plain.png',
      mimeType: 'image/png',
      buffer: await greenPng(44),
    });
    await bare.click('text=Keep the note');
    await bare.waitForURL(/\/notes\//);
    expect(await seen(bare.locator('.words'))).toBe('Written without script in B2.');
    expect(await bare.locator('.photos figure').count()).toBe(1);
    await plain.close();
  });

  test('sending the same form twice keeps one note', async () => {
    const before = await noteCount();
    const form = await (await fetch(`${server.url}/capture`)).text();
    const id = /name="id" value="([^"]+)"/.exec(form)![1]!;
    for (const _time of [1, 2]) {
      const answer = await send({ id, text: 'Rats in the far corner.\r\nTwo live holes.' });
      expect(answer.status).toBe(303);
      expect(answer.headers.get('location')).toBe(`/notes/${id}`);
    }
    expect(await noteCount()).toBe(before + 1);
  });

  test('a refused note comes back in the form with its words', async () => {
    const answer = await send({ id: 'abcdef0123', text: 'Words <that> & must stay', plot: 'Z99' });
    const html = await answer.text();
    expect(answer.status).toBe(400);
    expect(html).toContain('No plot is called Z99');
    expect(html).toContain('Words &lt;that&gt; &amp; must stay</textarea>');
  });

  test('other words under an id that is kept are refused, and go on under a fresh id', async () => {
    await send({ id: 'same-id-0001', text: 'First words.' });
    const answer = await send({ id: 'same-id-0001', text: 'Quite other words.' });
    const html = await answer.text();
    expect(answer.status).toBe(409);
    expect(html).toContain('Quite other words.</textarea>');
    expect(/name="id" value="([^"]+)"/.exec(html)![1]).not.toBe('same-id-0001');
    expect(html).toContain('data-fresh');
  });

  test('a script that asks for JSON gets the same words as JSON', async () => {
    const answer = await send({ id: 'json-note-0001', text: '' }, 'application/json');
    expect(answer.status).toBe(400);
    expect(await answer.json()).toMatchObject({ field: 'text', refused: expect.stringContaining('empty') });
  });
});

describe('Uploads that go wrong', () => {
  const incoming = (): string[] => readdirSync(join(server.dataFolder, 'media', 'incoming'));

  test('more photos than a note takes are refused in words; nothing is left behind', async () => {
    const body = new FormData();
    body.set('id', 'too-many-photos');
    body.set('text', 'Too many photos');
    for (let at = 0; at < 40; at++) body.append('photos', new File([new Uint8Array([1, 2, 3])], `${at}.jpg`));
    const answer = await fetch(`${server.url}/notes`, {
      method: 'POST',
      body,
      headers: { accept: 'text/html' },
    });
    expect(answer.status).toBe(413);
    const html = await answer.text();
    expect(html).toContain('More than 30 photos');
    expect(html).toContain('Too many photos</textarea>');
    expect(incoming()).toEqual([]);
  });

  test('a connection that breaks off leaves nothing behind, and the server goes on', async () => {
    const { hostname, port } = new URL(server.url);
    const socket = connect({ host: hostname, port: Number(port) });
    socket.write(
      'POST /notes HTTP/1.1\r\nHost: x\r\nContent-Type: multipart/form-data; boundary=x\r\nContent-Length: 900000\r\n\r\n' +
        `--x\r\nContent-Disposition: form-data; name="photos"; filename="a.jpg"\r\n\r\n${'j'.repeat(200_000)}`,
    );
    await until(() => incoming().length === 1);
    socket.destroy();
    await until(() => incoming().length === 0);
    expect((await fetch(`${server.url}/capture`)).status).toBe(200);
  });

  test('a body without an end is refused in words; nothing is left behind', async () => {
    const answer = await fetch(`${server.url}/notes`, {
      method: 'POST',
      headers: { 'content-type': 'multipart/form-data; boundary=x', accept: 'text/html' },
      body: '--x\r\nContent-Disposition: form-data; name="photos"; filename="a.jpg"\r\n\r\nhalf a photo',
    });
    expect(answer.status).toBe(400);
    expect(await answer.text()).toContain('broke off');
    expect(incoming()).toEqual([]);
  });
});
