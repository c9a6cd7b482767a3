/**
 * `npm run check`: types, lint, tests without a browser. `npm test`: the same and the browser tests.
 * Stops at the first step that fails, and ends with one plain line of counts.
 */
import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { findChromium } from './web/chromium.ts';

const root = fileURLToPath(new URL('..', import.meta.url));
const withBrowser = process.env.BUNDWALK_COMMAND === 'test';
const report = `${root}/build/tests.json`;

mkdirSync(`${root}/build`, { recursive: true });
if (withBrowser) process.env.CHROMIUM = findChromium();
step('Types', 'tsc', ['-p', '.']);
step('Lint', 'biome', ['check', '--error-on-warnings', 'src', 'tests']);
const tests = run('vitest', [
  'run',
  '--config',
  'tests/vitest.config.ts',
  '--reporter=default',
  '--reporter=json',
  `--outputFile.json=${report}`,
  ...(withBrowser ? [] : ['--exclude', 'tests/web/**']),
  ...process.argv.slice(2),
]);
const counts = JSON.parse(readFileSync(report, 'utf8')) as {
  numPassedTests: number;
  numFailedTests: number;
  numPendingTests: number;
};
console.log(
  `\n${counts.numPassedTests} passed, ${counts.numFailedTests} failed, ${counts.numPendingTests} skipped`,
);
process.exit(tests);

function step(name: string, command: string, args: string[]): void {
  const status = run(command, args);
  console.log(`${name}: ${status === 0 ? 'in order' : 'not in order, see above'}`);
  if (status !== 0) process.exit(1);
}

function run(command: string, args: string[]): number {
  const done = spawnSync(`${root}/node_modules/.bin/${command}`, args, { cwd: root, stdio: 'inherit' });
  return done.status ?? 1;
}
