/**
 * The one way in: makes sure that what the lockfile says is installed, then hands over to the command.
 * Plain JavaScript, because it runs before anything is installed, and because package scripts that would run
 * before or after a command are switched off here (`ignore-scripts`).
 */
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));
const commands = {
  serve: '../src/server.ts',
  read: '../src/cli/read.ts',
  photo: '../src/cli/photo.ts',
  import: '../src/cli/import.ts',
  export: '../src/cli/export.ts',
  bench: '../tests/bench/run.ts',
  check: '../tests/run.ts',
  test: '../tests/run.ts',
};

const [command, ...rest] = process.argv.slice(2);
const entry = commands[command];
if (!entry) {
  console.error(`Unknown command ${command ?? ''}. Known: ${Object.keys(commands).join(', ')}.`);
  process.exit(2);
}
if (Number(process.versions.node.split('.')[0]) < 20) {
  console.error(`Bundwalk needs Node 20 or newer; this is ${process.version}.`);
  process.exit(1);
}
installWhatTheLockfileSays();
process.argv = [process.argv[0], process.argv[1], ...rest];
process.env.BUNDWALK_COMMAND = command;
const { register } = await import('tsx/esm/api');
register();
await import(entry);

function installWhatTheLockfileSays() {
  const wanted = createHash('sha256')
    .update(readFileSync(`${root}/package-lock.json`))
    .digest('hex');
  const stamp = `${root}/node_modules/.installed-from`;
  if (existsSync(stamp) && readFileSync(stamp, 'utf8') === wanted) return;
  console.error('Installing what the lockfile says (once; a minute or two)…');
  const npm = process.platform === 'win32' ? 'npm.cmd' : 'npm';
  const done = spawnSync(npm, ['ci', '--no-audit', '--no-fund'], { cwd: root, stdio: ['ignore', 2, 2] });
  if (done.status !== 0) {
    console.error(
      'The install did not finish; see the lines above. Nothing else was changed. Run the same command again.',
    );
    process.exit(1);
  }
  writeFileSync(stamp, wanted);
}
