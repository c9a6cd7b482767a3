/**
 * BBCH codes of rice. Lancashire et al. 1991, Ann. Appl. Biol. 119:561-601; Meier (ed.) 2001, BBCH Monograph. Read as
 * transcriptions of the rice table: 00-58 in three that agree, 59-99 in one. The words are ours.
 */
import { type Fault, fault, isFault } from '../fault.ts';

export interface BbchStage {
  /** Two digits, `00` to `99`. */
  code: string;
  words: string;
}

export const BBCH_SOURCE = 'Lancashire et al. 1991; Meier (ed.) 2001, BBCH Monograph, rice';

export const BBCH_PRINCIPAL = [
  'germination',
  'leaf development',
  'tillering',
  'stem elongation',
  'booting',
  'heading',
  'flowering',
  'grain development',
  'ripening',
  'senescence',
] as const;

const counted = (first: number, words: (count: number) => string): [string, string][] =>
  [1, 2, 3, 4, 5, 6, 7, 8].map((count) => [String(first + count), words(count)]);

export const BBCH_RICE: ReadonlyMap<string, string> = new Map<string, string>([
  ['00', 'dry grain'],
  ['01', 'grain starts to take up water'],
  ['03', 'grain full of water'],
  ['05', 'root tip out of the grain'],
  ['06', 'root longer, with hairs or side roots'],
  ['07', 'shoot sheath out of the grain'],
  ['09', 'first leaf, still rolled, at the tip of the shoot sheath'],
  ['10', 'first leaf open, tip of the next to be seen'],
  ...counted(10, (leaves) => (leaves === 1 ? '1 leaf open' : `${leaves} leaves open`)),
  ['19', '9 or more leaves open'],
  ...counted(20, (tillers) => (tillers === 1 ? 'first tiller' : `${tillers} tillers`)),
  ['29', 'most tillers'],
  ['30', 'panicle initiation, green ring in the stem'],
  ['32', 'panicle 1-2 mm'],
  ['34', 'jointing, panicle longer than 2 mm'],
  ['37', 'flag leaf to be seen, still rolled'],
  ['39', 'flag leaf open, collars level'],
  ['41', 'early boot: flag sheath about 5 cm beyond the next'],
  ['43', 'mid boot: 5-10 cm'],
  ['45', 'late boot: more than 10 cm, sheath swollen'],
  ['47', 'flag sheath opening'],
  ['49', 'flag sheath open'],
  ['51', 'tip of the panicle out'],
  ['52', '20 % of the panicle out'],
  ['53', '30 % of the panicle out'],
  ['54', '40 % of the panicle out'],
  ['55', 'half of the panicle out'],
  ['56', '60 % of the panicle out'],
  ['57', '70 % of the panicle out'],
  ['58', '80 % of the panicle out'],
  ['59', 'panicle fully out, no anthers yet'],
  ['61', 'anthers at the top of the panicle'],
  ['65', 'anthers on most spikelets'],
  ['69', 'all spikelets have flowered'],
  ['71', 'watery grains, the first at half their size'],
  ['73', 'early milk'],
  ['75', 'medium milk'],
  ['77', 'late milk'],
  ['83', 'early dough'],
  ['85', 'soft dough: a nail dent does not stay, still green'],
  ['87', 'hard dough: a nail dent stays'],
  ['89', 'ripe: grain hard'],
  ['92', 'over-ripe: cannot be dented'],
  ['97', 'plant dead, falling down'],
  ['99', 'harvested'],
]);

/** A fault names what the scale lacks: 40, 70, 80 and others have no meaning in rice. */
export function bbchStage(code: string): BbchStage | Fault {
  const words = BBCH_RICE.get(code);
  if (words) return { code, words };
  return /^\d\d$/.test(code)
    ? fault(`BBCH ${code} has no meaning in rice; the nearest are ${nearest(code).join(' and ')}`)
    : fault(`a BBCH code has two digits, not ${code}`);
}

export function bbchPrincipal(code: string): { principal: number; name: string } | Fault {
  const stage = bbchStage(code);
  if (isFault(stage)) return stage;
  const principal = Number(code[0]);
  return { principal, name: BBCH_PRINCIPAL[principal]! };
}

/** Two principal stages at once are written `16/22`; one code alone means the further one (Meier 2001, introduction). */
export function furtherBbch(written: string): BbchStage | Fault {
  const stages = written.split('/').map((code) => bbchStage(code.trim()));
  const wrong = stages.find(isFault);
  if (wrong) return wrong;
  return (stages as BbchStage[]).reduce((further, stage) => (stage.code > further.code ? stage : further));
}

function nearest(code: string): string[] {
  const codes = [...BBCH_RICE.keys()].sort();
  const below = codes.filter((known) => known < code).at(-1);
  const above = codes.find((known) => known > code);
  return [below, above].filter((known): known is string => known !== undefined);
}
