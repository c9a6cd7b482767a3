/** `npm run --silent photo -- FILE...`: one JSON line a file with its position, time and whether it can be taken in. */
import { openDarkroom } from '../photos/darkroom.ts';

const files = process.argv.slice(2);
if (files.length === 0) {
  console.error('Name one or more photo files: npm run --silent photo -- FILE...');
  process.exit(2);
}
const darkroom = openDarkroom();
for (const file of files) {
  const { position, time, ingest } = await darkroom.examine(file);
  console.log(JSON.stringify({ file, position, time, ingest }));
}
await darkroom.close();
