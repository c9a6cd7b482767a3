import type { Request, RequestHandler } from 'express';
import type { Diary } from '../../diary/diary.ts';
import { localToday, readPlots } from '../../diary/farm.ts';
import {
  cursorAfter,
  type FollowUpFilter,
  type FollowUpShown,
  followUpCounts,
  followUpLists,
  followUpPage,
  peopleWithWork,
} from '../../diary/follow-up-lists.ts';
import { isDay } from '../../diary/season-entry.ts';
import { thenAndNow } from '../../diary/then-and-now.ts';
import { addDays } from '../../followups/days.ts';
import type { Bucket } from '../../followups/item.ts';
import { BUCKET_WORDS } from '../../followups/sentences.ts';
import { ACTION_KINDS } from '../../reading/record.ts';
import { ACTION_WORDS, sayDay } from '../../reading/say-fact.ts';
import { asked } from '../form.ts';
import { jobLocals } from '../job-locals.ts';
import { showPage } from '../show-page.ts';
import { capital, showsChemicals, withQuery } from '../words.ts';

/** As many of each list as one reads at a time; the rest is one tap away. */
const MOST_AT_FIRST = 20;
const MOST_A_PAGE = 50;
const LEFT: Bucket[] = ['late', 'today', 'soon'];
const RIGHT: Bucket[] = ['to_look_again', 'waiting', 'to_decide', 'later', 'settled'];

interface ListShown {
  bucket: Bucket;
  words: string;
  items: FollowUpShown[];
  count: number;
  moreHref: string | null;
}

/**
 * `?plot=E1`, `?kind=hand_weed`, `?who=Celso`, `?by=2031-09-14` narrow it, `?settled=yes` widens it;
 * `?list=late&after=<cursor>` goes on with one list.
 */
export const followUpsPage =
  (diary: Diary): RequestHandler =>
  async (req, res) => {
    const filter = filterOf(req);
    const list = [...LEFT, ...RIGHT].find((bucket) => bucket === asked(req, 'list'));
    const [today, plots, people] = [
      await localToday(diary),
      await readPlots(diary),
      await peopleWithWork(diary),
    ];
    const told = list ? await oneList(diary, req, list, filter) : await allLists(diary, filter);
    const items = told.halves.flat().flatMap((one) => one.items);
    await showPage(req, res, 'follow-ups', {
      title: [...pressing(told.counts), 'Follow-ups'].join(' · '),
      place: 'Follow-ups',
      ...told,
      list: list ?? null,
      filter,
      narrowed: !!(filter.plot || filter.who || filter.kind || filter.dueBy),
      days: [0, 1, 3, 7].map((more) => ({
        value: addDays(today, more),
        words: more === 0 ? 'Late and today' : `By ${sayDay(addDays(today, more))}`,
      })),
      kinds: ACTION_KINDS.map((kind) => ({ value: kind, words: capital(ACTION_WORDS[kind]) })),
      plots,
      people: [...new Set([...people, ...(filter.who ? [filter.who] : [])])].sort(),
      calendarHref: '/follow-ups.ics',
      csvHref: withQuery('/follow-ups.csv', queryOf(filter)),
      sheetHref: withQuery('/crew-sheet', { who: filter.who }),
      settledHref: withQuery('/follow-ups', { ...queryOf(filter), settled: filter.settled ? '' : 'yes' }),
      chemicals: showsChemicals(items),
      pairs: await thenAndNow(diary, items.filter(isToBeLookedAt)),
      ...jobLocals(req, today),
    });
  };

/** The filter of the page's address; what cannot be read narrows nothing. */
export const filterOf = (req: Request): FollowUpFilter => ({
  plot: asked(req, 'plot') || undefined,
  kind: asked(req, 'kind') || undefined,
  who: asked(req, 'who') || undefined,
  dueBy: isDay(asked(req, 'by')) ? asked(req, 'by') : undefined,
  settled: asked(req, 'settled') === 'yes',
});

const queryOf = ({ plot, kind, who, dueBy, settled }: FollowUpFilter) => ({
  plot,
  kind,
  who,
  by: dueBy,
  settled: settled ? 'yes' : '',
});

export const isToBeLookedAt = ({ state }: FollowUpShown): boolean =>
  state === 'reported' || state === 'to_look';

interface Told {
  halves: ListShown[][];
  counts: { late: number; today: number };
  total: number;
}

async function allLists(diary: Diary, filter: FollowUpFilter): Promise<Told> {
  const lists = await followUpLists(diary, filter, MOST_AT_FIRST);
  const shown = (bucket: Bucket): ListShown => {
    const items = lists[bucket];
    const count = lists.counts[bucket];
    const more = items.length > 0 && count > items.length ? moreHref(filter, bucket, lastOf(items)) : null;
    return { bucket, words: BUCKET_WORDS[bucket], items, count, moreHref: more };
  };
  const halves = [LEFT, RIGHT].map((half) => half.map(shown).filter(({ items }) => items.length > 0));
  return { halves, counts: lists.counts, total: lists.total };
}

async function oneList(diary: Diary, req: Request, bucket: Bucket, filter: FollowUpFilter): Promise<Told> {
  const page = await followUpPage(diary, bucket, filter, asked(req, 'after') || undefined, MOST_A_PAGE);
  const { counts, total } = await followUpCounts(diary, filter);
  const shown: ListShown = {
    bucket,
    words: BUCKET_WORDS[bucket],
    items: page.items,
    count: counts[bucket],
    moreHref: page.more && moreHref(filter, bucket, page.more),
  };
  return { halves: [[shown], []], counts, total };
}

const lastOf = (items: FollowUpShown[]): string => {
  const last = items.at(-1)!;
  return cursorAfter({ due_to: last.dueTo, id: last.id });
};

const moreHref = (filter: FollowUpFilter, list: Bucket, after: string): string =>
  withQuery('/follow-ups', { ...queryOf(filter), list, after });

/** `3 late`, `2 today`; what is nought is left out. */
const pressing = ({ late, today }: Told['counts']): string[] => {
  const said = [late ? `${late} late` : '', today ? `${today} today` : ''].filter(Boolean).join(', ');
  return said ? [said] : [];
};
