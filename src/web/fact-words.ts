import type { FactShown } from '../diary/shown.ts';
import { escapeXml } from './escape-xml.ts';

/** A fact as HTML, led by a link to its plot where that is not the page's own. A function, since a story holds hundreds. */
export function factWords(fact: FactShown, plotOfPage: string | null): string {
  const elsewhere = fact.plot && fact.plot !== plotOfPage && fact.list !== 'comparisons' ? fact.plot : null;
  const plot = elsewhere
    ? `<a href="/plots/${encodeURIComponent(elsewhere)}">${escapeXml(elsewhere)}</a>: `
    : '';
  const doubt = fact.unclear ? ` <span class="doubt">${escapeXml(fact.unclear)}</span>` : '';
  return `${plot}${escapeXml(fact.sentence)}${doubt}`;
}
