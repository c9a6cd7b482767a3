/** The season in one readable file: loading it whole or not at all, with each fault named by its line, and writing it out again. */
import { LineCounter, parseDocument, stringify } from 'yaml';
import type { Diary } from './diary.ts';
import {
  readCrews,
  readFarm,
  readFields,
  readPeople,
  readPlots,
  readSeasons,
  readVarieties,
} from './farm.ts';
import { type SeasonFile, seasonFile } from './season-entry.ts';
import {
  storeCrew,
  storeFarm,
  storeField,
  storePerson,
  storePlot,
  storeSeason,
  storeVariety,
} from './set-up.ts';

export interface FileProblem {
  /** From 1. */
  line: number;
  words: string;
}
export type SeasonLoaded =
  | { loaded: { plots: number; crops: number; crews: number; fields: number } }
  | { problems: FileProblem[] };

export async function loadSeasonFile(diary: Diary, text: string): Promise<SeasonLoaded> {
  const checked = checkSeasonFile(text);
  if ('problems' in checked) return checked;
  const { season } = checked;
  const at = diary.now().toString();
  await diary.db.transaction().execute(async (db) => {
    await storeFarm(db, season.farm, season.season?.today ?? null, at);
    if (season.season) await storeSeason(db, season.season);
    for (const person of season.people ?? []) await storePerson(db, person);
    for (const variety of season.varieties ?? []) await storeVariety(db, variety);
    for (const crew of season.crews ?? []) await storeCrew(db, crew);
    for (const field of season.fields ?? []) await storeField(db, field);
    const seasonId = season.season
      ? (
          await db
            .selectFrom('seasons')
            .select('id')
            .where('name', '=', season.season.name)
            .executeTakeFirstOrThrow()
        ).id
      : null;
    for (const plot of season.plots) await storePlot(db, plot, seasonId, at);
  });
  return {
    loaded: {
      plots: season.plots.length,
      crops: season.plots.filter((plot) => plot.crop).length,
      crews: season.crews?.length ?? 0,
      fields: season.fields?.length ?? 0,
    },
  };
}

/** Pure check of the file's text: the season, or every fault with its line. */
export function checkSeasonFile(text: string): { season: SeasonFile } | { problems: FileProblem[] } {
  const lines = new LineCounter();
  const document = parseDocument(text, {
    lineCounter: lines,
    schema: 'core',
    prettyErrors: false,
    uniqueKeys: true,
  });
  const lineAt = (offset: number): number => lines.linePos(offset).line;
  if (document.errors.length > 0) {
    return {
      problems: document.errors.map((error) => ({
        line: lineAt(error.pos[0]),
        words: firstLine(error.message),
      })),
    };
  }
  const answer = seasonFile.safeParse(document.toJS({ maxAliasCount: 100 }));
  const problems: FileProblem[] = answer.success
    ? []
    : answer.error.issues.map((issue) => ({
        line: lineAt(offsetOf(document, issue.path)),
        words: `${issue.path.length > 0 ? `${issue.path.map(String).join(' › ')}: ` : ''}${issue.message}`,
      }));
  if (answer.success) problems.push(...clashes(answer.data, (path) => lineAt(offsetOf(document, path))));
  if (answer.success && problems.length === 0) return { season: answer.data };
  return { problems: problems.sort((a, b) => a.line - b.line) };
}

/** What each entry alone cannot show: codes twice, fields that nobody described. */
function clashes(season: SeasonFile, lineOf: (path: PropertyKey[]) => number): FileProblem[] {
  const problems: FileProblem[] = [];
  const seen = new Map<string, number>();
  const fields = new Set((season.fields ?? []).map((field) => field.code));
  season.plots.forEach((plot, index) => {
    const line = lineOf(['plots', index, 'code']);
    const key = plot.code.toLowerCase();
    const first = seen.get(key);
    if (first !== undefined)
      problems.push({
        line,
        words: `plot ${plot.code} stands twice, first in line ${first}: give each plot its own code`,
      });
    else seen.set(key, line);
    if (plot.field && !fields.has(plot.field)) {
      problems.push({
        line: lineOf(['plots', index, 'field']),
        words: `field ${plot.field} is not listed under fields: add it there`,
      });
    }
  });
  return problems;
}

/** Where the value at this path begins; where it is missing, where its nearest parent begins. */
function offsetOf(document: ReturnType<typeof parseDocument>, path: readonly PropertyKey[]): number {
  for (let length = path.length; length > 0; length--) {
    const node = document.getIn(path.slice(0, length), true) as
      | { range?: [number, number, number] }
      | undefined;
    if (node?.range) return node.range[0];
  }
  return document.contents?.range?.[0] ?? 0;
}

const firstLine = (words: string): string => words.split('\n')[0]!;

/** The season as it stands, in the same form as the file that can be loaded. */
export async function seasonFileText(diary: Diary): Promise<string> {
  const [farm, seasons, people, crews, varieties, fields, plots] = await Promise.all([
    readFarm(diary),
    readSeasons(diary),
    readPeople(diary),
    readCrews(diary),
    readVarieties(diary),
    readFields(diary),
    readPlots(diary),
  ]);
  const season = seasons[0];
  const file = {
    farm: farm ? filled({ ...farm, asOf: null }) : { name: 'Unnamed farm', timeZone: 'UTC' },
    ...(season && {
      season: {
        name: season.name,
        from: season.startsOn,
        to: season.endsOn,
        ...(farm?.asOf && { today: farm.asOf }),
      },
    }),
    people: people.map((person) => filled({ ...person })),
    varieties: varieties.map((variety) => filled({ ...variety })),
    crews: crews.map(({ name, leader, people }) => filled({ name, leader, people })),
    fields,
    plots: plots.map((plot) =>
      filled({
        code: plot.code,
        names: plot.names,
        field: plot.field,
        treatment: plot.treatment,
        replicate: plot.replicate,
        walk: plot.walk,
        size: plot.widthM && plot.lengthM ? { widthM: plot.widthM, lengthM: plot.lengthM } : null,
        boundary: plot.boundary,
        crop:
          plot.crop &&
          filled({
            variety: plot.crop.variety,
            daysToMaturity: plot.crop.daysToMaturity,
            establishment: plot.crop.establishment,
            sown: plot.crop.sownOn,
            planted: plot.crop.plantedOn,
            spacing: plot.crop.rowCm ? filled({ rowCm: plot.crop.rowCm, hillCm: plot.crop.hillCm }) : null,
          }),
        protocol: plot.crop?.protocol.length ? plot.crop.protocol : null,
      }),
    ),
  };
  return stringify(file, { flowCollectionPadding: true, lineWidth: 110 });
}

const filled = (entry: Record<string, unknown>) =>
  Object.fromEntries(Object.entries(entry).filter(([, value]) => value !== null && value !== undefined));
