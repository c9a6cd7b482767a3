/** `npm run bench`: all figures in one run, each against a named yardstick. Nothing here passes or fails. */

import { benchLists } from './lists.ts';
import { benchPhotos } from './photos.ts';
import { benchReader } from './reader.ts';
import { benchWeb } from './web.ts';

for (const line of benchReader()) console.log(line);
await benchWeb();
await benchLists();
await benchPhotos();
process.exit(0);
