/** `npm run --silent photo -- FILE...`: one JSON line a file with its position, its time and whether it can be taken in. */
import { openDarkroom } from '../photos/darkroom.ts';

const files = process.argv.slice(2);
if (files.length === 0) {
  console.error('Name one or more photo files: npm run --silent photo -- FILE...');
  process.exitCode = 2;
} else {
  const darkroom = openDarkroom();
  // All are handed over at once and printed in the order in which they were named.
  const answers = files.map((file) => darkroom.examine(file));
  for (const [at, file] of files.entries()) {
    const { position, time, ingest } = await answers[at]!;
    console.log(JSON.stringify({ file, position, time, ingest }));
  }
  await darkroom.close();
}
