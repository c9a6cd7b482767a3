/** Opens the diary in its data folder, and catches up with what an earlier stop left undone. */
import { Temporal } from 'temporal-polyfill';
import { openDarkroom } from '../photos/darkroom.ts';
import { openStore } from '../storage/open-store.ts';
import type { Diary } from './diary.ts';
import { developWaiting } from './keep-photos.ts';
import { readAllAgain } from './read-again.ts';

/** Throws StoreRefused, with words, where the folder cannot be used. */
export function openDiary(folder: string, now: () => Temporal.Instant = () => Temporal.Now.instant()): Diary {
  const store = openStore(folder);
  const darkroom = openDarkroom();
  return {
    ...store,
    darkroom,
    now,
    close: async () => {
      await darkroom.close();
      await store.close();
    },
  };
}

/** Notes that an older reader read are read again; photos that wait are opened, which goes on in the background. */
export async function catchUp(diary: Diary): Promise<{ readAgain: number; photos: Promise<void> }> {
  return { readAgain: await readAllAgain(diary), photos: developWaiting(diary) };
}
