import { readFile } from 'node:fs/promises';
import type { RequestHandler } from 'express';
import type { Diary } from '../../diary/diary.ts';
import { loadSeasonFile } from '../../diary/season-file.ts';
import { wantsJson } from '../errors.ts';
import { formOf } from '../form.ts';
import { showSeason } from '../pages/season-page.ts';
import { tell } from '../told.ts';
import { letGo, type Receive } from '../uploads.ts';
import { several } from '../words.ts';

const LARGEST_CHARACTERS = 5_000_000;

/** The file as an upload, or its text in the field `text`. */
export const sendSeasonFile =
  (diary: Diary, receive: Receive): RequestHandler =>
  async (req, res) => {
    const files = await receive(req, res);
    if (!Array.isArray(files)) return showSeason(diary, req, res, { fileRefusal: files });
    try {
      const text = files[0] ? await readFile(files[0].path, 'utf8') : (formOf(req).text ?? '');
      const refused = faultOf(text);
      if (refused) return await showSeason(diary, req, res, { fileRefusal: { refused } });
      const done = await loadSeasonFile(diary, text);
      if (wantsJson(req)) return void res.status('problems' in done ? 422 : 200).json(done);
      if ('problems' in done) return await showSeason(diary, req, res, { problems: done.problems });
      const { plots, crops, crews, fields } = done.loaded;
      tell(res, {
        words: `Taken in: ${several(plots, 'plot')}, ${several(crops, 'crop')}, ${several(fields, 'field')}, ${several(crews, 'crew')}.`,
      });
      res.redirect(303, '/season');
    } finally {
      await letGo(files);
    }
  };

function faultOf(text: string): string | null {
  if (text.trim() === '')
    return 'No file was chosen, or it is empty. Nothing was changed; choose the season file and send it again.';
  if (text.length > LARGEST_CHARACTERS)
    return 'The file is larger than 5 MB of text. Nothing was changed; is it the right one?';
  if (text.includes('\u0000') || text.includes('\uFFFD'))
    return 'This is not a text file in UTF-8. Nothing was changed; save it as plain text and send it again.';
  return null;
}
