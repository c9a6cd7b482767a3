/** A reading in plain words: each fact, the words that it came from, and why it stands. */
import type { Entry, Reading } from '../reading/record.ts';

export function tellReading({ entries, heard }: Reading): string {
  if (entries.length === 0 && heard.length === 0) return 'Nothing to keep was found in this note.';
  return [
    ...heard.map(({ said, meant, why }) => `Heard "${said}" as "${meant}": ${why}.`),
    ...(entries.length === 0 ? ['Nothing to keep was found in this note.'] : entries.map(tellEntry)),
  ].join('\n');
}

function tellEntry({ list, fact, trace }: Entry): string {
  const values = Object.entries(fact)
    .filter(([name, value]) => name !== 'plot' && value !== undefined)
    .map(([name, value]) => `${name} ${typeof value === 'object' ? JSON.stringify(value) : value}`)
    .join(', ');
  const plot = 'plot' in fact ? ` ${fact.plot ?? 'no plot'} (${trace.plot}):` : ':';
  const cues = trace.cues.map(({ words, says }) => `"${words}" says ${says.replace('_', ' ')}`).join(', ');
  const beat = trace.beat.map(({ words, why }) => `${words ? `"${words}" ` : ''}${why}`).join(', ');
  return `${list}${plot} ${values}\n  from "${trace.words}" by ${trace.rule}${cues ? `; ${cues}` : ''}${beat ? `; ${beat}` : ''}`;
}
