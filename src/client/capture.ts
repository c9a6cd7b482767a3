/** The capture page: keeps the draft while it is written, and shows at once what is read from the words. */
import { type Draft, newId, readDraft, removeDraft, writeDraft } from './draft.ts';
import { showReading } from './live-reading.ts';

const form = document.querySelector<HTMLFormElement>('form.capture')!;
const text = form.querySelector<HTMLTextAreaElement>('textarea[name="text"]')!;
const plot = form.querySelector<HTMLSelectElement>('select[name="plot"]')!;
const id = form.querySelector<HTMLInputElement>('input[name="id"]')!;
const begunAt = form.querySelector<HTMLInputElement>('input[name="begunAt"]')!;
const told = document.querySelector<HTMLElement>('#draft')!;

let draft: Draft = begin();
keepWhileWriting();
showChosenFiles();
read();

function begin(): Draft {
  const earlier = readDraft();
  const written = text.value !== '';
  // The server sent the words back, perhaps under another id: its form is the newer one.
  if (written && ('fresh' in form.dataset || earlier?.id !== id.value)) return fresh(id.value);
  if (earlier?.text && !written) {
    text.value = earlier.text;
    if (!plot.value) plot.value = earlier.plot;
    say(`Your note is as you left it. It has not been sent yet.`);
    return put(earlier);
  }
  return written && earlier ? put(earlier) : fresh(newId());
}

function fresh(newNote: string): Draft {
  return put({ id: newNote, text: text.value, plot: plot.value, begunAt: '', notSo: [] });
}

function put(next: Draft): Draft {
  id.value = next.id;
  begunAt.value = next.begunAt;
  return next;
}

function keepWhileWriting(): void {
  let waiting = 0;
  form.addEventListener('input', (event) => {
    if (event.target !== text && event.target !== plot) return;
    if (!draft.begunAt) draft.begunAt = new Date().toISOString();
    draft = put({ ...draft, text: text.value, plot: plot.value });
    if (draft.text === '') removeDraft();
    else if (!writeDraft(draft))
      say('This browser keeps no drafts: send the note before you leave the page.');
    else told.hidden = true;
    clearTimeout(waiting);
    waiting = window.setTimeout(read, 180);
  });
  form.addEventListener('submit', () => {
    for (const one of draft.notSo) form.append(hidden('notSo', one));
  });
  window.addEventListener('pageshow', (event) => {
    // Back from the kept note: these words are on the server, the next ones are another note.
    if (!event.persisted || text.value === '' || readDraft()) return;
    form.reset();
    text.value = '';
    draft = fresh(newId());
    read();
  });
}

function read(): void {
  showReading({ text: text.value, plot: plot.value, dictated: isDictated(), notSo: draft.notSo }, (fact) => {
    const notSo = draft.notSo.includes(fact)
      ? draft.notSo.filter((one) => one !== fact)
      : [...draft.notSo, fact];
    draft = put({ ...draft, notSo });
    writeDraft(draft);
    read();
  });
}

/** The labels become the buttons; what was chosen is said below them. */
function showChosenFiles(): void {
  const chosen = document.querySelector<HTMLElement>('#chosen')!;
  const inputs = [...form.querySelectorAll<HTMLInputElement>('input[type="file"]')];
  for (const input of inputs) {
    input.parentElement!.classList.add('ready');
    form.querySelector(`label[for="${input.id}"]`)!.classList.add('button');
    input.addEventListener('change', () => {
      const names = inputs.flatMap((one) => [...(one.files ?? [])].map((file) => file.name));
      chosen.textContent = `${names.length} ${names.length === 1 ? 'photo' : 'photos'} with this note: ${names.join(', ')}`;
      chosen.hidden = names.length === 0;
    });
  }
}

function isDictated(): boolean {
  return form.querySelector<HTMLInputElement>('input[name="channel"]')!.checked;
}

function hidden(name: string, value: string): HTMLInputElement {
  const input = document.createElement('input');
  Object.assign(input, { type: 'hidden', name, value });
  return input;
}

function say(words: string): void {
  told.textContent = words;
  told.hidden = false;
}
