import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Browser, openChromium } from './chromium.ts';
import { seen } from './seen.ts';
import { PAGE_NAMES, type PageName, somePages } from './some-pages.ts';
import { type Server, startServer } from './start-server.ts';

const axeSource = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

let server: Server;
let browser: Browser;
let page: Page;
let pages: Record<PageName, string>;

beforeAll(async () => {
  server = await startServer();
  browser = await openChromium();
  page = await browser.context.newPage();
  pages = await somePages(page, server.url);
});
afterAll(async () => {
  await browser?.close();
  await server?.stop();
});

interface Found {
  id: string;
  help: string;
  nodes: { html: string }[];
}

async function accessibilityFaults(): Promise<string[]> {
  await page.evaluate(axeSource);
  const faults: Found[] = await page.evaluate(
    async () =>
      (await (globalThis as unknown as { axe: { run(): Promise<{ violations: Found[] }> } }).axe.run())
        .violations,
  );
  return faults.map(({ id, help, nodes }) => `${id}: ${help}: ${nodes[0]?.html.slice(0, 160)}`);
}

describe('Every page', () => {
  test.each(PAGE_NAMES.flatMap((name) => [360, 1280].map((width) => [name, width] as const)))(
    '%s at %i pixels has nothing that axe-core finds, with all details open',
    async (name, width) => {
      await page.setViewportSize({ width, height: 800 });
      await page.goto(server.url + pages[name]);
      await page.evaluate(() => {
        for (const details of document.querySelectorAll('details')) details.open = true;
      });
      expect(await accessibilityFaults()).toEqual([]);
    },
  );

  test('never scrolls sideways at 360 and at 320 pixels', async () => {
    const wide: string[] = [];
    for (const width of [360, 320]) {
      await page.setViewportSize({ width, height: 740 });
      for (const [name, path] of Object.entries(pages)) {
        await page.goto(server.url + path);
        const needed = await page.evaluate(() => document.documentElement.scrollWidth);
        if (needed > width) wide.push(`${name} needs ${needed} of ${width}`);
      }
    }
    expect(wide).toEqual([]);
  });

  test('offers only targets of 48 pixels in its bar and on its buttons, and no text below 18 pixels but in the bar and drawings', async () => {
    await page.setViewportSize({ width: 360, height: 740 });
    const faults: string[] = [];
    for (const [name, path] of Object.entries(pages)) {
      await page.goto(server.url + path);
      const found = await page.evaluate(() => {
        const small = [
          ...document.querySelectorAll<HTMLElement>(
            'button, .button, summary, input:not([type=hidden]):not([type=checkbox]):not([type=radio]), select, .places a',
          ),
        ]
          .filter((one) => one.offsetParent !== null && one.getBoundingClientRect().height < 47.5)
          .map((one) => `low: ${one.outerHTML.slice(0, 80)}`);
        const faint = [...document.querySelectorAll<HTMLElement>('main *:not(svg *)')]
          .filter((one) =>
            [...one.childNodes].some((child) => child.nodeType === 3 && child.textContent?.trim()),
          )
          .filter((one) => Number.parseFloat(getComputedStyle(one).fontSize) < 18)
          .map((one) => `small letters: ${one.outerHTML.slice(0, 80)}`);
        return [...small, ...faint];
      });
      faults.push(...found.map((fault) => `${name}: ${fault}`));
    }
    expect(faults).toEqual([]);
  });

  test('runs without a word in the browser’s log of errors', async () => {
    const errors: string[] = [];
    page.on('console', (line) => line.type() === 'error' && errors.push(line.text()));
    page.on('pageerror', (error) => errors.push(String(error)));
    // These two answer 404 in words, which a browser puts into its log by itself.
    const unknown = ['unknown', 'handed-on-ended'];
    for (const [name, path] of Object.entries(pages))
      if (!unknown.includes(name)) await page.goto(server.url + path);
    expect(errors).toEqual([]);
  });
});

describe('By keyboard alone', () => {
  test('the skip link comes first, is seen when focused, and leads into the page', async () => {
    await page.setViewportSize({ width: 1280, height: 800 });
    await page.goto(`${server.url}/follow-ups`);
    await page.keyboard.press('Tab');
    const skip = page.locator('.skip');
    expect(await skip.evaluate((link) => link === document.activeElement)).toBe(true);
    expect((await skip.boundingBox())!.x).toBeGreaterThanOrEqual(0);
    await page.keyboard.press('Enter');
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('main');
  });

  test('a follow-up is closed with Tab, Enter and nothing else, and the focus is always seen', async () => {
    await page.goto(`${server.url}/follow-ups`);
    const title = await seen(page.locator('.jobs > li .what').first());
    await page.locator('.jobs > li').first().locator('summary').first().focus();
    await page.keyboard.press('Enter');
    await page.keyboard.press('Tab');
    const outline = await page.evaluate(() => getComputedStyle(document.activeElement!).outlineStyle);
    expect(outline).toBe('solid');
    await page.keyboard.press('Enter');
    await page.locator('.told').waitFor();
    expect(await seen(page.locator('.told'))).toContain(title);
    await page.locator('.told button').focus();
    await page.keyboard.press('Enter');
    await page.locator('.told:has-text("taken back")').waitFor();
    expect(await seen(page.locator('.jobs').first())).toContain(title);
  });

  test('a note is written and kept', async () => {
    await page.goto(`${server.url}/capture`);
    await page.locator('#text').focus();
    await page.keyboard.type('Plot E4. By keyboard.');
    await page.getByRole('button', { name: 'Keep the note' }).focus();
    await page.keyboard.press('Enter');
    await page.waitForURL(/\/notes\//);
    expect(await seen(page.locator('.words'))).toBe('Plot E4. By keyboard.');
  });
});

describe('A note’s page', () => {
  test('no, it’s not: the fact goes, stands under what was taken away, and undo brings it back', async () => {
    await page.goto(server.url + pages.note);
    const facts = page.locator('.judged > li');
    const before = await facts.count();
    const sentence = await seen(facts.first().locator('p').first());
    await facts
      .first()
      .getByRole('button', { name: /no, it’s not/ })
      .click();
    await page.locator('.told').waitFor();
    expect(await facts.count()).toBe(before - 1);
    expect(sentence).toContain((await seen(page.locator('.struck s').first())).replace(/\.$/, ''));
    await page.locator('.told button').click();
    await page.locator('.told:has-text("Taken back")').waitFor();
    expect(await facts.count()).toBe(before);
  });

  test('a fact is added by hand, changed, and says that it was set by hand', async () => {
    await page.goto(server.url + pages.note);
    await page.click('text=Add a fact');
    await page.click('text=A measurement or count');
    await page.selectOption('[name="quantity"]', 'plant_height');
    await page.fill('[name="value"]', '88');
    await page.click('text=Add it');
    await page.locator('.judged:has-text("Plant height 88 cm")').waitFor();
    const added = page.locator('.judged > li', { hasText: 'Plant height 88 cm' });
    expect(await seen(added)).toContain('Set by hand');
    await added.getByRole('link', { name: /^change/ }).click();
    expect(await page.inputValue('[name="value"]')).toBe('88');
    await page.fill('[name="value"]', 'tall');
    await page.click('text=Keep the change');
    expect(await seen(page.locator('.wrong'))).toContain('no number');
    expect(await page.inputValue('[name="value"]')).toBe('tall');
    await page.fill('[name="value"]', '91.5');
    await page.click('text=Keep the change');
    await page.locator('.judged:has-text("Plant height 91.5 cm")').waitFor();
  });

  test('why a fact stands is said in words', async () => {
    await page.goto(server.url + pages.note);
    await page.locator('.judged summary').first().click();
    expect(await seen(page.locator('.judged .trace').first())).toMatch(/was matched by the rule/);
  });
});

describe('Follow-ups', () => {
  test('two taps close one, asking what was found; undo opens it again', async () => {
    await page.setViewportSize({ width: 360, height: 740 });
    await page.goto(`${server.url}/follow-ups`);
    const count = await page.locator('.jobs > li').count();
    const job = page.locator('.jobs > li', { has: page.locator('button', { hasText: /^Fixed$/ }) }).first();
    const title = await seen(job.locator('.what'));
    await job.locator('summary').first().click();
    await job.getByRole('button', { name: 'Fixed', exact: true }).click();
    await page.locator('.told').waitFor();
    expect(await seen(page.locator('.told'))).toContain(`${title}: fixed.`);
    expect(await page.locator('.jobs > li').count()).toBe(count - 1);
    await page.locator('.told button').click();
    await page.locator('.told:has-text("taken back")').waitFor();
    expect(await page.locator('.jobs > li').count()).toBe(count);
  });

  test('dropping asks for a reason and says so', async () => {
    await page.goto(`${server.url}/follow-ups`);
    const job = page.locator('.jobs > li').first();
    await job.locator('summary', { hasText: 'Not now' }).click();
    await job.getByRole('button', { name: 'Drop it' }).click();
    expect(await seen(page.locator('.told.bad'))).toContain('why it is dropped');
  });

  test('work that can hurt somebody brings the caution once to the page', async () => {
    await page.goto(`${server.url}/follow-ups`);
    const caution = page.locator('.caution');
    expect(await caution.count()).toBe(1);
    expect(await seen(caution)).toMatch(/re-entry time.*label.*law.*licensed/s);
  });
});

describe('A plot’s page', () => {
  test('shows only what a filter asks for, and a day with the age of the crop', async () => {
    await page.goto(server.url + pages.plot);
    expect(await seen(page.locator('.days .age').first())).toMatch(/^\d+ DAT$/);
    const all = await page.locator('.entry').count();
    await page.getByRole('link', { name: /^Gaps \d+$/ }).click();
    expect(await page.locator('article.entry').count()).toBeLessThan(all);
    for (const words of await page.locator('article.entry .facts').allInnerTexts())
      expect(words).toMatch(/gap/i);
  });

  test('says in words what the season strip draws', async () => {
    await page.goto(server.url + pages.plot);
    await page.click('text=The season in words');
    const words = await seen(page.locator('.season-part .trace'));
    expect(words).toMatch(/The season runs from/);
    expect(words).toMatch(/Expected: .*tillering from/);
    expect(await page.locator('.strip .today').count()).toBe(1);
  });
});

describe('The plan', () => {
  test('draws every plot of the list as a link that says the same', async () => {
    await page.goto(`${server.url}/plots`);
    const listed = await page.locator('.plot-list .code').allInnerTexts();
    const drawn = await page
      .locator('.plan a')
      .evaluateAll((links) => links.map((link) => link.getAttribute('aria-label')!));
    expect(drawn.map((words) => /^Plot ([^,]+),/.exec(words)![1])).toEqual(listed);
  });
});

describe('Other sites', () => {
  test.each([
    [{ origin: 'https://elsewhere.example' }, 403],
    [{ 'sec-fetch-site': 'cross-site' }, 403],
    [{ origin: 'null' }, 403],
    [{}, 404],
  ])('a post with %j is answered with %i', async (headers, status) => {
    const body = new URLSearchParams({ fact: 'x' });
    const answer = await fetch(`${server.url}/notes/none-such/fact/strike`, {
      method: 'POST',
      body,
      headers: { ...headers, accept: 'application/json' } as Record<string, string>,
    });
    // A fact that is not there is a clash with what the page showed.
    expect(status === 404 ? [404, 409] : [status]).toContain(answer.status);
    expect(((await answer.json()) as { refused: string }).refused).toMatch(/\w/);
  });

  test('every answer carries the headers that keep foreign code out', async () => {
    const { headers } = await fetch(`${server.url}/capture`);
    expect(headers.get('content-security-policy')).toContain("script-src 'self'");
    expect(headers.get('content-security-policy')).not.toContain('unsafe');
    expect(headers.get('x-content-type-options')).toBe('nosniff');
  });

  test.each([
    '/media/',
    '/media/..%2f..%2fbundwalk.db/original',
    '/media/0/original',
    '/assets/',
    '/%',
    '/plots/%E0%A4%A',
  ])('%s is answered in words, not with a file', async (path) => {
    const answer = await fetch(server.url + path, { headers: { accept: 'text/html' } });
    expect([400, 404]).toContain(answer.status);
    expect(await answer.text()).toMatch(/<h1>/);
  });
});
