/** How rows are shown on pages: facts as sentences with their evidence, photos with alternative words and addresses. */
import { type Fact, LIST_NAMES, type ListName, type Span, type Trace } from '../reading/record.ts';
import { sayFact } from '../reading/say-fact.ts';
import type { FactRow, PhotoRow } from '../storage/tables.ts';
import { takenAt } from './taken-at.ts';

export interface FactShown {
  id: string;
  list: ListName;
  plot: string | null;
  kind: string;
  status: string | null;
  sentence: string;
  /** The note's own words that it came from. */
  words: string;
  evidence: Span[];
  trace: Trace | null;
  origin: 'reading' | 'person';
  fact: Fact['fact'];
  /** What stays unclear about it, in words, or null. */
  unclear: string | null;
}

export interface PhotoShown {
  id: string;
  name: string;
  /** Alternative text, from the note's words. */
  alt: string;
  /** Local wall time `YYYY-MM-DDTHH:MM`, or null where the file does not say. */
  takenAt: string | null;
  plot: string | null;
  placedBy: string | null;
  coverPercent: number | null;
  straightDown: boolean;
  /** Why no picture can be shown, or null. */
  fault: string | null;
  /** Its own page. */
  href: string;
  small: string;
  large: string;
  original: string;
}

export const factOf = (row: FactRow): Fact => ({ list: row.list, fact: JSON.parse(row.fact) }) as Fact;

export function showFact(row: FactRow): FactShown {
  const fact = factOf(row);
  return {
    id: row.id,
    list: fact.list,
    plot: row.plot,
    kind: row.kind,
    status: row.status,
    sentence: sayFact(fact),
    words: row.words,
    evidence: JSON.parse(row.evidence) as Span[],
    trace: row.trace ? (JSON.parse(row.trace) as Trace) : null,
    origin: row.origin === 'person' ? 'person' : 'reading',
    fact: fact.fact,
    unclear: unclear(fact),
  };
}

/** What a careful reader would ask back: no plot, somebody's word only, a guess. */
function unclear(fact: Fact): string | null {
  if (fact.list === 'actions' && fact.fact.hearsay) return 'Somebody else’s word; nobody has looked yet.';
  if (fact.list === 'findings' && fact.fact.status === 'suspected')
    return 'A guess in the note, not seen for certain.';
  if (fact.list !== 'comparisons' && fact.fact.plot === null && !isWeather(fact))
    return 'The note leaves the plot open.';
  return null;
}

const isWeather = (fact: Fact): boolean =>
  fact.list === 'measurements' &&
  (fact.fact.quantity === 'rainfall' || fact.fact.quantity === 'air_temperature');

export const byList = (a: FactShown, b: FactShown): number =>
  LIST_NAMES.indexOf(a.list) - LIST_NAMES.indexOf(b.list);

export function showPhoto(row: PhotoRow, words: string): PhotoShown {
  return {
    id: row.id,
    name: row.name,
    alt: altWords(row, words),
    takenAt: takenAt(row)?.slice(0, 16) ?? null,
    plot: row.plot,
    placedBy: row.placed_by,
    coverPercent: row.cover_percent,
    straightDown: row.straight_down === 1,
    fault: row.fault,
    href: `/photos/${row.id}`,
    small: `/media/${row.id}/small`,
    large: `/media/${row.id}/large`,
    original: `/media/${row.id}/original`,
  };
}

function altWords(row: PhotoRow, words: string): string {
  const said = words.replace(/\s+/g, ' ').trim();
  const short = said.length > 120 ? `${said.slice(0, said.lastIndexOf(' ', 117))}…` : said;
  const what = row.straight_down ? 'Crop from straight above' : 'Photo';
  return `${what}${row.plot ? ` of plot ${row.plot}` : ''}${short ? `: ${short}` : ''}`;
}
