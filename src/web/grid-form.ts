/** The form of a block of plots laid out from one corner. */
import { z } from 'zod';
import type { Refusal } from '../diary/diary.ts';
import type { NamedBoundary } from '../plots/boundaries-from-geojson.ts';
import { plotGrid } from '../plots/plot-grid.ts';
import type { Form } from './form.ts';

const MOST_PLOTS = 600;
const number = (what: string, low: number, high: number) =>
  z
    .string({ error: `${what} is missing` })
    .trim()
    .min(1, `${what} is missing`)
    .transform((words) => Number(words.replace(',', '.')))
    .pipe(
      z
        .number(`${what} is no number`)
        .min(low, `${what} must be at least ${low}`)
        .max(high, `${what} must be at most ${high}`),
    );

const gridForm = z.object({
  latitude: number('Latitude', -90, 90),
  longitude: number('Longitude', -180, 180),
  bearingDeg: number('The bearing', 0, 360),
  rows: number('The number of rows', 1, 200).refine(Number.isInteger, 'The number of rows is a whole number'),
  columns: number('The number of columns', 1, 200).refine(
    Number.isInteger,
    'The number of columns is a whole number',
  ),
  widthM: number('The width', 0.2, 1000),
  lengthM: number('The length', 0.2, 1000),
  betweenColumnsM: number('The alley between columns', 0, 100),
  betweenRowsM: number('The alley between rows', 0, 100),
  order: z.enum(['always from the left', 'back and forth']).catch('always from the left'),
  codes: z.string().default(''),
});

/** Label and words beside it, in the order of the form. */
export const GRID_FIELDS = [
  ['latitude', 'Latitude of the near left corner', 'degrees, 15.51070'],
  ['longitude', 'Longitude of the near left corner', 'degrees, 120.72030'],
  ['bearingDeg', 'Bearing of the plots’ length', 'degrees from true north, clockwise'],
  ['rows', 'Rows, away from the corner', ''],
  ['columns', 'Columns, to the right', ''],
  ['widthM', 'Width of a plot', 'metres'],
  ['lengthM', 'Length of a plot', 'metres'],
  ['betweenColumnsM', 'Alley between columns', 'metres, 0 for none'],
  ['betweenRowsM', 'Alley between rows', 'metres, 0 for none'],
] as const;

export function gridOf(form: Form): NamedBoundary[] | Refusal {
  const answer = gridForm.safeParse(form);
  if (!answer.success) {
    const issue = answer.error.issues[0]!;
    return { refused: `${issue.message}.`, field: String(issue.path[0]) };
  }
  const { codes, ...grid } = answer.data;
  const names = codes.split(/[\s,;]+/).filter(Boolean);
  const wanted = grid.rows * grid.columns;
  if (wanted > MOST_PLOTS) return { refused: `That is more than ${MOST_PLOTS} plots.`, field: 'rows' };
  if (names.length !== wanted)
    return {
      refused: `${grid.rows} rows of ${grid.columns} are ${wanted} plots, but ${names.length} codes are written: write one for each, in order.`,
      field: 'codes',
    };
  return plotGrid(grid).map(({ boundary }, at) => ({ name: names[at]!, boundary }));
}
