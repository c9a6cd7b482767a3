/** Finds a Chromium and opens it with a profile of its own that is removed afterwards. */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type BrowserContext, chromium } from 'playwright-core';

const USUAL_PATHS = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome-stable',
  '/usr/bin/google-chrome',
  '/snap/bin/chromium',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
];
const FLAGS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

export interface Browser {
  context: BrowserContext;
  close(): Promise<void>;
}

export async function openChromium(
  options: { width?: number; height?: number; script?: boolean } = {},
): Promise<Browser> {
  const profile = mkdtempSync(join(tmpdir(), 'bundwalk-browser-'));
  const context = await chromium.launchPersistentContext(profile, {
    executablePath: findChromium(),
    headless: true,
    args: FLAGS,
    javaScriptEnabled: options.script ?? true,
    viewport: { width: options.width ?? 360, height: options.height ?? 740 },
  });
  return {
    context,
    close: async () => {
      await context.close();
      rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
    },
  };
}

/** Throws, in words, where there is none and none can be installed. */
export function findChromium(): string {
  const found = [process.env.CHROMIUM, ...USUAL_PATHS].find((path) => path && existsSync(path));
  return found ?? installed();
}

function installed(): string {
  if (existsSync('/etc/debian_version') && process.getuid?.() === 0) {
    console.error('No Chromium found; installing the package chromium (once)…');
    spawnSync('apt-get', ['update', '-qq'], { stdio: ['ignore', 2, 2] });
    spawnSync('apt-get', ['install', '-y', '-qq', '--no-install-recommends', 'chromium'], {
      stdio: ['ignore', 2, 2],
      env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
    });
    if (existsSync('/usr/bin/chromium')) return '/usr/bin/chromium';
  }
  throw new Error(
    'The page tests need Chromium. Install it (Debian: apt-get install chromium; macOS: brew install --cask chromium), ' +
      'or say where it is with CHROMIUM=/path/to/it, and run again.',
  );
}
