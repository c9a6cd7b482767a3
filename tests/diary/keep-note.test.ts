import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { type Diary, isRefusal } from '../../src/diary/diary.ts';
import { followUpsOfToday } from '../../src/diary/file-follow-ups.ts';
import { keepNote, type NoteKept } from '../../src/diary/keep-note.ts';
import { developWaiting } from '../../src/diary/keep-photos.ts';
import { notePage } from '../../src/diary/note-page.ts';
import { hashOfFile, originalPath } from '../../src/storage/media.ts';
import { openTestDiary } from './test-diary.ts';

let diary: Diary;
let end: () => Promise<void>;
beforeEach(async () => {
  ({ diary, end } = await openTestDiary());
});
afterEach(() => end());

const NOTE = {
  id: 'note-0001',
  text: 'B1: weeds thick along the north bund, hand weed by Friday.',
  observedAt: '2031-07-14T07:10',
  author: 'Odalys',
};

async function received(name: string, bytes: Uint8Array): Promise<{ path: string; name: string }> {
  const folder = join(diary.mediaFolder, 'incoming');
  mkdirSync(folder, { recursive: true });
  const path = join(folder, `${name}-${readdirSync(folder).length}`);
  writeFileSync(path, bytes);
  return { path, name };
}
const picture = (): Promise<Buffer> =>
  sharp({ create: { width: 900, height: 600, channels: 3, background: '#4a7' } })
    .jpeg()
    .toBuffer();

describe('a note is kept', () => {
  test('once, however often it is sent', async () => {
    const first = (await keepNote(diary, NOTE)) as NoteKept;
    const second = (await keepNote(diary, NOTE)) as NoteKept;
    expect([first.twice, second.twice]).toEqual([false, true]);
    expect(await diary.db.selectFrom('notes').selectAll().execute()).toHaveLength(1);
  });

  test('once when it is sent twenty times at the same moment', async () => {
    const answers = await Promise.all(Array.from({ length: 20 }, () => keepNote(diary, NOTE)));
    expect(answers.filter((answer) => !isRefusal(answer) && !answer.twice)).toHaveLength(1);
    expect(await diary.db.selectFrom('notes').selectAll().execute()).toHaveLength(1);
  });

  test('and the same id with other words is refused, so that neither is lost', async () => {
    await keepNote(diary, NOTE);
    const answer = await keepNote(diary, { ...NOTE, text: 'something else' });
    expect(answer).toMatchObject({ status: 409, field: 'id' });
    expect((await notePage(diary, NOTE.id))!.note.text).toBe(NOTE.text);
  });

  test('with its facts, their words and its follow-up', async () => {
    await keepNote(diary, NOTE);
    const page = (await notePage(diary, NOTE.id))!;
    const weeds = page.facts.find((fact) => fact.list === 'findings')!;
    expect(weeds).toMatchObject({ plot: 'B1', kind: 'weeds', status: 'present' });
    expect(NOTE.text.slice(weeds.evidence[0]!.start, weeds.evidence[0]!.end).toLowerCase()).toContain(
      'weeds',
    );
    await followUpsOfToday(diary);
    const items = await diary.db.selectFrom('follow_ups').selectAll().execute();
    expect(items).toMatchObject([{ plot: 'B1', kind: 'hand_weed', state: 'open', due_to: '2031-07-18' }]);
  });

  test('at the time of the farm where it brings none', async () => {
    const { note } = (await keepNote(diary, { id: 'note-0002', text: 'all fine' })) as NoteKept;
    expect(note.observed_at).toBe('2031-07-14T08:00');
  });
});

describe('what cannot be kept is answered in words', () => {
  const cases: [string, object, RegExp][] = [
    ['no words and no photo', { text: '   ' }, /empty/],
    ['a plot that nobody set up', { plot: 'Z9' }, /No plot is called Z9.*B1, B2/],
    ['a day that does not exist', { observedAt: '2031-02-30T07:00' }, /no date/],
    ['a time of another form', { observedAt: 'yesterday' }, /no date and time/],
    ['no id', { id: undefined }, /without its id/],
    ['an id with strange letters', { id: '../../x' }, /not of the right form/],
    ['a text of a million letters', { text: 'x'.repeat(1_000_000) }, /longer than 200,000/],
    ['a text with a null character', { text: 'weeds\u0000' }, /character that is no text/],
  ];
  test.each(cases)('%s', async (_name, change, words) => {
    const answer = await keepNote(diary, { ...NOTE, ...change } as never);
    expect(isRefusal(answer) && answer.refused).toMatch(words);
    expect(await diary.db.selectFrom('notes').selectAll().execute()).toHaveLength(0);
  });
});

describe('photos of a note', () => {
  test('lie byte for byte under the hash of their content, with two smaller copies', async () => {
    const bytes = await picture();
    const { photos } = (await keepNote(diary, {
      ...NOTE,
      photos: [await received('gap.jpg', bytes)],
    })) as NoteKept;
    await developWaiting(diary);
    const id = photos[0]!.id!;
    expect(readFileSync(originalPath(diary.mediaFolder, id))).toEqual(bytes);
    expect(await hashOfFile(originalPath(diary.mediaFolder, id))).toBe(id);
    const shown = (await notePage(diary, NOTE.id))!.photos;
    expect(shown).toMatchObject([{ id, plot: 'B1', placedBy: 'words', fault: null }]);
    expect(await sharp(`${originalPath(diary.mediaFolder, id)}.small.webp`).metadata()).toMatchObject({
      format: 'webp',
      width: 480,
    });
  });

  test('sent twice are one photo, also under another name', async () => {
    const bytes = await picture();
    await keepNote(diary, {
      ...NOTE,
      photos: [await received('a.jpg', bytes), await received('b.jpg', bytes)],
    });
    expect(await diary.db.selectFrom('photos').selectAll().execute()).toHaveLength(1);
    await developWaiting(diary);
  });

  test('that are none are named, and the note stands', async () => {
    const answer = (await keepNote(diary, {
      ...NOTE,
      photos: [
        await received('list.jpg', Buffer.from('buy rope')),
        await received('void.jpg', Buffer.alloc(0)),
      ],
    })) as NoteKept;
    expect(answer.photos.map(({ refused }) => refused)).toEqual([
      expect.stringMatching(/list.jpg is no photo/),
      expect.stringMatching(/void.jpg is empty/),
    ]);
    expect(await notePage(diary, NOTE.id)).not.toBeNull();
    expect(readdirSync(join(diary.mediaFolder, 'incoming'))).toEqual([]);
  });

  test('that are cut off keep their original and say so', async () => {
    const whole = await picture();
    const { photos } = (await keepNote(diary, {
      ...NOTE,
      photos: [await received('cut.jpg', whole.subarray(0, whole.length / 3))],
    })) as NoteKept;
    await developWaiting(diary);
    const [shown] = (await notePage(diary, NOTE.id))!.photos;
    expect(shown!.fault).toMatch(/cut off or damaged.*Send it once more.*original is kept/);
    expect(readFileSync(originalPath(diary.mediaFolder, photos[0]!.id!))).toHaveLength(
      Math.floor(whole.length / 3),
    );
  });
});
