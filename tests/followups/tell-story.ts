/** Turns the small notation of the stories into facts and steps, and items into words that a row can name. */
import { dayWords } from '../../src/followups/days.ts';
import {
  type DiaryFact,
  type FollowUp,
  type PersonStep,
  SETTLED,
  type StageForecast,
  snapshotOf,
} from '../../src/followups/item.ts';
import { dueSentence } from '../../src/followups/sentences.ts';
import type { ActionFact, Fact, When } from '../../src/reading/record.ts';
import { dayFrom, type StoryRow } from './read-stories.ts';

export interface Told {
  facts: DiaryFact[];
  steps: PersonStep[];
  forecasts: StageForecast[];
}

/** Adds what happens in the row; `items` are those before it, which steps are made on. */
export function tell(told: Told, row: StoryRow, items: FollowUp[]): void {
  const again = /^(.+), note of (.+)$/.exec(row.who);
  const by = again?.[1] ?? row.who;
  const observedAt = `${again ? dayFrom(again[2]!) : row.day}T07:${String(row.line % 60).padStart(2, '0')}`;
  const noteId = `note${row.line}`;
  row.what.forEach((event, i) => {
    const [head] = event.split(' ');
    if (head === 'forecast') tellForecast(told, event);
    else if (head === 'reread') reread(told, event);
    else if (head === 'page') told.steps.push(stepOf(row, event, i, items, by));
    else {
      const { plot, fact, words } = factOf(event, observedAt.slice(0, 10));
      const position = told.facts.filter((f) => f.noteId === noteId && f.fact.list === fact.list).length;
      told.facts.push({
        id: `${noteId}:${fact.list}:${position}`,
        noteId,
        observedAt,
        plot,
        by,
        fact,
        words,
      });
    }
  });
}

function tellForecast(told: Told, event: string): void {
  const [, plot, stage, ...day] = event.split(' ') as [string, string, StageForecast['stage'], ...string[]];
  told.forecasts = told.forecasts.filter((f) => f.plot !== plot || f.stage !== stage);
  told.forecasts.push({ plot, stage, date: dayFrom(day.join(' ')), sure: 'forecast' });
}

/** `reread 4 Mar spray as hand_weed`, `reread 4 Mar spray as nothing`. */
function reread(told: Told, event: string): void {
  const [, day, kind, now] = /^reread (\d+ \w+) (\w+) as (\w+)$/.exec(event)!;
  const touched = (f: DiaryFact) =>
    f.observedAt.startsWith(dayFrom(day!)) && f.fact.list === 'actions' && f.fact.fact.kind === kind;
  told.facts = told.facts.flatMap((f) => {
    if (!touched(f)) return [f];
    return now === 'nothing'
      ? []
      : [{ ...f, fact: { list: 'actions', fact: { ...f.fact.fact, kind: now } } as Fact }];
  });
}

const VERBS: Record<string, Partial<ActionFact>> = {
  plans: { status: 'planned' },
  weighs: { status: 'proposed' },
  rules_out: { status: 'ruled_out' },
  did: { status: 'done' },
  hears: { status: 'done', hearsay: true },
};

export function factOf(event: string, day: string): { plot: string | null; fact: Fact; words: string } {
  const quoted = /"([^"]*)"/.exec(event)?.[1];
  const bare = event.replace(/"[^"]*"/, '').trim();
  const [main, where] = bare.split(' @ ') as [string, string | undefined];
  const [plotWord, verb, ...rest] = main.split(' ') as [string, string, ...string[]];
  const plot = plotWord === 'somewhere' ? null : plotWord;
  const words = quoted ?? bare;
  const place = where ? { where: where.trim() } : {};
  const made = (fact: Fact) => ({ plot, fact, words });
  if (verb === 'not_reached') return made({ list: 'unvisited', fact: { plot } });
  if (verb === 'stage')
    return made({
      list: 'stages',
      fact: { plot, stage: rest[0], status: rest[1] ?? 'current' } as Extract<
        Fact,
        { list: 'stages' }
      >['fact'],
    });
  if (verb === 'reads')
    return made({
      list: 'measurements',
      fact: { plot, quantity: rest[0], value: Number(rest[1]), ...place } as Extract<
        Fact,
        { list: 'measurements' }
      >['fact'],
    });
  if (verb === 'sees') {
    const [kind, status = 'present', severity] = rest.filter((word) => !word.includes('='));
    const taxon = rest.find((word) => word.startsWith('taxon='))?.slice(6);
    const fact = { plot, kind, status, ...(severity && { severity }), ...(taxon && { taxon }), ...place };
    return made({ list: 'findings', fact } as Fact);
  }
  const cues = VERBS[verb];
  if (!cues) throw new Error(`no such verb: ${verb} in ${event}`);
  const kind = rest[0] as ActionFact['kind'];
  const more = rest.slice(1).join(' ');
  const who = /who=(\w+)/.exec(more)?.[1];
  const dose = /dose=([\d.]+),([^,\s]+),(\w+)/.exec(more);
  const fact: ActionFact = { plot, kind, status: 'planned', ...cues };
  const when = whenFrom(more.replace(/\b(who|dose)=\S+/g, '').trim(), day);
  if (when) fact.when = when;
  if (who) fact.who = who;
  if (dose) fact.dose = { value: Number(dose[1]), unit: dose[2] as 'kg/ha', of: dose[3]! };
  return made({ list: 'actions', fact });
}

/** `on 8 Mar`, `by 8 Mar`, `8 Mar to 10 Mar`, `when rain`, `when after:hand_weed + 3`. */
function whenFrom(words: string, day: string): When | undefined {
  if (!words) return undefined;
  const trigger = /^when (\S+)(?: \+ (\d+))?$/.exec(words);
  if (trigger) {
    const when = { trigger: trigger[1] } as Extract<When, { trigger: unknown }>;
    return trigger[2] ? { ...when, days: Number(trigger[2]) } : when;
  }
  const span = /^(?:on |by |to )?(.+?)(?: to (.+))?$/.exec(words)!;
  const from = dayFrom(span[1]!);
  if (words.startsWith('by ')) return { from: day, to: from };
  return { from, to: span[2] ? dayFrom(span[2]) : from };
}

const STEP =
  /^page (add|decide|report_done|look|put_off|drop|rule_out|reopen|match|apart|remark|undo)(?: (fixed|partly|not_fixed|seen))? (\w+ \S+(?: #\d)?)(?: (.+))?$/;

function stepOf(row: StoryRow, event: string, i: number, items: FollowUp[], by: string): PersonStep {
  const quoted = /"([^"]*)"/.exec(event)?.[1] ?? '';
  const parsed = STEP.exec(event.replace(/"[^"]*"/, '').trim());
  if (!parsed) throw new Error(`not a step: ${event}`);
  const [, kind, found, label, more = ''] = parsed as unknown as [
    string,
    PersonStep['kind'],
    PersonStep['found'],
    string,
    string | undefined,
  ];
  const id = `step${row.line}-${i}`;
  const at = `${row.day}T12:0${i}`;
  const firstHand = more.includes('seen with own eyes');
  const when = whenFrom(more.replace('seen with own eyes', '').trim(), row.day);
  const on =
    kind === 'report_done' || kind === 'look' ? (when as { from: string } | undefined)?.from : undefined;
  if (kind === 'add') {
    const [work, plot] = label.split(' ') as [ActionFact['kind'], string];
    return {
      id,
      itemId: id,
      at,
      by,
      kind,
      words: quoted,
      when,
      snapshot: { plot, kind: work, openedAt: at, words: quoted },
    };
  }
  const item = named(items, label);
  const asking = items.find((other) => other.kind === item.kind && other.unsure?.asks === 'which');
  return {
    ...{ id, itemId: item.id, at, by, kind, words: quoted, snapshot: snapshotOf(item) },
    ...(found && { found }),
    ...(on ? { on } : when && { when }),
    ...(firstHand && { firstHand }),
    ...((kind === 'match' || kind === 'apart') && { factId: asking?.unsure?.factId }),
    ...(kind === 'undo' && { undoes: lastMove(item) }),
  };
}

const lastMove = (item: FollowUp): string =>
  item.steps.filter((step) => !step.undone && step.what !== 'undo' && step.what !== 'remark').at(-1)!.id;

/** `hand_weed B2 #2` is the second opened; without a number the only one not settled, else the last opened. */
export function named(items: FollowUp[], label: string): FollowUp {
  const [kind, plot, number] = label.split(' ');
  const own = items
    .filter((item) => item.kind === kind && (item.plot ?? 'somewhere') === plot)
    .sort((a, b) => (a.openedAt + a.id < b.openedAt + b.id ? -1 : 1));
  const live = own.filter((item) => !SETTLED.includes(item.state));
  const item = number ? own[Number(number.slice(1)) - 1] : live.length === 1 ? live[0] : own.at(-1);
  if (!item)
    throw new Error(`no item ${label}; there are: ${items.map((x) => `${x.kind} ${x.plot}`).join(', ')}`);
  return item;
}

const short = (day: string): string => dayWords(day).slice(4);

/** Everything that a row may say of an item. */
export function wordsOf(item: FollowUp, today: string): string[] {
  const { due } = item;
  const span = due && (due.from === due.to ? short(due.to) : `${short(due.from)} to ${short(due.to)}`);
  return [
    item.state.replaceAll('_', ' '),
    item.bucket.replaceAll('_', ' '),
    `timing ${item.timing}`,
    ...(due ? [`due ${span}`, ...(due.forecast ? [`forecast ${short(due.from)}`] : [])] : ['no day']),
    ...(item.waitsFor ? [`waits for ${item.waitsFor.words}`] : []),
    ...(item.found ? [item.found.replaceAll('_', ' ')] : []),
    item.unsure ? `asks ${item.unsure.asks}` : 'asks nothing',
    ...(item.unsure ? [`asks ${item.unsure.candidates.length} candidates`] : []),
    ...(item.openedByHand ? ['by hand'] : []),
    ...(item.hearsay ? ['hearsay'] : []),
    ...(item.place ? [`place ${item.place}`] : []),
    item.doneOn ? `done ${short(item.doneOn)}` : 'not done',
    `opened ${short(item.openedAt.slice(0, 10))}`,
    ...(item.problem ? [`against ${item.problem}`] : []),
    ...(item.keepOut ? [`keep out to ${short(item.keepOut.through)}`] : []),
    ...(item.plan ? ['in a plan'] : []),
    ...(item.lookAt ? [`look at ${item.lookAt}`] : []),
    ...(item.who ? [`for ${item.who}`] : []),
    `steps ${item.steps.length}`,
    `says ${dueSentence(item, today)}`,
  ];
}
