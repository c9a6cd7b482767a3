/** Draws docs/story.png, the picture of the README, from the sample season: `tsx tests/web/story-picture.ts`. */
import { fileURLToPath } from 'node:url';
import { openChromium } from './chromium.ts';
import { startServer } from './start-server.ts';

const server = await startServer();
const browser = await openChromium({ width: 1280, height: 1000 });
const page = await browser.context.newPage();
await page.goto(`${server.url}/plots/E1`);
await page.waitForLoadState('networkidle');
await page.screenshot({ path: fileURLToPath(new URL('../../docs/story.png', import.meta.url)) });
await browser.close();
await server.stop();
