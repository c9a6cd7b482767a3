import { existsSync } from 'node:fs';
import { Temporal } from 'temporal-polyfill';
import { describe, expect, test } from 'vitest';
import { readSeason } from '../../sample-notes/read-season.ts';
import { noteFiles } from './note-files.ts';

const { season, people, plots } = readSeason();
const notes = noteFiles();
const MONTHS = 'January February March April May June July August September October November December'.split(
  ' ',
);
const WEEKDAYS = 'Monday Tuesday Wednesday Thursday Friday Saturday Sunday'.split(' ');

describe('each sample note', () => {
  test.each(notes)('$name: header and words', (note) => {
    expect(note.unknown).toEqual([]);
    expect(note.on).toMatch(/^2031-\d\d-\d\d \d\d:\d\d$/);
    expect(people.map(({ name }) => name)).toContain(note.by);
    expect(note.name).toBe(`${note.on.replace(' ', '-').replace(':', '')}-${note.by.toLowerCase()}.txt`);
    if (note.plot) expect(plots.map(({ code }) => code)).toContain(note.plot);
    for (const photo of note.photos)
      expect(existsSync(new URL(`../../sample-notes/photos/${photo}`, import.meta.url)), photo).toBe(true);
    expect(note.words.length).toBeGreaterThan(0);
    expect(note.on.slice(0, 10) >= season.from && note.on.slice(0, 10) < season.today).toBe(true);
  });

  test.each(notes)('$name: plots that its words name are in the season', ({ words }) => {
    const named = words.match(/\b[EW]\d+\b/g) ?? [];
    for (const code of named) expect(plots.map((plot) => plot.code)).toContain(code);
  });
});

describe('dates in the words are true', () => {
  const dated = notes.flatMap(({ name, words }) =>
    [...words.matchAll(/\b(Mon|Tue|Wed|Thu|Fri|Sat|Sun)[a-z]*,? (\d{1,2}) (Jul|Aug|Sep)[a-z]*/g)].map(
      (found) => ({
        name,
        said: found[0],
        weekday: found[1]!,
        month: MONTHS.findIndex((month) => month.startsWith(found[3]!)) + 1,
        day: Number(found[2]),
      }),
    ),
  );
  test.each(dated)('$name: $said', ({ weekday, month, day }) => {
    expect(weekdayOf(new Temporal.PlainDate(2031, month, day).toString())).toContain(weekday);
  });

  const opening = notes
    .map(({ name, on, words }) => ({ name, on, weekday: WEEKDAYS.find((day) => words.startsWith(day)) }))
    .filter(({ weekday }) => weekday !== undefined);
  test.each(opening)('$name opens with its own day, $weekday', ({ on, weekday }) => {
    expect(weekdayOf(on.slice(0, 10))).toBe(weekday);
  });

  const aged = notes.flatMap(({ name, on, plot, words }) =>
    [...words.matchAll(/(?:\b([EW]\d+) )?\b(\d+) (DAT|days after sowing)/g)].map((found) => ({
      name,
      said: found[0],
      code: found[1] ?? plot,
      days: Number(found[2]),
      since: found[3] === 'DAT' ? ('planted' as const) : ('sown' as const),
      on: on.slice(0, 10),
    })),
  );
  test.each(aged.filter(({ code }) => code))('$name: $said', ({ code, days, since, on }) => {
    const from = plots.find((plot) => plot.code === code)!.crop[since]!;
    expect(Temporal.PlainDate.from(from).until(on).days).toBe(days);
  });

  test('there is enough to check', () => {
    expect(dated.length).toBeGreaterThanOrEqual(6);
    expect(opening.length).toBeGreaterThanOrEqual(6);
    expect(aged.filter(({ code }) => code).length).toBeGreaterThanOrEqual(15);
  });
});

describe('the notes tell of the work', () => {
  test('two or three walks a week, from planting to flowering', () => {
    const days = [...new Set(notes.map(({ on }) => on.slice(0, 10)))];
    const weeks = Temporal.PlainDate.from(days[0]!).until(days.at(-1)!).days / 7;
    expect(weeks).toBeGreaterThan(8);
    expect(days.length / weeks).toBeGreaterThan(2);
  });

  test('by all of the people, spoken and typed, from two words to a long ramble', () => {
    expect(new Set(notes.map(({ by }) => by))).toEqual(new Set(people.map(({ name }) => name)));
    expect(notes.filter(({ spoken }) => spoken).length).toBeGreaterThan(15);
    const lengths = notes.map(({ words }) => words.split(/\s+/).length);
    expect(Math.min(...lengths)).toBe(2);
    expect(Math.max(...lengths)).toBeGreaterThanOrEqual(150);
  });

  test('nobody fertilises a plot that is to have no nitrogen, nor weeds the unweeded check', () => {
    const unfed = plots.filter(({ treatment }) => treatment?.nitrogen === '0N').map(({ code }) => code);
    const unweeded = plots.filter(({ treatment }) => treatment?.weeding === 'none').map(({ code }) => code);
    for (const { plot, words, name } of notes) {
      if (unfed.includes(plot!)) expect(/urea|topdress/i.test(words), name).toBe(false);
      if (unweeded.includes(plot!))
        expect(/weeding (is )?(done|finish)|hand weed by/i.test(words), name).toBe(false);
    }
  });
});

const weekdayOf = (date: string): string => WEEKDAYS[Temporal.PlainDate.from(date).dayOfWeek - 1]!;
