/** Raised whenever the same note may be read otherwise than before: notes are then read again at the next start. */
export const READER_VERSION = '1';
