/** The walk: plots in walking order, with what stands open, when each was last looked at, and its last photo. */
import { cropAge } from '../plots/expected-stages.ts';
import type { Stage } from '../reading/record.ts';
import { STAGE_WORDS } from '../reading/say-fact.ts';
import type { Diary } from './diary.ts';
import { localToday, type Plot, readPlots } from './farm.ts';
import { type FollowUpShown, openOnPlot } from './follow-up-lists.ts';
import { type PhotoShown, showPhoto } from './shown.ts';

export interface WalkStop {
  plot: Plot;
  age: string | null;
  /** The stage that was seen last, in words, with its day; or null. */
  stage: { words: string; day: string } | null;
  open: FollowUpShown[];
  lastPhoto: PhotoShown | null;
  /** Day of the last note that speaks of the plot; `not reached` does not count as looked at. */
  lastSeen: string | null;
}

export async function walkSheet(diary: Diary): Promise<WalkStop[]> {
  const today = await localToday(diary);
  const plots = await readPlots(diary);
  return Promise.all(
    plots.map(async (plot) => {
      const [stage, open, lastPhoto, lastSeen] = await Promise.all([
        lastStage(diary, plot.code),
        openOnPlot(diary, plot.code),
        lastPhotoOf(diary, plot.code),
        lastSeenOn(diary, plot.code),
      ]);
      return { plot, age: plot.crop ? cropAge(plot.crop, today) : null, stage, open, lastPhoto, lastSeen };
    }),
  );
}

async function lastStage({ db }: Diary, code: string): Promise<WalkStop['stage']> {
  const row = await db
    .selectFrom('facts')
    .select(['kind', 'observed_at'])
    .where('plot', '=', code)
    .where('list', '=', 'stages')
    .where('status', '=', 'current')
    .orderBy('observed_at', 'desc')
    .limit(1)
    .executeTakeFirst();
  return row ? { words: STAGE_WORDS[row.kind as Stage], day: row.observed_at.slice(0, 10) } : null;
}

export async function lastPhotoOf({ db }: Diary, code: string): Promise<PhotoShown | null> {
  const row = await db
    .selectFrom('photos')
    .innerJoin('note_photos', 'note_photos.photo_id', 'photos.id')
    .innerJoin('notes', 'notes.id', 'note_photos.note_id')
    .selectAll('photos')
    .select('notes.text')
    .where('photos.plot', '=', code)
    .orderBy('notes.observed_at', 'desc')
    .limit(1)
    .executeTakeFirst();
  return row ? showPhoto(row, row.text) : null;
}

async function lastSeenOn({ db }: Diary, code: string): Promise<string | null> {
  const row = await db
    .selectFrom('facts')
    .select((eb) => eb.fn.max('observed_at').as('at'))
    .where('plot', '=', code)
    .where('list', '!=', 'unvisited')
    .executeTakeFirst();
  return row?.at?.slice(0, 10) ?? null;
}
