import type { Trace } from '../reading/record.ts';

/** Why an entry stands, one plain sentence a line. */
export function traceWords(trace: Trace): string[] {
  const { rule, words, cues, heard, beat, plot } = trace;
  return [
    words ? `“${words}” was matched by the rule “${rule}”.` : `It was ${rule}.`,
    ...heard.map(({ said, meant }) => `“${said}” was understood as “${meant}”.`),
    ...cues.map((cue) => `“${cue.words}” makes it ${says(cue.says)}.`),
    ...beat.map((other) => `Another reading of “${other.words}” was set aside: ${other.why}.`),
    ...(plot && words ? [`Its plot: ${plot}.`] : []),
  ];
}

const says = (what: string): string => what.replaceAll('_', ' ');
