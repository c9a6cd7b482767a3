/** Notes about something else than the crop: their trade words (`the price went flat`, `a rat at reception`) say nothing. */
import type { Passage } from '../engine/passage.ts';
import { OF_THE_FIELD, OFF_FIELD, OFF_TOPIC } from '../lexicon/off-topic.ts';

/** No plot is named, and (one word is not enough where the writer stands in a plot) words of another matter outweigh those of the field. */
export function isOffTopicNote({ note, plots, tokens }: Passage): boolean {
  if (plots.length > 0) return false;
  let other = 0;
  let field = 0;
  for (const { lower } of tokens) {
    if (OFF_TOPIC.has(lower) || OFF_FIELD.has(lower)) other++;
    else if (OF_THE_FIELD.test(lower)) field++;
  }
  return field * 2 < other && (other > 1 || note.plot === null);
}
