/** Writes farm, season, crews, fields, plots and crops: the same row twice stays one, the later one wins. */
import type { Db } from './open-store.ts';
import type { CropRow, FarmRow, FieldRow, PlotRow, SeasonRow } from './tables.ts';

export const saveFarmRow = (db: Db, row: FarmRow) =>
  db
    .insertInto('farm')
    .values(row)
    .onConflict((clash) => clash.column('id').doUpdateSet(row))
    .execute();

export const saveSeasonRow = (db: Db, row: SeasonRow) =>
  db
    .insertInto('seasons')
    .values(row)
    .onConflict((clash) => clash.column('id').doUpdateSet(row))
    .execute();

/** A crew is known by its name; its id stays when its leader or size changes. */
export const saveCrewRow = (
  db: Db,
  row: { id: string; name: string; leader: string | null; people: number | null },
) =>
  db
    .insertInto('crews')
    .values(row)
    .onConflict((clash) => clash.column('name').doUpdateSet({ leader: row.leader, people: row.people }))
    .execute();

export const saveFieldRow = (db: Db, row: FieldRow) =>
  db
    .insertInto('fields')
    .values(row)
    .onConflict((clash) => clash.column('code').doUpdateSet(row))
    .execute();

export const savePlotRow = (db: Db, row: PlotRow) =>
  db
    .insertInto('plots')
    .values(row)
    .onConflict((clash) => clash.column('code').doUpdateSet(row))
    .execute();

export const saveCropRow = (db: Db, row: CropRow) =>
  db
    .insertInto('crops')
    .values(row)
    .onConflict((clash) => clash.column('id').doUpdateSet(row))
    .execute();

export const savePersonRow = (db: Db, row: { name: string; role: string | null }) =>
  db
    .insertInto('people')
    .values(row)
    .onConflict((clash) => clash.column('name').doUpdateSet({ role: row.role }))
    .execute();

export const saveVarietyRow = (db: Db, row: { name: string; days_to_maturity: number | null }) =>
  db
    .insertInto('varieties')
    .values(row)
    .onConflict((clash) => clash.column('name').doUpdateSet({ days_to_maturity: row.days_to_maturity }))
    .execute();
