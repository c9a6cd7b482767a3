/** Keeps notes as fast as it can and prints each id once it is acknowledged; the test kills it in the middle. */
import { Temporal } from 'temporal-polyfill';
import { isRefusal } from '../../src/diary/diary.ts';
import { keepNote } from '../../src/diary/keep-note.ts';
import { openDiary } from '../../src/diary/open-diary.ts';

const diary = openDiary(process.argv[2]!, () => Temporal.Instant.from('2031-07-14T00:00:00Z'));
for (let n = 0; n < 2000; n++) {
  const id = `note-${process.argv[3]}-${n}`;
  const answer = await keepNote(diary, { id, text: `B1 weeds along the bund ${n}, hand weed tomorrow` });
  if (!isRefusal(answer)) process.stdout.write(`${id}\n`);
}
