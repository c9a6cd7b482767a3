/** A fact as a person writes it in a correction, checked at the edge against the vocabulary of the record. */
import { z } from 'zod';
import {
  ACTION_KINDS,
  ACTION_STATUSES,
  ATTRIBUTES,
  DOSE_UNITS,
  type Fact,
  FINDING_KINDS,
  FINDING_STATUSES,
  QUANTITY_UNITS,
  type Quantity,
  SEVERITIES,
  STAGES,
  TAXA,
  type Trigger,
} from '../reading/record.ts';
import { isDay } from './season-entry.ts';

const QUANTITIES = Object.keys(QUANTITY_UNITS) as [Quantity, ...Quantity[]];
const one = <T extends readonly [string, ...string[]]>(what: string, of: T) =>
  z.enum(of, { error: `Choose ${what} from the list.` });
const blank = <T extends z.ZodType>(shape: T) =>
  z.preprocess((value) => (value === '' || value === null ? undefined : value), shape);
const words = (what: string) =>
  blank(z.string().trim().max(300, `${what} is too long: 300 letters at the most.`).optional());
const day = z.string().refine(isDay, 'Write the day as 2031-07-14.');
const figure = (what: string) =>
  z.coerce.number({ error: `${what} is no number.` }).refine(Number.isFinite, `${what} is no number.`);
const plot = z.preprocess(
  (value) => (value === '' || value === undefined ? null : value),
  z.string().nullable(),
);

const trigger = z
  .string()
  .refine(
    (value) =>
      ['drained', 'dry', 'rain', 'if_worse', 'next_walk', ...STAGES].includes(value) ||
      (/^(after|before):/.test(value) && (ACTION_KINDS as readonly string[]).includes(value.split(':')[1]!)),
    'Choose what to wait for from the list.',
  )
  .transform((value) => value as Trigger);

const when = z
  .union([
    z
      .object({ from: day, to: day })
      .refine(({ from, to }) => from <= to, 'The last day comes before the first.'),
    z.object({ trigger, days: z.coerce.number().int().min(0).max(200).optional() }),
  ])
  .optional();

const dose = z
  .object({
    value: figure('The dose').refine((value) => value >= 0, 'The dose is below zero.'),
    unit: one('a unit', DOSE_UNITS),
    of: words('The material'),
  })
  .optional();

export const factInput: z.ZodType<Fact> = z.discriminatedUnion('list', [
  z.object({
    list: z.literal('stages'),
    fact: z.object({
      plot,
      stage: one('a stage', STAGES),
      status: one('how sure', ['current', 'approaching']),
    }),
  }),
  z.object({
    list: z.literal('ages'),
    fact: z.object({
      plot,
      days: figure('The age').refine(
        (value) => Number.isInteger(value) && value >= 0 && value < 400,
        'The age is a whole number of days below 400.',
      ),
      since: one('since when', ['transplanting', 'sowing']),
    }),
  }),
  z.object({
    list: z.literal('findings'),
    fact: z.object({
      plot,
      kind: one('a problem', FINDING_KINDS),
      status: one('how it stands', FINDING_STATUSES),
      severity: blank(one('how bad', SEVERITIES).optional()),
      taxon: blank(one('which one', TAXA).optional()),
      where: words('The place'),
      cause: words('The cause'),
    }),
  }),
  z.object({
    list: z.literal('measurements'),
    fact: z.object({
      plot,
      quantity: one('what was measured', QUANTITIES),
      value: figure('The figure'),
      where: words('The place'),
    }),
  }),
  z.object({
    list: z.literal('actions'),
    fact: z.object({
      plot,
      kind: one('the work', ACTION_KINDS),
      status: one('how it stands', ACTION_STATUSES),
      when,
      dose,
      who: words('The name'),
      hearsay: z.boolean().optional(),
    }),
  }),
  z.object({
    list: z.literal('lessons'),
    fact: z.object({ plot, text: z.string().trim().min(1, 'Write what to do otherwise.').max(2000) }),
  }),
  z.object({ list: z.literal('unvisited'), fact: z.object({ plot }) }),
  z.object({
    list: z.literal('comparisons'),
    fact: z.object({ attribute: one('what was compared', ATTRIBUTES), more: z.string(), less: z.string() }),
  }),
]) as unknown as z.ZodType<Fact>;
