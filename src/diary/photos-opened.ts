/** How far the opening of photos has come. */
import type { Diary } from './diary.ts';

export interface PhotosOpened {
  kept: number;
  /** Kept, but not opened yet. */
  waiting: number;
  /** No picture could be made of them; the files are kept. */
  faulty: number;
}

export async function photosOpened({ db }: Diary): Promise<PhotosOpened> {
  const row = await db
    .selectFrom('photos')
    .select((eb) => [
      eb.fn.countAll<number>().as('kept'),
      eb.fn.count<number>('developed_at').as('opened'),
      eb.fn.count<number>('fault').as('faulty'),
    ])
    .executeTakeFirstOrThrow();
  const kept = Number(row.kept);
  return { kept, waiting: kept - Number(row.opened), faulty: Number(row.faulty) };
}

/** Which of these content hashes are kept already. */
export async function photosKnown({ db }: Diary, hashes: string[]): Promise<string[]> {
  if (hashes.length === 0) return [];
  const rows = await db.selectFrom('photos').select('id').where('id', 'in', hashes.slice(0, 500)).execute();
  return rows.map(({ id }) => id);
}
