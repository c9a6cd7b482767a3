import type { Page } from 'playwright-core';

export const PAGE_NAMES = [
  'capture',
  'walk',
  'plots',
  'plot',
  'plot-problems',
  'plot-photos',
  'photo',
  'photo-measured',
  'photo-tray',
  'send-photos',
  'photo-clock',
  'plots-with-places',
  'boundaries',
  'follow-ups',
  'follow-ups-narrowed',
  'follow-up',
  'crew-sheet',
  'handed-on',
  'handed-on-ended',
  'notes',
  'notes-found',
  'note',
  'fact',
  'fact-finding',
  'fact-action',
  'season',
  'look-after',
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
  await page.goto(`${base}${plot}/photos`);
  const photo = (await page.locator('.days figure a').first().getAttribute('href')) ?? '/photos/none';
  const measured = page.locator('.days figure', { hasText: 'green cover' }).first();
  const down = (await measured.locator('a').getAttribute('href')) ?? '/photos/none';
  await page.goto(`${base}/follow-ups`);
  const looked = page.locator('.jobs > li', { hasText: 'Looked at it' });
  const item = await looked.locator('.what a').first().getAttribute('href');
  const sheet = await page.request.post(`${base}/crew-sheet/hand-on`, {
    form: { day: await todayOf(page, base), who: '' },
    headers: { accept: 'application/json' },
  });
  const { token } = (await sheet.json()) as { token: string };
  return {
    capture: '/capture',
    walk: '/walk',
    plots: '/plots',
    plot,
    'plot-problems': `${plot}?show=problems`,
    'plot-photos': `${plot}/photos`,
    photo,
    'photo-measured': `${down}?mask=yes`,
    'photo-tray': '/photos/tray',
    'send-photos': '/photos/send',
    'photo-clock': '/photos/clock?day=2031-07-21&minutes=40&way=fast',
    'plots-with-places': '/plots?with=places',
    boundaries: '/season/boundaries',
    'follow-ups': '/follow-ups',
    'follow-ups-narrowed': '/follow-ups?list=late&kind=irrigate',
    'follow-up': item ?? '/follow-ups/none',
    'crew-sheet': '/crew-sheet',
    'handed-on': `/handed-on/${token}`,
    'handed-on-ended': '/handed-on/none',
    notes: '/notes',
    'notes-found': '/notes?words=bund',
    note,
    fact: `${note}/fact`,
    'fact-finding': `${note}/fact?list=findings`,
    'fact-action': `${note}/fact?list=actions`,
    season: '/season',
    'look-after': '/season/look-after',
    'plot-form': `/season/plot?code=${plot.slice('/plots/'.length)}`,
    'take-out': '/take-out',
    unknown: '/nowhere',
  };
}

async function todayOf(page: Page, base: string): Promise<string> {
  await page.goto(`${base}/crew-sheet`);
  return page.inputValue('#s-day');
}
