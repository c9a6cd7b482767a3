/**
 * A tag that claims more values than the file has bytes sends exifr into minutes of allocation. Such entries get the
 * value type 0, which no reader takes, in a copy of the bytes; everything else stays as it is.
 */

/** Bytes of a value by type number (TIFF 6.0, section 2, and 13, an offset). */
const valueBytes = [0, 1, 1, 2, 4, 8, 1, 1, 2, 4, 8, 4, 8, 4];
const pointers = [0x8769, 0x8825];
const mostEntries = 1000;
const mostBlocks = 8;

export function disarmTags(bytes: Uint8Array): Uint8Array {
  const copy = Uint8Array.from(bytes);
  for (const start of blockStarts(copy)) disarmBlock(copy.subarray(start));
  return copy;
}

const mark = 'Exif\0\0';

/** The file itself where it is a TIFF, else behind each `Exif` mark. */
function* blockStarts(bytes: Uint8Array): Generator<number> {
  const text = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (/^(II\*\0|MM\0\*)/.test(text.toString('latin1', 0, 4))) yield 0;
  for (let at = text.indexOf(mark), found = 0; at >= 0 && found < mostBlocks; found++) {
    yield at + mark.length;
    at = text.indexOf(mark, at + 1);
  }
}

function disarmBlock(block: Uint8Array): void {
  if (block.length < 8) return;
  const view = new DataView(block.buffer, block.byteOffset, block.byteLength);
  const little = view.getUint16(0) === 0x4949;
  const directories = [view.getUint32(4, little)];
  for (let next = 0; next < directories.length && next < 1 + pointers.length; next++) {
    directories.push(...disarmDirectory(view, little, directories[next]!));
  }
}

/** Answers with the directories that this one points to. */
function disarmDirectory(view: DataView, little: boolean, start: number): number[] {
  const below: number[] = [];
  const count = start + 2 <= view.byteLength ? view.getUint16(start, little) : 0;
  for (let entry = 0; entry < Math.min(count, mostEntries); entry++) {
    const at = start + 2 + entry * 12;
    if (at + 12 > view.byteLength) return below;
    const size = (valueBytes[view.getUint16(at + 2, little)] ?? 0) * view.getUint32(at + 4, little);
    const value = view.getUint32(at + 8, little);
    if (size > 4 && value + size > view.byteLength) view.setUint16(at + 2, 0);
    else if (pointers.includes(view.getUint16(at, little))) below.push(value);
  }
  return below;
}
