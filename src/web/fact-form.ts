/** The form in which a person writes a fact: what each list asks, in words, and how its answers become a fact. */
import {
  ACTION_KINDS,
  ATTRIBUTES,
  DOSE_UNITS,
  type Fact,
  FINDING_KINDS,
  LIST_NAMES,
  type ListName,
  QUANTITY_UNITS,
  STAGES,
  TAXA,
} from '../reading/record.ts';
import { ACTION_WORDS, attributeNoun, FINDING_WORDS, STAGE_WORDS, taxonWords } from '../reading/say-fact.ts';
import type { Form } from './form.ts';
import { capital } from './words.ts';

export interface Choice {
  value: string;
  words: string;
}
export interface Question {
  /** Path inside the fact: `dose.value`. */
  name: string;
  label: string;
  hint?: string;
  as: 'choice' | 'few' | 'words' | 'figure' | 'day' | 'plot' | 'tick' | 'long';
  choices?: Choice[];
}

const choices = <T extends string>(values: readonly T[], say: (value: T) => string): Choice[] =>
  values.map((value) => ({ value, words: capital(say(value)) }));
const spaced = (value: string): string => value.replaceAll('_', ' ');
const optional = (list: Choice[], words: string): Choice[] => [{ value: '', words }, ...list];
const withUnit = (quantity: keyof typeof QUANTITY_UNITS): string =>
  `${spaced(quantity).replace(/ pct$/, '')}, ${QUANTITY_UNITS[quantity].replace('m2', 'm²').replace('degC', '°C')}`;

const PLOT: Question = { name: 'plot', label: 'Plot', as: 'plot' };
const WHERE: Question = {
  name: 'where',
  label: 'Where in the plot',
  hint: 'Such as: north bund.',
  as: 'words',
};

export const LIST_WORDS: Record<ListName, string> = {
  findings: 'A problem, or its absence',
  measurements: 'A measurement or count',
  actions: 'Work done, planned or considered',
  stages: 'The crop’s stage',
  ages: 'The crop’s age',
  lessons: 'A lesson for next season',
  unvisited: 'A plot that was not looked at',
  comparisons: 'One plot against another',
};

export const QUESTIONS: Record<ListName, Question[]> = {
  stages: [
    PLOT,
    { name: 'stage', label: 'Stage', as: 'choice', choices: choices(STAGES, (stage) => STAGE_WORDS[stage]) },
    {
      name: 'status',
      label: 'Is it there?',
      as: 'few',
      choices: [
        { value: 'current', words: 'There now' },
        { value: 'approaching', words: 'Close to it' },
      ],
    },
  ],
  ages: [
    PLOT,
    { name: 'days', label: 'Days', as: 'figure' },
    {
      name: 'since',
      label: 'Counted from',
      as: 'few',
      choices: [
        { value: 'transplanting', words: 'Transplanting' },
        { value: 'sowing', words: 'Sowing' },
      ],
    },
  ],
  findings: [
    PLOT,
    {
      name: 'kind',
      label: 'Problem',
      as: 'choice',
      choices: choices(FINDING_KINDS, (kind) => FINDING_WORDS[kind]),
    },
    {
      name: 'status',
      label: 'How it stands',
      as: 'few',
      choices: [
        { value: 'present', words: 'Seen' },
        { value: 'suspected', words: 'Perhaps' },
        { value: 'risk', words: 'May come' },
        { value: 'absent', words: 'Looked for, not there' },
        { value: 'cleared', words: 'Gone again' },
      ],
    },
    {
      name: 'severity',
      label: 'How bad',
      as: 'few',
      choices: [
        { value: '', words: 'Not said' },
        { value: 'slight', words: 'Slight' },
        { value: 'moderate', words: 'Moderate' },
        { value: 'severe', words: 'Severe' },
      ],
    },
    {
      name: 'taxon',
      label: 'Which one',
      as: 'choice',
      choices: optional(choices(TAXA, taxonWords), 'Not said'),
    },
    WHERE,
    { name: 'cause', label: 'Put down to', as: 'words' },
  ],
  measurements: [
    PLOT,
    {
      name: 'quantity',
      label: 'What was measured',
      as: 'choice',
      choices: choices(Object.keys(QUANTITY_UNITS) as (keyof typeof QUANTITY_UNITS)[], withUnit),
    },
    { name: 'value', label: 'Figure', hint: 'In the unit that stands behind the name.', as: 'figure' },
    WHERE,
  ],
  actions: [
    PLOT,
    {
      name: 'kind',
      label: 'Work',
      as: 'choice',
      choices: choices(ACTION_KINDS, (kind) => ACTION_WORDS[kind]),
    },
    {
      name: 'status',
      label: 'How it stands',
      as: 'few',
      choices: [
        { value: 'planned', words: 'To be done' },
        { value: 'done', words: 'Done' },
        { value: 'proposed', words: 'Considered' },
        { value: 'ruled_out', words: 'Decided against' },
      ],
    },
    { name: 'hearsay', label: 'Only somebody else’s word', as: 'tick' },
    { name: 'who', label: 'Who does it', as: 'words' },
    { name: 'when.from', label: 'From day', as: 'day' },
    { name: 'when.to', label: 'To day', as: 'day' },
    {
      name: 'when.trigger',
      label: 'Or wait for',
      as: 'choice',
      choices: [
        { value: '', words: 'Nothing' },
        { value: 'drained', words: 'Once it is drained' },
        { value: 'dry', words: 'Once it is dry' },
        { value: 'rain', words: 'After rain' },
        { value: 'if_worse', words: 'If it gets worse' },
        { value: 'next_walk', words: 'On the next walk' },
        ...STAGES.map((stage) => ({ value: stage, words: `At ${STAGE_WORDS[stage]}` })),
        ...ACTION_KINDS.map((kind) => ({ value: `after:${kind}`, words: `After: ${ACTION_WORDS[kind]}` })),
      ],
    },
    { name: 'dose.value', label: 'Dose', as: 'figure' },
    {
      name: 'dose.unit',
      label: 'Unit of the dose',
      as: 'choice',
      choices: optional(
        choices(DOSE_UNITS, (unit) => unit),
        'None',
      ),
    },
    { name: 'dose.of', label: 'Material', as: 'words' },
  ],
  lessons: [PLOT, { name: 'text', label: 'What to do otherwise', as: 'long' }],
  unvisited: [PLOT],
  comparisons: [
    { name: 'more', label: 'The plot with more of it', as: 'plot' },
    {
      name: 'attribute',
      label: 'What was compared',
      as: 'choice',
      choices: choices(ATTRIBUTES, attributeNoun),
    },
    { name: 'less', label: 'The plot with less of it', as: 'plot' },
  ],
};

export const isList = (name: string): name is ListName => (LIST_NAMES as readonly string[]).includes(name);

/** `{list, fact}` as `changeFact` and `addFact` take it; they check it. */
export function readFactForm(form: Form): { list: string; fact: Record<string, unknown> } {
  const list = form.list ?? '';
  const fact: Record<string, unknown> = {};
  for (const { name, as } of isList(list) ? QUESTIONS[list] : []) {
    const value = (form[name] ?? '').trim();
    if (value === '') continue;
    const [part, inner] = name.split('.') as [string, string | undefined];
    const plain = as === 'tick' ? true : value;
    if (inner) fact[part] = { ...(fact[part] as object | undefined), [inner]: plain };
    else fact[part] = plain;
  }
  if (list !== 'comparisons' && !('plot' in fact)) fact.plot = null;
  return { list, fact: { ...fact, ...oneTime(fact.when as Record<string, string> | undefined) } };
}

/** A day alone stands for both ends; a wait for an event leaves the days out. */
function oneTime(when: Record<string, string> | undefined): { when?: unknown } {
  if (!when) return {};
  if (when.trigger) return { when: { trigger: when.trigger } };
  return { when: { from: when.from ?? when.to, to: when.to ?? when.from } };
}

/** A fact as the answers of its form. */
export function answersOf({ list, fact }: Fact): Form {
  const form: Form = { list };
  for (const [name, value] of Object.entries(fact)) {
    if (value !== null && typeof value === 'object') {
      for (const [inner, one] of Object.entries(value)) form[`${name}.${inner}`] = String(one);
    } else if (value !== null && value !== undefined && value !== false) form[name] = String(value);
  }
  return form;
}
