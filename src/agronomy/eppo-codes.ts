/** EPPO codes: five letters for a plant, six for pests and diseases (letters, or letters and figures for viruses). A code survives renaming. */
import { type Fault, fault } from './fault.ts';
import type { Sourced } from './source.ts';

export const EPPO_LETTERS = {
  plant: 5,
  pest: 6,
  rule: 'plants 3+2, pests and pathogens usually 4+2; code survives renaming',
  source: 'EPPO, presentation on EPPO codes, 2011',
} as const;

export interface EppoCode extends Sourced {
  code: string;
  name: string;
  kind: 'plant' | 'pest';
  remark?: string;
}

const read = (code: string, name: string, source: string): EppoCode => ({
  code,
  name,
  kind: kindOf(code),
  source,
});
const unread = (code: string, name: string, remark?: string): EppoCode => ({
  code,
  name,
  kind: kindOf(code),
  remark,
  source: 'memory or a second-hand list: look it up at gd.eppo.int',
  unconfirmed: true,
});

function kindOf(code: string): EppoCode['kind'] {
  return code.length === EPPO_LETTERS.plant ? 'plant' : 'pest';
}

export const EPPO_CODES: readonly EppoCode[] = [
  read('ORYSA', 'Oryza sativa', 'EPPO platform on pest risk analyses, export'),
  read('CYPDI', 'Cyperus difformis', 'CABI datasheet'),
  unread('CYPIR', 'Cyperus iria'),
  unread('ECHCG', 'Echinochloa crus-galli'),
  unread('ECHCO', 'Echinochloa colona'),
  unread('FIMMI', 'Fimbristylis miliacea', 'now parted into F. littoralis and F. quinquangularis'),
  unread('LEFCH', 'Leptochloa chinensis'),
  unread('LUDAD', 'Ludwigia adscendens', 'not LUDPE, which is L. peploides'),
  unread('LUDOC', 'Ludwigia octovalvis', 'not LUDUR, which is L. grandiflora'),
  unread('MOOVA', 'Monochoria vaginalis'),
  unread('SPDZE', 'Sphenoclea zeylanica'),
  read('PYRIOR', 'Pyricularia oryzae', 'EPPO platform on pest risk analyses, export'),
  read('XANTOR', 'Xanthomonas oryzae pv. oryzae', 'gd.eppo.int'),
  unread('CNAPME', 'Cnaphalocrocis medinalis'),
  unread('COCHMI', 'Bipolaris oryzae'),
  unread('HISPAR', 'Dicladispa armigera'),
  unread('NILALU', 'Nilaparvata lugens'),
  unread('PSEDSE', 'Mythimna separata'),
  unread('RTBV00', 'Rice tungro bacilliform virus'),
  unread('RTSV00', 'Rice tungro spherical virus'),
  unread('SCHOBI', 'Scirpophaga incertulas'),
];

export function eppoCode(codeOrName: string): EppoCode | Fault {
  const asked = codeOrName.trim().toLowerCase();
  const found = EPPO_CODES.find(
    ({ code, name }) => code.toLowerCase() === asked || name.toLowerCase() === asked,
  );
  return found ?? fault(`no EPPO code is kept for "${codeOrName}"`);
}

/** Whether something typed can be a code at all; null when it can. */
export function eppoFormatFault(code: string): Fault | null {
  return /^([A-Z]{5}|[A-Z]{6}|[A-Z]{4}\d{2}|[A-Z]{5}\d)$/.test(code)
    ? null
    : fault(`an EPPO code has five capital letters for a plant, six signs for a pest, not ${code}`);
}
