import type { RequestHandler } from 'express';
import type { Diary } from '../../diary/diary.ts';
import { seasonFileText } from '../../diary/season-file.ts';
import { csvTables, geoJson, wholeDiary } from '../../diary/take-out.ts';

/** `diary.json`, `season.yaml`, `plots.geojson`, or `<table>.csv`. */
export const takeOutFile =
  (diary: Diary): RequestHandler<{ file: string }> =>
  async (req, res, next) => {
    const { file } = req.params;
    const text = await textOf(diary, file);
    if (text === null) return next();
    res
      .attachment(file)
      .type(TYPES[file.split('.').at(-1)!] ?? 'text/plain')
      .send(text);
  };

const TYPES: Record<string, string> = {
  json: 'application/json',
  geojson: 'application/geo+json',
  yaml: 'text/yaml; charset=utf-8',
  csv: 'text/csv; charset=utf-8',
};

async function textOf(diary: Diary, file: string): Promise<string | null> {
  if (file === 'diary.json') return JSON.stringify(await wholeDiary(diary), null, 1);
  if (file === 'season.yaml') return seasonFileText(diary);
  if (file === 'plots.geojson') return JSON.stringify(await geoJson(diary), null, 1);
  const table = /^([a-z-]+)\.csv$/.exec(file)?.[1];
  return table ? ((await csvTables(diary)).get(table) ?? null) : null;
}
