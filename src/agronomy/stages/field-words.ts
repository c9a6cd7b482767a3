/** What people call the stages, and the BBCH codes meant. The codes are the scale's; which word means which is ours. */
import { type Fault, fault } from '../fault.ts';
import type { Sourced } from '../source.ts';

export interface StageWords extends Sourced {
  words: readonly string[];
  /** First and last code; the same where the words mean one. */
  from: string;
  to: string;
  remark?: string;
}

const OURS = 'common practice: our reading of field words, on the BBCH table';
const row = (from: string, to: string, words: string[], remark?: string): StageWords => ({
  words,
  from,
  to,
  remark,
  source: OURS,
  unconfirmed: true,
});

export const FIELD_WORDS: readonly StageWords[] = [
  row('01', '07', ['germination', 'sprouting', 'pre-germinated seed']),
  row('07', '07', ['coleoptile emerged']),
  row('09', '09', ['emergence']),
  row('10', '13', ['seedling'], 'up to the first tiller'),
  row('21', '21', ['first tiller']),
  row('21', '23', ['early tillering'], 'the first tiller comes with about leaf 5'),
  row('22', '28', ['active tillering', 'tillering']),
  row('29', '29', ['maximum tillering', 'maximum number of tillers'], 'in early varieties 30 may come first'),
  row('30', '30', ['panicle initiation', 'green ring'], 'needs a stem cut open'),
  row('32', '32', ['panicle 1-2 mm']),
  row('34', '34', ['internode elongation', 'jointing', 'stem elongation']),
  row('37', '39', ['flag leaf']),
  row('39', '39', ['flag leaf open', 'collars aligned']),
  row('41', '49', ['booting', 'boot']),
  row('41', '41', ['early boot']),
  row('43', '43', ['mid boot']),
  row('45', '45', ['late boot']),
  row('51', '59', ['heading']),
  row('51', '51', ['panicle tip emerged']),
  row(
    '55',
    '55',
    ['50 % heading', 'middle of panicle emergence'],
    'as a date of the field: half of the panicles',
  ),
  row('59', '59', ['end of panicle emergence', 'full heading']),
  row('61', '69', ['flowering', 'anthesis']),
  row('61', '61', ['first anthers']),
  row('65', '65', ['full flowering', '50 % flowering']),
  row('69', '69', ['end of flowering']),
  row('71', '77', ['milk', 'milk stage']),
  row('71', '71', ['watery ripe']),
  row('75', '75', ['medium milk']),
  row('83', '87', ['dough']),
  row('85', '85', ['soft dough']),
  row('87', '87', ['hard dough']),
  row('89', '89', ['maturity', 'ripe'], '80-85 % of the grains of a panicle (rice trait dictionary CO_320)'),
  row('99', '99', ['harvested product', 'harvested']),
];

const byWords = new Map(FIELD_WORDS.flatMap((stage) => stage.words.map((words) => [words, stage] as const)));

/** Transplanting has no code: it is an event, kept with the age of the seedlings. */
export function bbchOfFieldWords(words: string): StageWords | Fault {
  const asked = words.trim().toLowerCase().replace(/\s+/g, ' ');
  if (/^transplant|^recovery/.test(asked)) return fault('transplanting is an event and has no BBCH code');
  return byWords.get(asked) ?? fault(`no BBCH code is known for "${words}"`);
}
