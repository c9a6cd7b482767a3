import type { Span } from '../reading/record.ts';

export interface Piece {
  text: string;
  marked: boolean;
}

/**
 * The text cut into pieces, those under any of the spans marked; spans may overlap and come in any order.
 * The pieces put together are the text, whatever the spans.
 */
export function markedText(text: string, spans: Span[]): Piece[] {
  const pieces: Piece[] = [];
  let at = 0;
  for (const { start, end } of joined(spans, text.length)) {
    if (start > at) pieces.push({ text: text.slice(at, start), marked: false });
    pieces.push({ text: text.slice(start, end), marked: true });
    at = end;
  }
  if (at < text.length) pieces.push({ text: text.slice(at), marked: false });
  return pieces;
}

function joined(spans: Span[], length: number): Span[] {
  const inside = spans
    .map(({ start, end }) => ({ start: Math.max(0, start), end: Math.min(length, end) }))
    .filter(({ start, end }) => start < end)
    .sort((a, b) => a.start - b.start);
  const out: Span[] = [];
  for (const span of inside) {
    const last = out.at(-1);
    if (last && span.start <= last.end) last.end = Math.max(last.end, span.end);
    else out.push({ ...span });
  }
  return out;
}
