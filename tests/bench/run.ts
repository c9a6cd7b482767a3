/** `npm run bench`: all figures in one run, each against a named yardstick. Nothing here passes or fails. */
import { benchWeb } from './web.ts';

await benchWeb();
process.exit(0);
