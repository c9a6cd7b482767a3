/**
 * The season strip drawn: places along it are percentages, so that one drawing fits every width and its letters keep
 * their size. The same in words beside it.
 */
import { addDays, daysBetween } from '../followups/days.ts';
import type { Strip, StripMark } from '../plots/season-strip.ts';
import type { Stage } from '../reading/record.ts';
import { sayDay } from '../reading/say-fact.ts';
import { escapeXml } from './escape-xml.ts';
import { capital } from './words.ts';

type StageWords = Record<Stage, string>;
const BAND = { top: 56, height: 28 };
const SEEN = { top: 86, height: 26 };
const BASE = SEEN.top + SEEN.height;
const MARKS_Y = 38;

export function seasonStripSvg(strip: Strip, words: StageWords): string {
  const along = placesOf(strip);
  const parts = [
    ...strip.expected.map(({ stage, from, to }) =>
      expectedBand(along, stage, from, addDays(to, 1), words[stage]),
    ),
    ...strip.observed.map((_, at) => seenBand(along, strip, at, words)),
    line('base', '0%', '100%', BASE),
    ...firstsOfMonths(strip).map((day) => month(along, day)),
    ...strip.marks.map((mark) => drawnMark(along, mark)),
    strip.today ? todayLine(along(strip.today)) : '',
  ];
  return `<svg class="strip" width="100%" height="158" role="img" aria-label="${escapeXml(seasonStripWords(strip, words).slice(0, 3).join(' '))}">${parts.join('')}</svg>`;
}

/** Percent of the way from the first day to the last. */
function placesOf({ from, to }: Strip): (day: string) => number {
  const days = Math.max(1, daysBetween(from, to));
  return (day) => Math.round((Math.min(Math.max(daysBetween(from, day), 0), days) / days) * 10_000) / 100;
}

function expectedBand(
  along: (day: string) => number,
  stage: Stage,
  from: string,
  to: string,
  words: string,
): string {
  const [start, end] = [along(from), along(to)];
  const width = Math.round((end - start) * 100) / 100;
  const label = stageLabel('stage', start, width, words, BAND.top + 20);
  return `<rect class="expected" data-stage="${stage}" x="${start}%" y="${BAND.top}" width="${width}%" height="${BAND.height}"/>${label}`;
}

/** Solid from the day a stage was first seen to the day the next one was, or to today. */
function seenBand(
  along: (day: string) => number,
  { observed, today, to }: Strip,
  at: number,
  words: StageWords,
): string {
  const { stage, day } = observed[at]!;
  const start = along(day);
  const until = observed[at + 1]?.day ?? (today && today > day ? today : to);
  const width = Math.max(0.8, round(along(until) - start));
  return (
    `<rect class="observed" x="${start}%" y="${SEEN.top}" width="${width}%" height="${SEEN.height}"/>` +
    stageLabel('seen-word', start, width, words[stage], SEEN.top + 19)
  );
}

/** The stage's name where it fits: on every width, only on wide ones, or not at all (the words below say it too). */
function stageLabel(css: string, start: number, width: number, words: string, y: number): string {
  const name = words.replace(/ stage$/, '');
  const room =
    width >= name.length * 2.6 + 3.5 ? 'phone' : width >= name.length * 0.85 + 1.2 ? 'desk' : 'none';
  return room === 'none'
    ? ''
    : `<text class="${css} ${room}" x="${start}%" dx="6" y="${y}">${escapeXml(name)}</text>`;
}

const round = (value: number): number => Math.round(value * 100) / 100;

function month(along: (day: string) => number, day: string): string {
  const x = along(day);
  const name =
    x > 96 ? '' : `<text class="month" x="${x}%" dx="3" y="${BASE + 22}">${sayDay(day).split(' ')[2]}</text>`;
  return `<line class="tick" x1="${x}%" x2="${x}%" y1="${BASE}" y2="${BASE + 8}"/>${name}`;
}

function drawnMark(along: (day: string) => number, { day, kind, words }: StripMark): string {
  const shape = {
    done: '<circle class="done" r="6"/>',
    due: '<circle class="due" r="6"/>',
    problem: '<path class="problem" d="M0-7 7 6H-7Z"/>',
  }[kind];
  const y = kind === 'problem' ? MARKS_Y - 18 : MARKS_Y;
  return `<svg x="${along(day)}%" y="${y}" overflow="visible"><title>${escapeXml(`${sayDay(day)}: ${words}`)}</title>${shape}</svg>`;
}

function todayLine(x: number): string {
  const anchor = x > 85 ? 'end' : x < 15 ? 'start' : 'middle';
  return (
    `<line class="today" x1="${x}%" x2="${x}%" y1="8" y2="${BASE + 26}"/>` +
    `<text class="today-word" x="${x}%" y="${BASE + 43}" text-anchor="${anchor}">today</text>`
  );
}

const line = (css: string, x1: string, x2: string, y: number): string =>
  `<line class="${css}" x1="${x1}" x2="${x2}" y1="${y}" y2="${y}"/>`;

function firstsOfMonths({ from, to }: Strip): string[] {
  const firsts: string[] = [];
  for (let day = from; day <= to; day = addDays(day, 1)) if (day.endsWith('-01')) firsts.push(day);
  return firsts;
}

/** Sentences that say what the drawing shows. */
export function seasonStripWords(
  { from, to, today, expected, observed, marks }: Strip,
  words: StageWords,
): string[] {
  const of = (kind: StripMark['kind']): string =>
    marks
      .filter((mark) => mark.kind === kind)
      .map(({ day, words: what }) => `${sayDay(day)}: ${what.replace(/\.$/, '')}`)
      .join('; ');
  return [
    `The season runs from ${sayDay(from)} to ${sayDay(to)}${today ? `; today is ${sayDay(today)}` : ''}.`,
    sentence('Seen', observed.map(({ stage, day }) => `${words[stage]} on ${sayDay(day)}`).join(', ')),
    sentence(
      'Expected',
      expected.map(({ stage, from: start }) => `${words[stage]} from ${sayDay(start)}`).join(', '),
    ),
    sentence('Work done', of('done')),
    sentence('Work due', of('due')),
    sentence('Problems', of('problem')),
  ].filter(Boolean);
}

const sentence = (start: string, rest: string): string => (rest ? `${capital(start)}: ${rest}.` : '');
