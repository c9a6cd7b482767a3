/** What the reader is told of the farm: plots and their names, people, varieties, and words that a farm added. */
import type { FarmWords, PlotNamed } from '../reading/record.ts';
import type { Diary } from './diary.ts';
import { readCrews, readPeople, readPlots, readVarieties } from './farm.ts';

export interface FarmSeen {
  plots: PlotNamed[];
  words: FarmWords;
}

export async function readFarmSeen(diary: Diary): Promise<FarmSeen> {
  const [plots, crews, people, varieties, authors, mishearings] = await Promise.all([
    readPlots(diary),
    readCrews(diary),
    readPeople(diary),
    readVarieties(diary),
    diary.db.selectFrom('notes').select('author').distinct().execute(),
    diary.db.selectFrom('farm_words').select(['said', 'meant']).execute(),
  ]);
  const known = (names: (string | null | undefined)[]): string[] => [
    ...new Set(names.filter((name): name is string => !!name)),
  ];
  return {
    plots: plots.map(({ code, names }) => ({ code, names })),
    words: {
      mishearings,
      people: known([
        ...crews.flatMap((crew) => [crew.name, crew.leader]),
        ...people.map((person) => person.name),
        ...authors.map((row) => row.author),
      ]),
      varieties: known([
        ...varieties.map((variety) => variety.name),
        ...plots.map((plot) => plot.crop?.variety),
      ]),
    },
  };
}
