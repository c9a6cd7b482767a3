/** What the reader takes from the words so far, as plain sentences, each with `no, it's not` beside it. */
import { readNote } from '../reading/read.ts';
import type { Entry, FarmWords, PlotNamed } from '../reading/record.ts';
import { sayFact } from '../reading/say-fact.ts';

interface FarmForReader {
  plots: PlotNamed[];
  words: FarmWords;
  /** Local time at the farm when the page was made. */
  now: string;
}
interface Written {
  text: string;
  plot: string;
  dictated: boolean;
  /** Facts that were denied, as JSON of `{list, fact}`. */
  notSo: string[];
}

const farm: FarmForReader = JSON.parse(document.querySelector('#farm')!.textContent!);
const opened = Date.now();
const panel = document.querySelector<HTMLElement>('#as-read')!;
const list = document.querySelector<HTMLElement>('#live')!;
const empty = document.querySelector<HTMLElement>('#live-empty')!;

export function showReading({ text, plot, dictated, notSo }: Written, deny: (fact: string) => void): void {
  const { entries, heard } = readNote(
    {
      id: 'draft',
      observedAt: localNow(),
      plots: farm.plots,
      plot: plot || null,
      channel: dictated ? 'dictated' : 'typed',
      text,
    },
    farm.words,
  );
  panel.hidden = false;
  empty.hidden = entries.length > 0;
  list.replaceChildren(
    ...entries.map((entry) => sentence(entry, text, notSo, deny)),
    ...heard.map(({ said, meant }) => item(`“${said}” is understood as “${meant}”.`)),
  );
}

/** The farm's clock, as the server told it, moved on by what has passed since. */
function localNow(): string {
  const then = Date.parse(`${farm.now}:00Z`);
  return new Date(then + Date.now() - opened).toISOString().slice(0, 16);
}

function sentence(entry: Entry, text: string, notSo: string[], deny: (fact: string) => void): HTMLElement {
  const key = JSON.stringify({ list: entry.list, fact: entry.fact });
  const gone = notSo.includes(key);
  const place = 'plot' in entry.fact && entry.fact.plot ? `${entry.fact.plot}: ` : '';
  const line = item('');
  const words = document.createElement('span');
  words.className = gone ? 'gone' : '';
  words.textContent = `${place}${sayFact(entry)}`;
  const from = document.createElement('q');
  from.textContent = entry.evidence.map(({ start, end }) => text.slice(start, end)).join(' … ');
  const no = document.createElement('button');
  no.type = 'button';
  no.className = 'quiet';
  no.textContent = gone ? 'it is, after all' : 'no, it’s not';
  no.setAttribute('aria-label', `${no.textContent}: ${words.textContent}`);
  no.addEventListener('click', () => deny(key));
  const row = document.createElement('span');
  row.className = 'row';
  row.append(from, no);
  line.append(words, row);
  return line;
}

function item(words: string): HTMLElement {
  const line = document.createElement('li');
  line.textContent = words;
  return line;
}
