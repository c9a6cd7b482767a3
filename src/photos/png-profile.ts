/**
 * EXIF in PNG: the eXIf chunk (PNG, third edition, 11.3.4.5), or, as older programs have it, hexadecimal in a text chunk
 * named `Raw profile type exif`, mostly packed. exifr knows only the first of the two,
 * so it gets the block alone.
 */
import { inflateSync } from 'node:zlib';

const names = ['Raw profile type exif', 'Raw profile type APP1'];
const mostProfileBytes = 1_000_000;

/** The EXIF block from its byte order on, or null. */
export function pngProfile(bytes: Uint8Array): Uint8Array | null {
  for (const { type, body } of chunksOf(bytes)) {
    if (type === 'eXIf') return body;
    const name = names.find((wanted) => textAt(body, 0, wanted.length + 1) === `${wanted}\0`);
    if (!name || (type !== 'zTXt' && type !== 'tEXt')) continue;
    const text = textOf(type, body.subarray(name.length + 1));
    if (text !== null) return exifIn(text);
  }
  return null;
}

function* chunksOf(bytes: Uint8Array): Generator<{ type: string; body: Uint8Array }> {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  for (let at = 8; at + 12 <= bytes.length; ) {
    const length = view.getUint32(at);
    if (at + 12 + length > bytes.length) return;
    yield { type: textAt(bytes, at + 4, 4), body: bytes.subarray(at + 8, at + 8 + length) };
    at += 12 + length;
  }
}

function textOf(type: string, body: Uint8Array): string | null {
  try {
    // zTXt has one byte for the method of packing before what is packed.
    const text =
      type === 'zTXt' ? inflateSync(body.subarray(1), { maxOutputLength: 2 * mostProfileBytes }) : body;
    return Buffer.from(text).toString('latin1');
  } catch {
    return null;
  }
}

/** A name, a count of bytes, then hexadecimal digits over many lines. */
function exifIn(text: string): Uint8Array | null {
  const head = /^\s{0,4}\w{1,20}\s{1,8}(\d{1,8})\s/.exec(text);
  if (!head || Number(head[1]) > mostProfileBytes) return null;
  const block = Buffer.from(text.slice(head[0].length).replace(/\s/g, ''), 'hex').subarray(
    0,
    Number(head[1]),
  );
  return block.toString('latin1', 0, 4) === 'Exif' ? block.subarray(6) : block;
}

const textAt = (bytes: Uint8Array, at: number, length: number): string =>
  String.fromCharCode(...bytes.subarray(at, at + length));
