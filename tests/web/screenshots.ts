/**
 * Pictures of every page at phone and desk width: `tsx tests/web/screenshots.ts <folder> [address]`.
 * Without an address a server with the sample season is started for it.
 */
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { openChromium } from './chromium.ts';
import { somePages } from './some-pages.ts';
import { startServer } from './start-server.ts';

const [folder, address] = process.argv.slice(2);
if (!folder) throw new Error('Say where the pictures go: tsx tests/web/screenshots.ts <folder>');
mkdirSync(folder, { recursive: true });

const server = address ? null : await startServer({ sample: true });
const base = address ?? server!.url;
for (const width of [360, 1280]) {
  const browser = await openChromium({ width, height: width === 360 ? 740 : 900 });
  const page = await browser.context.newPage();
  for (const [name, path] of Object.entries(await somePages(page, base))) {
    await page.goto(base + path);
    await page.evaluate(() => document.fonts.ready);
    await page.screenshot({ path: join(folder, `${name}-${width}.png`) });
    await page.screenshot({ path: join(folder, `${name}-${width}-whole.png`), fullPage: true });
  }
  await browser.close();
}
await server?.stop();
