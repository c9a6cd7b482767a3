/** Whether a file is taken in as a photo, and why not. */
import type { PhotoKind } from './kind.ts';

export type RefusalReason =
  | 'empty-file'
  | 'not-a-supported-image'
  | 'truncated-or-corrupt'
  | 'too-many-pixels'
  | 'too-large'
  | 'file-not-found'
  | 'took-too-long'
  | 'took-too-much-memory'
  | 'could-not-be-read'
  | 'stopped';

/** As written on the command line. */
export type Ingest = { decision: 'accept'; reason: string } | { decision: 'reject'; reason: RefusalReason };

/** The pixel limit of common decoders: 16383 on both sides. */
export const mostPixels = 0x3fff * 0x3fff;
/** The longest side that a JPEG can have. Longer ones come from a damaged head, and take a decoder half a minute. */
export const longestSidePx = 0xffff;
export const mostBytes = 200_000_000;

export const accepted = (kind: PhotoKind): Ingest => ({
  decision: 'accept',
  reason: kind === 'heic' ? 'decode with heic-decode; pixels already rotated: ignore EXIF Orientation' : '',
});

export const refused = (reason: RefusalReason): Ingest => ({ decision: 'reject', reason });

/** What happened and what to do, for the person who sent the photo. */
export const refusalWords: Record<RefusalReason, string> = {
  'empty-file': 'The file is empty. Take the photo again or choose another file.',
  'not-a-supported-image':
    'This is not a photo that can be read here. JPEG, PNG, WebP, AVIF, TIFF and HEIC can.',
  'truncated-or-corrupt': 'The photo is cut off or damaged, perhaps by a broken upload. Send it once more.',
  'too-many-pixels': 'The photo has more than 268 million pixels. Make it smaller and send it again.',
  'too-large': 'The file is larger than 200 MB. Make it smaller and send it again.',
  'file-not-found': 'There is no such file. Check the name.',
  'took-too-long': 'Reading the photo took too long and was stopped. Save it as JPEG and send that.',
  'took-too-much-memory':
    'Reading the photo took too much memory and was stopped. Make it smaller and send it again.',
  'could-not-be-read': 'Reading the photo failed. Save it as JPEG and send that.',
  stopped: 'The server was stopping. Send the photo once more.',
};
