/**
 * Sends a folder of photos one after the other, says how far it is, and goes on where it stopped: what is kept already is not
 * sent again where the browser can work out hashes (secure addresses), and stays one photo where it can't.
 */
interface Kept {
  photos: { name: string; known?: boolean; refused?: string }[];
}

const form = document.querySelector<HTMLFormElement>('#send-photos')!;
const at = <T extends HTMLElement>(id: string): T => document.querySelector<T>(`#${id}`)!;
const folder = at<HTMLInputElement>('folder');
const stop = at<HTMLButtonElement>('stop-sending');
const PHOTO = /\.(jpe?g|png|webp|avif|tiff?|heic|heif)$/i;
const LOOK_EVERY_MS = 1500;
let stopped = false;

if ('webkitdirectory' in folder) at('folder-field').hidden = false;
stop.addEventListener('click', () => {
  stopped = true;
});
form.addEventListener('submit', async (event) => {
  const files = [...(at<HTMLInputElement>('photos').files ?? []), ...(folder.files ?? [])].filter(
    ({ type, name }) => type.startsWith('image/') || PHOTO.test(name),
  );
  if (files.length === 0) return;
  event.preventDefault();
  await sendAll(files);
});

async function sendAll(files: File[]): Promise<void> {
  stopped = false;
  stop.hidden = false;
  at('sending').hidden = false;
  at('not-kept').replaceChildren();
  const counts = { kept: 0, known: 0, failed: 0 };
  const button = form.querySelector<HTMLButtonElement>('button.main')!;
  button.disabled = true;
  let done = 0;
  for (const file of files) {
    if (stopped) break;
    await sendOne(file, counts);
    say(++done, files.length, counts);
  }
  button.disabled = false;
  stop.hidden = true;
  say(done, files.length, counts, stopped ? 'Stopped.' : 'Done.');
  await watchOpening();
}

async function sendOne(file: File, counts: { kept: number; known: number; failed: number }): Promise<void> {
  try {
    if (await isKept(file)) return void counts.known++;
    const body = new FormData();
    body.append('photos', file, file.name);
    const answer = await fetch(form.action, {
      method: 'POST',
      body,
      headers: { accept: 'application/json' },
    });
    if (!answer.ok) throw new Error(((await answer.json()) as { refused: string }).refused);
    for (const photo of ((await answer.json()) as Kept).photos) {
      if (photo.refused) notKept(photo.refused, counts);
      else counts[photo.known ? 'known' : 'kept']++;
    }
  } catch (error) {
    const words =
      error instanceof TypeError ? 'the server could not be reached; send it again.' : String(error);
    notKept(`${file.name}: ${words.replace(/^Error: /, '')}`, counts);
  }
}

function notKept(words: string, counts: { failed: number }): void {
  counts.failed++;
  const line = document.createElement('li');
  line.textContent = words;
  at('not-kept').append(line);
}

async function isKept(file: File): Promise<boolean> {
  if (!crypto.subtle) return false;
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', await file.arrayBuffer()));
  const hash = [...digest].map((byte) => byte.toString(16).padStart(2, '0')).join('');
  return (await progress(`?known=${hash}`)).known.includes(hash);
}

function say(
  done: number,
  of: number,
  { kept, known, failed }: { kept: number; known: number; failed: number },
  end = '',
): void {
  const bar = at<HTMLProgressElement>('sent-bar');
  bar.max = of;
  bar.value = done;
  at('sent-words').textContent = [
    end,
    `${done} of ${of} photos:`,
    `${[`${kept} kept`, known ? `${known} here already` : '', failed ? `${failed} not kept` : '']
      .filter(Boolean)
      .join(', ')}.`,
  ]
    .filter(Boolean)
    .join(' ');
}

interface Progress {
  kept: number;
  waiting: number;
  known: string[];
}
const progress = async (query = ''): Promise<Progress> =>
  (await fetch(form.dataset.progress! + query, { headers: { accept: 'application/json' } })).json();

async function watchOpening(): Promise<void> {
  for (;;) {
    const { kept, waiting } = await progress();
    at('opened-words').textContent = waiting
      ? `${kept - waiting} of ${kept} photos opened, ${waiting} to go. It goes on when you leave this page.`
      : `All ${kept} photos that are kept have been opened.`;
    if (waiting === 0) return;
    await new Promise((resolve) => setTimeout(resolve, LOOK_EVERY_MS));
  }
}
