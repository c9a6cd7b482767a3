import type { RequestHandler } from 'express';
import { coverBeside } from '../../diary/cover-beside.ts';
import type { Diary } from '../../diary/diary.ts';
import { localNow } from '../../diary/farm.ts';
import { SHOWS, story } from '../../diary/story.ts';
import { thenAndNow } from '../../diary/then-and-now.ts';
import type { Strip } from '../../plots/season-strip.ts';
import { FINDING_KINDS } from '../../reading/record.ts';
import { FINDING_WORDS, STAGE_WORDS, sayDay } from '../../reading/say-fact.ts';
import { coverLineSvg, coverLineWords } from '../cover-line-svg.ts';
import { showRefusal } from '../errors.ts';
import { asked } from '../form.ts';
import { jobLocals } from '../job-locals.ts';
import { seasonStripSvg, seasonStripWords } from '../season-strip-svg.ts';
import { showPage } from '../show-page.ts';
import { capital, isChemical, plotHref, showsChemicals, withQuery } from '../words.ts';

const SHOW_WORDS = {
  notes: 'Everything',
  problems: 'Problems',
  work: 'Work',
  measurements: 'Measurements',
  photos: 'Photos',
};

/** The plot's story; `?problem=weeds`, `?show=work`, `?before=<cursor>`. */
export const plotPage =
  (diary: Diary): RequestHandler<{ code: string }> =>
  async (req, res) => {
    const problem = FINDING_KINDS.find((kind) => kind === asked(req, 'problem'));
    const show = SHOWS.find((name) => name === asked(req, 'show'));
    const before = asked(req, 'before') || undefined;
    const { code } = req.params;
    const [told, now, cover] = await Promise.all([
      story(diary, code, { problem, show, before }),
      localNow(diary),
      coverBeside(diary, code),
    ]);
    if (!told) {
      return showRefusal(req, res, {
        refused: `No plot is called ${code.slice(0, 40)}. See Plots for those that are set up, or add it under Season.`,
        status: 404,
      });
    }
    const here = plotHref(told.plot.code);
    await showPage(req, res, 'plot', {
      title: `Plot ${told.plot.code}`,
      place: 'Plots',
      ...told,
      narrowed: problem ?? (show && show !== 'notes' ? show : null),
      shows: SHOWS.map((name) => ({
        words: SHOW_WORDS[name],
        href: withQuery(here, { problem, show: name === 'notes' ? '' : name }),
        chosen: (show ?? 'notes') === name,
      })),
      problemLinks: told.problems.map(({ kind, count }) => ({
        words: `${capital(FINDING_WORDS[kind])} ${count}`,
        href: withQuery(here, { show, problem: problem === kind ? '' : kind }),
        chosen: problem === kind,
      })),
      olderHref: told.older && withQuery(here, { problem, show, before: told.older }),
      cover,
      coverSvg: cover && coverLineSvg(cover),
      coverWords: cover ? coverLineWords(cover) : [],
      lastSeenStage: seenStage(told.strip),
      stripSvg: told.strip && seasonStripSvg(told.strip, STAGE_WORDS),
      stripWords: told.strip ? seasonStripWords(told.strip, STAGE_WORDS) : [],
      chemicals:
        showsChemicals(told.open) ||
        told.days.some((day) =>
          day.notes.some(({ facts }) => facts.some((fact) => fact.list === 'actions' && isChemical(fact))),
        ),
      pairs: await thenAndNow(diary, told.open),
      ...jobLocals(req, now.slice(0, 10)),
    });
  };

const seenStage = (strip: Strip | null): string | null => {
  const last = strip?.observed.at(-1);
  return last ? `${STAGE_WORDS[last.stage]} first seen ${sayDay(last.day)}` : null;
};
