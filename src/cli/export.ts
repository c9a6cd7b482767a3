/** `npm run export -- FOLDER`: everything, in plain open formats. */
import { takeOut } from '../diary/take-out.ts';
import { openForCommand, showProgress } from './open-for-command.ts';

const { diary, folder } = openForCommand('npm run export -- FOLDER [--data FOLDER]');
const { notes, photos, files } = await takeOut(diary, folder, (done, of) => showProgress('Photos', done, of));
console.log(`Taken out: ${notes} notes and ${photos} photos, ${files} files in ${folder}.`);
await diary.close();
