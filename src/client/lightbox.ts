/**
 * Photos opened over the page: arrow keys and swipes go on, Escape closes, and the focus comes back to the photo that was
 * looked at last. Without script the same links lead to the photo's page.
 */
const FARTHEST_TAP_PX = 40;

export function openPhotosOverThePage(): void {
  document.addEventListener('click', (event) => {
    const link = (event.target as Element).closest<HTMLAnchorElement>('a[data-large]');
    const plain = event.button === 0 && !event.ctrlKey && !event.metaKey && !event.shiftKey && !event.altKey;
    if (!link || !plain || typeof HTMLDialogElement === 'undefined') return;
    event.preventDefault();
    openAt(link);
  });
}

function openAt(link: HTMLAnchorElement): void {
  const { large } = link.dataset;
  const links = [...document.querySelectorAll<HTMLAnchorElement>('main a[data-large]')].filter(
    (one, index, all) =>
      one === link ||
      (one.dataset.large !== large &&
        all.findIndex(({ dataset }) => dataset.large === one.dataset.large) === index),
  );
  let at = links.indexOf(link);
  const { dialog, picture, words, about, earlier, next, close } = makeDialog();

  const show = (to: number): void => {
    at = (to + links.length) % links.length;
    const { dataset, href } = links[at]!;
    picture.src = dataset.large!;
    picture.alt = links[at]!.querySelector('img')?.alt ?? '';
    words.textContent = `Photo ${at + 1} of ${links.length}. ${captionOf(links[at]!)}`;
    about.href = href;
    about.hidden = href === location.href || href.includes('/media/');
  };

  earlier.addEventListener('click', () => show(at - 1));
  next.addEventListener('click', () => show(at + 1));
  close.addEventListener('click', () => dialog.close());
  earlier.hidden = next.hidden = links.length < 2;
  dialog.addEventListener('keydown', (event) => {
    if (event.key !== 'ArrowLeft' && event.key !== 'ArrowRight') return;
    event.preventDefault();
    show(event.key === 'ArrowLeft' ? at - 1 : at + 1);
  });
  onSwipe(picture, (steps) => links.length > 1 && show(at + steps));
  dialog.addEventListener('close', () => {
    dialog.remove();
    links[at]!.focus();
  });
  document.body.append(dialog);
  show(at);
  dialog.showModal();
  close.focus();
}

function makeDialog() {
  const dialog = document.createElement('dialog');
  dialog.className = 'lightbox';
  dialog.setAttribute('aria-label', 'Photos');
  const picture = document.createElement('img');
  const words = document.createElement('p');
  words.setAttribute('role', 'status');
  const row = document.createElement('div');
  row.className = 'row';
  const [earlier, next, close] = ['Photo before', 'Next photo', 'Close'].map((name) => {
    const button = document.createElement('button');
    button.type = 'button';
    button.textContent = name;
    return button;
  }) as [HTMLButtonElement, HTMLButtonElement, HTMLButtonElement];
  const about = document.createElement('a');
  about.className = 'button quiet';
  about.textContent = 'About this photo';
  row.append(earlier, next, about, close);
  dialog.append(picture, words, row);
  return { dialog, picture, words, about, earlier, next, close };
}

const captionOf = (link: HTMLAnchorElement): string =>
  (link.closest('figure')?.querySelector('figcaption:not(.row)')?.textContent ?? '')
    .replace(/\s+/g, ' ')
    .trim();

/** To the left is the next one, as a page is turned. */
function onSwipe(on: HTMLElement, turn: (steps: 1 | -1) => void): void {
  let from: Touch | null = null;
  on.addEventListener('touchstart', (event) => {
    from = event.touches.length === 1 ? event.touches[0]! : null;
  });
  on.addEventListener('touchend', (event) => {
    const to = event.changedTouches[0];
    if (!from || !to) return;
    const [across, down] = [to.clientX - from.clientX, to.clientY - from.clientY];
    from = null;
    if (Math.abs(across) > FARTHEST_TAP_PX && Math.abs(across) > 1.5 * Math.abs(down))
      turn(across < 0 ? 1 : -1);
  });
}
