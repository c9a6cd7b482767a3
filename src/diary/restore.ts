/** Restores what take-out wrote: into an empty diary whole; into another one without overwriting anything. */
import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { z } from 'zod';
import { keepCopyOf, originalPath } from '../storage/media.ts';
import type { Diary, Refusal } from './diary.ts';
import { readAllAgain } from './read-again.ts';
import { SOURCE_TABLES, type WholeDiary } from './take-out.ts';

const shape = z.object({
  format: z.literal('bundwalk diary'),
  version: z.literal(1),
  tables: z.object(
    Object.fromEntries(
      SOURCE_TABLES.map((table) => [
        table,
        z.array(z.record(z.string(), z.union([z.string(), z.number(), z.null()]))),
      ]),
    ),
  ),
});

export interface Restored {
  rows: number;
  photos: number;
  missingPhotos: string[];
}

/** `folder` holds diary.json and photos/. */
export async function restore(diary: Diary, folder: string): Promise<Restored | Refusal> {
  const text = await readFile(join(folder, 'diary.json'), 'utf8').catch(() => null);
  if (text === null) return { refused: `There is no diary.json in ${folder}.` };
  const checked = shape.safeParse(parsed(text));
  if (!checked.success) {
    return {
      refused: `diary.json is not a diary that was taken out here (${checked.error.issues[0]!.path.join('.') || 'not JSON'}). Nothing was changed.`,
    };
  }
  const { tables } = checked.data as unknown as WholeDiary;
  const rows = await insertAll(diary, tables);
  const missingPhotos: string[] = [];
  for (const { id, kind } of tables.photos as { id: string; kind: string }[]) {
    const from = join(folder, 'photos', `${id}.${kind}`);
    if (existsSync(originalPath(diary.mediaFolder, id))) continue;
    if (existsSync(from)) await keepCopyOf(diary.mediaFolder, from);
    else missingPhotos.push(id);
  }
  await diary.db
    .updateTable('photos')
    .set({ developed_at: null })
    .where('id', 'not in', missingPhotos.length ? missingPhotos : [''])
    .execute();
  await readAllAgain(diary, { all: true });
  return { rows, photos: tables.photos.length, missingPhotos };
}

/** Rows that the diary has already stay as they are. */
async function insertAll(diary: Diary, tables: WholeDiary['tables']): Promise<number> {
  let inserted = 0;
  await diary.db.transaction().execute(async (db) => {
    for (const table of SOURCE_TABLES) {
      for (const row of tables[table] ?? []) {
        const answer = await db
          .insertInto(table)
          .values(row as never)
          .onConflict((clash) => clash.doNothing())
          .executeTakeFirst();
        inserted += Number(answer.numInsertedOrUpdatedRows ?? 0n);
      }
    }
  });
  return inserted;
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}
