import type { RequestHandler } from 'express';
import type { Diary } from '../../diary/diary.ts';
import { LIST_NAMES } from '../../reading/record.ts';
import { LIST_WORDS } from '../fact-form.ts';
import { showPage } from '../show-page.ts';

/** What can be taken out: `[file, words]`, in groups. A new file needs a line here and one in take-out-file.ts. */
const GROUPS: { heading: string; files: [string, string][] }[] = [
  {
    heading: 'Whole',
    files: [
      [
        'diary.json',
        'The whole diary but the photos: notes, corrections, steps and set-up. A diary can be restored from it.',
      ],
      ['season.yaml', 'The season as one readable file: farm, fields, plots, crops, crews.'],
      ['plots.geojson', 'Plots and photos on the map, for any mapping program.'],
    ],
  },
  {
    heading: 'Tables for a spreadsheet',
    files: [
      ['notes.csv', 'Every note with its words'],
      ['follow-ups.csv', 'Every follow-up and where it stands'],
      ['plots.csv', 'Every plot with its crop'],
      ['photos.csv', 'Every photo: time, place, plot'],
      ['corrections.csv', 'Every correction by hand'],
    ],
  },
  {
    heading: 'Facts, one table a kind',
    files: LIST_NAMES.map((list): [string, string] => [`${list}.csv`, LIST_WORDS[list]]),
  },
];

export const takeOutPage =
  (_diary: Diary): RequestHandler =>
  (req, res) =>
    showPage(req, res, 'take-out', { title: 'Take out', place: 'Take out', groups: GROUPS });
