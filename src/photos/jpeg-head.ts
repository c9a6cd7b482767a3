/**
 * The part of a JPEG that can carry metadata (ITU-T T.81, annex B): its segments up to the scan, as far as each is
 * followed by the next marker. A length that does not lead to a marker is wrong, and what it encloses is not trusted.
 */
export function jpegHead(bytes: Uint8Array): Uint8Array {
  let sound = 2;
  for (let at = sound; isMarker(bytes, at); ) {
    sound = at;
    const marker = bytes[at + 1] ?? 0;
    if (marker === startOfScan || marker === endOfImage || at + 4 > bytes.length) break;
    at += 2 + (((bytes[at + 2] ?? 0) << 8) | (bytes[at + 3] ?? 0));
  }
  return bytes.subarray(0, sound);
}

const startOfScan = 0xda;
const endOfImage = 0xd9;

/** 0xFF and a code; 0xFF before it is filling, 0x00 behind it is data. */
const isMarker = (bytes: Uint8Array, at: number): boolean =>
  bytes[at] === 0xff && (bytes[at + 1] ?? 0) > 0x01;
