/**
 * Two figures of the pages, over real HTTP against the real application: from posting a note to its durable answer, and the
 * story page of a plot with 5,000 facts against bare express and ejs printing the same HTML.
 */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import ejs from 'ejs';
import express from 'express';
import { keepNote } from '../../src/diary/keep-note.ts';
import { makeApp } from '../../src/web/app.ts';
import { buildClient } from '../../src/web/build-client.ts';
import { openTestDiary } from '../diary/test-diary.ts';
import { medianOf, p95Of, timesOf } from './timing.ts';

const ENTRIES = 5000;

export async function benchWeb(): Promise<void> {
  const { diary, end } = await openTestDiary();
  const server = await listen(createServer(makeApp(diary, { buildFolder: await buildClient() })));
  const posts = await timesOf(150, 20, (n) => post(server.url, n));
  console.log(
    `post to durable answer: median ${medianOf(posts)} ms, p95 ${p95Of(posts)} ms (aim: p95 below 25 ms)`,
  );

  const facts = await fillPlot(diary);
  const html = await (await fetch(`${server.url}/plots/B1`)).text();
  const bare = await listen(createServer(bareApp(html)));
  const ours = await timesOf(60, 10, () => read(`${server.url}/plots/B1`));
  const yardstick = await timesOf(60, 10, () => read(bare.url));
  const ratio = medianOf(ours) / medianOf(yardstick);
  console.log(
    `story page, plot with ${facts} facts, ${Math.round(html.length / 1024)} kB: median ${medianOf(ours)} ms, p95 ${p95Of(ours)} ms; ` +
      `the same HTML from bare express and ejs ${medianOf(yardstick)} ms; ratio ${ratio.toFixed(2)} (aim: below 3)`,
  );
  server.close();
  bare.close();
  await end();
}

async function post(url: string, n: number): Promise<void> {
  const form = new FormData();
  form.set('id', `bench-${n}-${process.pid}`);
  form.set(
    'text',
    `B2 thirty three DAT, tillering well, weeds thick along the north bund, two in ten hills missing. Hand weed by Friday, note ${n}.`,
  );
  const answer = await fetch(`${url}/notes`, {
    method: 'POST',
    body: form,
    headers: { accept: 'application/json' },
  });
  if (!answer.ok) throw new Error(`${answer.status}: ${await answer.text()}`);
  await answer.text();
}

/** Notes in B1 until the plot holds so many facts. */
async function fillPlot(diary: Parameters<typeof keepNote>[0]): Promise<number> {
  for (let n = 0; ; n++) {
    const day = String(1 + (n % 28)).padStart(2, '0');
    const month = String(1 + (Math.floor(n / 28) % 12)).padStart(2, '0');
    await keepNote(diary, {
      id: `fill-${n}`,
      plot: 'B1',
      observedAt: `2031-${month}-${day}T07:${String(n % 60).padStart(2, '0')}`,
      text: `Tillering, ${20 + (n % 40)} DAT. Weeds along the north bund, moderate. Water 5 cm. ${12 + (n % 9)} tillers a hill. Rats cut 3 of 20 hills, set traps tonight.`,
    });
    if (n % 100 === 99) {
      const { count } = await diary.db
        .selectFrom('facts')
        .select((eb) => eb.fn.countAll<number>().as('count'))
        .where('plot', '=', 'B1')
        .executeTakeFirstOrThrow();
      if (Number(count) >= ENTRIES) return Number(count);
    }
  }
}

/** Bare express and ejs: tags as they are, each text between them escaped by the template, as a page's own would be. */
export function bareApp(html: string): express.Express {
  const folder = mkdtempSync(join(tmpdir(), 'bare-'));
  const template = join(folder, 'page.ejs');
  writeFileSync(template, '<% for (const [tag, text] of parts) { %><%- tag %><%= text %><% } %>');
  const parts = [...html.matchAll(/(<[^>]*>)([^<]*)/g)].map(([, tag, text]) => [tag, unescaped(text!)]);
  const app = express();
  app.get('/', async (_req, res) => {
    res.type('html').send(await ejs.renderFile(template, { parts }, { cache: true }));
  });
  process.once('exit', () => rmSync(folder, { recursive: true, force: true }));
  return app;
}

const unescaped = (text: string): string =>
  text
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&#34;', '"')
    .replaceAll('&#39;', "'")
    .replaceAll('&amp;', '&');

export async function read(url: string): Promise<string> {
  const answer = await fetch(url);
  if (!answer.ok) throw new Error(`${url}: ${answer.status}`);
  return answer.text();
}

export async function listen(server: Server): Promise<{ url: string; close(): void }> {
  server.keepAliveTimeout = 600_000;
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  return {
    url: `http://127.0.0.1:${(server.address() as AddressInfo).port}`,
    close: () => {
      server.close();
      server.closeAllConnections();
    },
  };
}
