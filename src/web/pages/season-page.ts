import type { Request, RequestHandler, Response } from 'express';
import type { Diary, Refusal } from '../../diary/diary.ts';
import { readCrews, readFarm, readFields, readPlots, readSeasons } from '../../diary/farm.ts';
import type { FileProblem } from '../../diary/season-file.ts';
import { statusOf } from '../errors.ts';
import type { Form } from '../form.ts';
import { ASKED, type EntryName, filled } from '../season-forms.ts';
import { showPage } from '../show-page.ts';

export const seasonPage =
  (diary: Diary): RequestHandler =>
  (req, res) =>
    showSeason(diary, req, res);

export interface SeasonTrouble {
  /** The form that was refused, with what was written in it. */
  refused?: { entry: EntryName; form: Form; refusal: Refusal };
  /** Faults of the file that was sent. */
  problems?: FileProblem[];
  fileRefusal?: Refusal;
}

export async function showSeason(
  diary: Diary,
  req: Request,
  res: Response,
  trouble: SeasonTrouble = {},
): Promise<void> {
  const [farm, seasons, crews, fields, plots] = await Promise.all([
    readFarm(diary),
    readSeasons(diary),
    readCrews(diary),
    readFields(diary),
    readPlots(diary),
  ]);
  const season = seasons[0];
  const { refused, problems, fileRefusal } = trouble;
  const stands: Partial<Record<EntryName, Form>> = {
    farm: farm ? filled({ ...farm }) : {},
    season: season ? { name: season.name, from: season.startsOn, to: season.endsOn } : {},
  };
  await showPage(
    req,
    res,
    'season',
    {
      title: 'Season',
      place: 'Season',
      farm,
      season: season ?? null,
      crews,
      fields,
      plots,
      asked: ASKED,
      formOf: (entry: EntryName): Form => (refused?.entry === entry ? refused.form : (stands[entry] ?? {})),
      refusalOf: (entry: EntryName): Refusal | null => (refused?.entry === entry ? refused.refusal : null),
      problems: problems ?? [],
      fileRefusal: fileRefusal ?? null,
    },
    refused ? statusOf(refused.refusal) : fileRefusal ? statusOf(fileRefusal) : problems ? 422 : 200,
  );
}
