import type { Page } from 'playwright-core';

/** A page of every kind, as `[name, path]`; a note and one of its facts are taken from the plot's own page. */
export async function somePages(page: Page, base: string): Promise<[string, string][]> {
  await page.goto(`${base}/plots`);
  const plot = (await page.locator('.plot-list a').first().getAttribute('href')) ?? '/plots/none';
  await page.goto(base + plot);
  const note = await page.locator('.by a').first().getAttribute('href', { timeout: 2000 });
  return [
    ['capture', '/capture'],
    ['walk', '/walk'],
    ['plots', '/plots'],
    ['plot', plot],
    ['plot-problems', `${plot}?show=problems`],
    ['follow-ups', '/follow-ups'],
    ['notes', '/notes'],
    ['notes-found', '/notes?words=bund'],
    ['note', note ?? '/notes'],
    ['fact', `${note}/fact`],
    ['fact-finding', `${note}/fact?list=findings`],
    ['fact-action', `${note}/fact?list=actions`],
    ['season', '/season'],
    [
      'plot-form',
      `/season/plot?code=${encodeURIComponent(decodeURIComponent(plot.slice('/plots/'.length)))}`,
    ],
    ['take-out', '/take-out'],
    ['unknown', '/nowhere'],
  ];
}
