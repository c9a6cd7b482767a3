/** Runs on every page: lets go of a draft that the server has kept, keeps buttons from being pressed twice, opens photos. */
import { readDraft, removeDraft } from './draft.ts';
import { openPhotosOverThePage } from './lightbox.ts';

const PRESSED_TWICE_MS = 3000;

const kept = document.querySelector<HTMLElement>('main')?.dataset.kept;
if (kept && readDraft()?.id === kept) removeDraft();

document.addEventListener('submit', (event) => {
  const form = event.target as HTMLFormElement;
  if (form.dataset.sent) return event.preventDefault();
  form.dataset.sent = 'yes';
  setTimeout(() => delete form.dataset.sent, PRESSED_TWICE_MS);
});
// Back again by the browser's own button: the form may be sent anew.
window.addEventListener('pageshow', () => {
  for (const form of document.forms) delete form.dataset.sent;
});

openPhotosOverThePage();
