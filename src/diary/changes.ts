/** What a change of photos or boundaries replaced is kept beside it, so that it can be taken back. */
import { randomUUID } from 'node:crypto';
import type { Db } from '../storage/open-store.ts';
import type { PhotoRow, PlotRow } from '../storage/tables.ts';
import type { Diary, Refusal } from './diary.ts';

export type PhotoState = Pick<PhotoRow, 'id' | 'plot' | 'placed_by' | 'clock_shift_min'>;
export type PlotState = Pick<PlotRow, 'code' | 'boundary'>;
export interface States {
  photos?: PhotoState[];
  plots?: PlotState[];
}

/** Makes the change and keeps what it replaced, both or neither; answers with the change's id. */
export async function makeChange(
  diary: Diary,
  { by, words, was, became }: { by: string; words: string; was: States; became: States },
): Promise<string> {
  const id = randomUUID();
  const at = diary.now().toString();
  await diary.db.transaction().execute(async (db) => {
    await setStates(db, became, at);
    await db
      .insertInto('changes')
      .values({
        id,
        at,
        by_whom: by,
        words,
        was: JSON.stringify(was),
        became: JSON.stringify(became),
        undone_at: null,
      })
      .execute();
  });
  return id;
}

export interface ChangeUndone {
  words: string;
  /** How many photos or plots were changed anew since and stay as they are. */
  left: number;
}

/** Puts back what the change replaced; what was changed anew since then stays. */
export async function undoChange(diary: Diary, id: string): Promise<ChangeUndone | Refusal> {
  const row = await diary.db.selectFrom('changes').selectAll().where('id', '=', id).executeTakeFirst();
  if (!row) return { refused: 'That change is not known here.', status: 404 };
  if (row.undone_at) return { words: row.words, left: 0 };
  const was = JSON.parse(row.was) as States;
  const became = JSON.parse(row.became) as States;
  const at = diary.now().toString();
  const left = await diary.db.transaction().execute(async (db) => {
    const stands = await readStates(db, became);
    const photos = (was.photos ?? []).filter((one) => same('id', one.id, stands.photos, became.photos));
    const plots = (was.plots ?? []).filter((one) => same('code', one.code, stands.plots, became.plots));
    await setStates(db, { photos, plots }, at);
    await db.updateTable('changes').set({ undone_at: at }).where('id', '=', id).execute();
    return (was.photos?.length ?? 0) + (was.plots?.length ?? 0) - photos.length - plots.length;
  });
  return { words: row.words, left };
}

const same = <T extends object>(key: keyof T, value: unknown, now: T[] = [], then: T[] = []): boolean => {
  const of = (states: T[]) => states.find((one) => one[key] === value);
  return JSON.stringify(sorted(of(now))) === JSON.stringify(sorted(of(then)));
};
const sorted = (state: object = {}): object => Object.entries(state).sort(([a], [b]) => (a < b ? -1 : 1));

async function readStates(db: Db, { photos = [], plots = [] }: States): Promise<States> {
  const ids = photos.map(({ id }) => id);
  const codes = plots.map(({ code }) => code);
  return {
    photos: await db
      .selectFrom('photos')
      .select(['id', 'plot', 'placed_by', 'clock_shift_min'])
      .where('id', 'in', ids.length ? ids : [''])
      .execute(),
    plots: await db
      .selectFrom('plots')
      .select(['code', 'boundary'])
      .where('code', 'in', codes.length ? codes : [''])
      .execute(),
  };
}

async function setStates(db: Db, { photos = [], plots = [] }: States, at: string): Promise<void> {
  for (const { id, ...state } of photos)
    await db.updateTable('photos').set(state).where('id', '=', id).execute();
  for (const { code, boundary } of plots)
    await db.updateTable('plots').set({ boundary, updated_at: at }).where('code', '=', code).execute();
}
