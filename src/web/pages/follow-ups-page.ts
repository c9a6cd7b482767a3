import type { RequestHandler } from 'express';
import type { Diary } from '../../diary/diary.ts';
import { localNow, readPlots } from '../../diary/farm.ts';
import { type FollowUpShown, followUpLists } from '../../diary/follow-up-lists.ts';
import { asked } from '../form.ts';
import { jobLocals } from '../job-locals.ts';
import { showPage } from '../show-page.ts';
import { showsChemicals } from '../words.ts';

/** `?plot=E1`, `?kind=hand_weed`, `?who=Celso`, `?settled=yes` narrow or widen it. */
export const followUpsPage =
  (diary: Diary): RequestHandler =>
  async (req, res) => {
    const filter = {
      plot: asked(req, 'plot') || undefined,
      kind: asked(req, 'kind') || undefined,
      who: asked(req, 'who') || undefined,
      settled: asked(req, 'settled') === 'yes',
    };
    const [lists, plots, now] = await Promise.all([
      followUpLists(diary, filter),
      readPlots(diary),
      localNow(diary),
    ]);
    const everything = [
      ...lists.late,
      ...lists.today,
      ...lists.soon,
      ...lists.waiting,
      ...lists.to_look_again,
      ...lists.to_decide,
      ...lists.later,
      ...lists.settled,
    ];
    await showPage(req, res, 'follow-ups', {
      title: 'Follow-ups',
      place: 'Follow-ups',
      lists,
      filter,
      plots,
      people: peopleOf(everything, filter.who),
      chemicals: showsChemicals(everything),
      ...jobLocals(req, now.slice(0, 10)),
    });
  };

const peopleOf = (items: FollowUpShown[], chosen: string | undefined): string[] =>
  [...new Set([...items.map(({ who }) => who), chosen])].filter((name): name is string => !!name).sort();
