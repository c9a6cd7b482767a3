/** The crew's sheet for a day: plots in walking order, what, where in the plot, how much, cautions, the last photo. */
import type { FollowUp } from '../followups/item.ts';
import { doseForPlot } from '../plots/dose-for-plot.ts';
import { plotAreaM2 } from '../plots/plot-area.ts';
import { ACTION_WORDS, sayDose } from '../reading/say-fact.ts';
import type { Diary } from './diary.ts';
import { type Plot, readPlots } from './farm.ts';
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
  dueTo: string | null;
  /** Said to be done, by whom, not looked at yet. */
  reported: boolean;
  cautions: string[];
  keepOut: string | null;
  words: string;
}

export interface SheetPlot {
  plot: Plot;
  jobs: SheetJob[];
  protocol: string[];
  photo: PhotoShown | null;
}

export interface CrewSheet {
  day: string;
  who: string | null;
  plots: SheetPlot[];
  /** Work whose plot the note left open. */
  elsewhere: SheetJob[];
  people: string[];
}

/** Work that is open and due on that day or before, or has no day; with `who`, that person's or crew's and what is nobody's. */
export async function crewSheet(diary: Diary, day: string, who: string | null = null): Promise<CrewSheet> {
  await followUpsOfToday(diary);
  const rows = await diary.db
    .selectFrom('follow_ups')
    .selectAll()
    .where('state', 'in', ['open', 'reported'])
    .where('kind', 'not in', ['inspect', 'measure'])
    .where('bucket', '!=', 'waiting')
    .where((eb) => eb.or([eb('due_from', 'is', null), eb('due_from', '<=', day)]))
    .orderBy('due_to')
    .execute();
  const items = rows
    .map((row) => JSON.parse(row.item) as FollowUp)
    .filter((item) => !who || !item.who || item.who === who);
  const plots = await readPlots(diary);
  const sheet = await Promise.all(
    plots
      .filter((plot) => items.some((item) => item.plot === plot.code))
      .map(async (plot) => ({
        plot,
        jobs: items.filter((item) => item.plot === plot.code).map((item) => toJob(item, plot)),
        protocol: plot.crop?.protocol ?? [],
        photo: await lastPhotoOf(diary, plot.code),
      })),
  );
  return {
    day,
    who,
    plots: sheet,
    elsewhere: items.filter((item) => item.plot === null).map((item) => toJob(item, null)),
    people: [...new Set(rows.map((row) => row.who).filter((name): name is string => name !== null))].sort(),
  };
}

function toJob(item: FollowUp, plot: Plot | null): SheetJob {
  const forPlot = item.dose && plot ? doseForPlot(item.dose, plotAreaM2(plot)) : null;
  const what = ACTION_WORDS[item.kind];
  return {
    itemId: item.id,
    what: what.charAt(0).toUpperCase() + what.slice(1),
    where: item.place ?? null,
    who: item.who ?? null,
    dose: item.dose ? sayDose(item.dose) : null,
    doseForPlot: forPlot && item.dose && forPlot.unit !== item.dose.unit ? sayDose(forPlot) : null,
    dueTo: item.due?.to ?? null,
    reported: item.state === 'reported',
    cautions: item.cautions,
    keepOut: item.keepOut?.because ?? null,
    words: item.steps[0]?.words ?? '',
  };
}
