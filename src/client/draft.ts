/** The note that is being written, kept in the browser's own storage until the server says that it has it. */
export interface Draft {
  id: string;
  text: string;
  plot: string;
  /** ISO instant of the first letter: dates in the note count from then. */
  begunAt: string;
  /** Facts that the writer denied, as JSON. */
  notSo: string[];
}

const KEY = 'bundwalk draft';

/** Null where there is none, or where storage is closed to us. */
export function readDraft(): Draft | null {
  try {
    const draft = JSON.parse(localStorage.getItem(KEY) ?? 'null') as Partial<Draft> | null;
    if (typeof draft?.id !== 'string' || typeof draft.text !== 'string') return null;
    return { plot: '', begunAt: '', notSo: [], ...draft } as Draft;
  } catch {
    return null;
  }
}

/** False where the browser would not keep it. */
export function writeDraft(draft: Draft): boolean {
  try {
    localStorage.setItem(KEY, JSON.stringify(draft));
    return true;
  } catch {
    return false;
  }
}

export function removeDraft(): void {
  try {
    localStorage.removeItem(KEY);
  } catch {
    // Storage is closed to us, so nothing was kept there.
  }
}

/** `crypto.randomUUID` is missing where the page came over plain http. */
export function newId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  return [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}
