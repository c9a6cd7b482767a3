/** `npm run import -- FOLDER`: a season file, notes and photos, or a diary that was taken out; again without doubling. */
import { existsSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { isRefusal } from '../diary/diary.ts';
import { developWaiting } from '../diary/keep-photos.ts';
import { restore } from '../diary/restore.ts';
import { takeIn } from '../diary/take-in.ts';
import { openForCommand, showProgress, stop } from './open-for-command.ts';

const { diary, folder } = openForCommand('npm run import -- FOLDER [--data FOLDER]');
if (!existsSync(folder) || !statSync(folder).isDirectory()) stop(`There is no folder ${folder}.`, 1);

if (existsSync(join(folder, 'diary.json'))) {
  const answer = await restore(diary, folder);
  if (isRefusal(answer)) stop(answer.refused, 1);
  console.log(`Restored ${answer.rows} rows and ${answer.photos - answer.missingPhotos.length} photos.`);
  for (const id of answer.missingPhotos) console.log(`The photo ${id} was not in the folder.`);
} else {
  const taken = await takeIn(diary, folder, (done, of) => showProgress('Files', done, of));
  console.log(
    `Taken in: ${taken.notes} notes and ${taken.photos} photos; ${taken.known} were there already.`,
  );
  for (const { file, words } of taken.problems) console.log(`${file}: ${words}`);
  process.exitCode = taken.problems.length > 0 ? 1 : 0;
}
await developWaiting(diary);
await diary.close();
