/**
 * Puts a colour profile (ICC.1) into a PNG that has none, as the iCCP chunk right behind the head (PNG, third edition,
 * 11.3.2.3). Pixels that come out of a decoder bare get back the profile that says which colours they mean.
 */
import { deflateSync } from 'node:zlib';

/** Signature of 8 bytes and the chunk IHDR of 25. */
const headBytes = 33;

export function withProfile(png: Buffer, profile: Buffer): Buffer {
  const body = Buffer.concat([Buffer.from('iCCPprofile\0\0', 'latin1'), deflateSync(profile)]);
  const length = Buffer.alloc(4);
  length.writeUInt32BE(body.length - 4);
  const sum = Buffer.alloc(4);
  sum.writeUInt32BE(crc32(body));
  return Buffer.concat([png.subarray(0, headBytes), length, body, sum, png.subarray(headBytes)]);
}

/** PNG, third edition, annex D. */
function crc32(bytes: Uint8Array): number {
  let sum = 0xffffffff;
  for (const byte of bytes) {
    sum ^= byte;
    for (let bit = 0; bit < 8; bit++) sum = sum & 1 ? (sum >>> 1) ^ 0xedb88320 : sum >>> 1;
  }
  return (sum ^ 0xffffffff) >>> 0;
}
