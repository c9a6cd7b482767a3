/** The crew's sheet for a day: plots in walking order, what, where in the plot, how much, cautions, the last photo. */
import { sql } from 'kysely';
import { dayWords } from '../followups/days.ts';
import type { FollowUp } from '../followups/item.ts';
import { dueSentence } from '../followups/sentences.ts';
import { workWords } from '../followups/words.ts';
import { doseForPlot } from '../plots/dose-for-plot.ts';
import { plotAreaM2 } from '../plots/plot-area.ts';
import { ACTION_WORDS, sayDose } from '../reading/say-fact.ts';
import type { Diary } from './diary.ts';
import { localToday, type Plot, readPlots } from './farm.ts';
import { followUpsOfToday } from './file-follow-ups.ts';
import type { PhotoShown } from './shown.ts';
import { lastPhotoOf } from './walk-sheet.ts';

export interface SheetJob {
  itemId: string;
  /** `Hand weed`. */
  what: string;
  /** In the note's own words, or null. */
  where: string | null;
  who: string | null;
  /** As it was said, and for this plot: `30 kg/ha N`, `300 g N`. */
  dose: string | null;
  doseForPlot: string | null;
  /** `Due by Fri 14 Mar`, `Late by 1 day: …`; empty where no day was given or it is said to be done. */
  due: string;
  late: boolean;
  /** Said to be done and not looked at yet: by whom (empty where not known), the step that said so. */
  reported: { by: string; stepId: string } | null;
  words: string;
}

export interface SheetPlot {
  plot: Plot;
  jobs: SheetJob[];
  protocol: string[];
  /** Nobody goes in before the re-entry time: after spraying, whoever has which job. */
  keepOut: string[];
  photo: PhotoShown | null;
}

export interface CrewSheet {
  day: string;
  who: string | null;
  plots: SheetPlot[];
  /** Work whose plot the note left open. */
  elsewhere: SheetJob[];
  /** Usual cautions for the work on the sheet, each once. */
  cautions: { work: string; words: string[] }[];
  people: string[];
}

/**
 * Work that is due on the day or before, or has no day, and what is said to be done since; with `who`, that person's
 * or crew's and what is nobody's. To look, to count and to decide is not the crew's.
 */
export async function crewSheet(diary: Diary, day: string, who: string | null = null): Promise<CrewSheet> {
  await followUpsOfToday(diary);
  const today = await localToday(diary);
  const rows = await diary.db
    .selectFrom('follow_ups')
    .select(['item', 'who'])
    .where('state', 'in', ['open', 'put_off', 'reported'])
    .where('kind', 'not in', ['inspect', 'measure'])
    .where('bucket', '!=', 'waiting')
    .orderBy(sql`due_to is null`)
    .orderBy('due_to')
    .orderBy('id')
    .execute();
  const open = rows.map((row) => JSON.parse(row.item) as FollowUp).filter((item) => isFor(item, day));
  const items = open.filter((item) => !who || !item.who || item.who === who);
  const plots = (await readPlots(diary)).filter(({ code }) => items.some((item) => item.plot === code));
  const keepOuts = await keepOutsOn(diary, day < today ? day : today);
  const sheet = await Promise.all(
    plots.map(async (plot) => ({
      plot,
      jobs: items.filter((item) => item.plot === plot.code).map((item) => toJob(item, plot, today)),
      protocol: plot.crop?.protocol ?? [],
      keepOut: keepOuts.get(plot.code) ?? [],
      photo: await lastPhotoOf(diary, plot.code),
    })),
  );
  const known = new Set(plots.map(({ code }) => code));
  return {
    day,
    who,
    plots: sheet,
    elsewhere: items.filter(({ plot }) => !plot || !known.has(plot)).map((item) => toJob(item, null, today)),
    cautions: cautionsOf(items),
    people: [...new Set(open.flatMap((item) => item.who ?? []))].sort(),
  };
}

function isFor(item: FollowUp, day: string): boolean {
  if (item.state === 'reported') return item.doneOn !== undefined && item.doneOn >= day;
  if (item.state === 'put_off') return item.due !== undefined && item.due.from <= day;
  return !item.due || item.due.from <= day;
}

/** By plot: sprayed so lately that the re-entry time may not be over. */
async function keepOutsOn({ db }: Diary, day: string): Promise<Map<string, string[]>> {
  const rows = await db.selectFrom('follow_ups').select('item').where('kind', '=', 'spray').execute();
  const keepOuts = new Map<string, string[]>();
  for (const { item } of rows) {
    const { plot, keepOut, doneOn } = JSON.parse(item) as FollowUp;
    if (!plot || !keepOut || keepOut.through < day || !doneOn) continue;
    keepOuts.set(plot, [`Sprayed on ${dayWords(doneOn)}. ${keepOut.because}`]);
  }
  return keepOuts;
}

function cautionsOf(items: FollowUp[]): CrewSheet['cautions'] {
  const byWork = new Map(
    items.filter(({ cautions }) => cautions.length > 0).map((item) => [workWords(item.kind), item.cautions]),
  );
  return [...byWork].map(([work, words]) => ({ work, words }));
}

function toJob(item: FollowUp, plot: Plot | null, today: string): SheetJob {
  const forPlot = item.dose && plot ? doseForPlot(item.dose, plotAreaM2(plot)) : null;
  const what = ACTION_WORDS[item.kind];
  const said = item.steps.filter((step) => step.what === 'reported_done' && !step.undone).at(-1);
  const reported = item.state === 'reported';
  return {
    itemId: item.id,
    what: `${what.charAt(0).toUpperCase()}${what.slice(1)}${item.plot && !plot ? ` in ${item.plot}` : ''}`,
    where: item.place ?? null,
    who: item.who ?? null,
    dose: item.dose ? sayDose(item.dose) : null,
    doseForPlot: forPlot && item.dose && forPlot.unit !== item.dose.unit ? sayDose(forPlot) : null,
    due: item.due && !reported ? dueSentence(item, today) : '',
    late: item.timing === 'late' && !reported,
    reported: reported ? { by: said?.by ?? '', stepId: said?.stepId ?? '' } : null,
    words: item.steps[0]?.words ?? '',
  };
}
