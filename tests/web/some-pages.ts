import type { Page } from 'playwright-core';

export const PAGE_NAMES = [
  'capture',
  'walk',
  'plots',
  'plot',
  'plot-problems',
  'follow-ups',
  'notes',
  'notes-found',
  'note',
  'fact',
  'fact-finding',
  'fact-action',
  'season',
  'plot-form',
  'take-out',
  'unknown',
] as const;
export type PageName = (typeof PAGE_NAMES)[number];

/** Where a page of every kind is; the plot is the first of the walk, the note one of its own. */
export async function somePages(page: Page, base: string): Promise<Record<PageName, string>> {
  await page.goto(`${base}/plots`);
  const plot = (await page.locator('.plot-list a').first().getAttribute('href')) ?? '/plots/none';
  await page.goto(base + plot);
  const note = (await page.locator('.by a').first().getAttribute('href')) ?? '/notes/none';
  return {
    capture: '/capture',
    walk: '/walk',
    plots: '/plots',
    plot,
    'plot-problems': `${plot}?show=problems`,
    'follow-ups': '/follow-ups',
    notes: '/notes',
    'notes-found': '/notes?words=bund',
    note,
    fact: `${note}/fact`,
    'fact-finding': `${note}/fact?list=findings`,
    'fact-action': `${note}/fact?list=actions`,
    season: '/season',
    'plot-form': `/season/plot?code=${plot.slice('/plots/'.length)}`,
    'take-out': '/take-out',
    unknown: '/nowhere',
  };
}
