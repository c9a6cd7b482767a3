/** Which kind of file these bytes are, by their first bytes alone: names and declared types lie. */

export type PhotoKind = 'jpeg' | 'png' | 'webp' | 'avif' | 'tiff' | 'heic';

/** The kind, or null where the bytes are none of the six. Twelve bytes decide; ISO media files need their brands, so give 64. */
export function kindOf(bytes: Uint8Array): PhotoKind | null {
  if (startsWith(bytes, [0xff, 0xd8, 0xff])) return 'jpeg';
  if (startsWith(bytes, [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a])) return 'png';
  if (latin(bytes, 0, 4) === 'RIFF' && latin(bytes, 8, 12) === 'WEBP') return 'webp';
  if (startsWith(bytes, [0x49, 0x49, 0x2a, 0x00]) || startsWith(bytes, [0x4d, 0x4d, 0x00, 0x2a]))
    return 'tiff';
  if (isIsoMedia(bytes)) return kindOfBrands(brandsOf(bytes));
  return null;
}

/** An ISO base media file (ISO/IEC 14496-12): HEIC and AVIF, but also MP4 and many others. */
export const isIsoMedia = (bytes: Uint8Array): boolean => latin(bytes, 4, 8) === 'ftyp';

/** Major brand first, then the compatible ones. */
function brandsOf(bytes: Uint8Array): string[] {
  const size = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength).getUint32(0);
  const end = Math.min(size, bytes.length, 8 + 4 * 64);
  const brands = [latin(bytes, 8, 12)];
  for (let at = 16; at + 4 <= end; at += 4) brands.push(latin(bytes, at, at + 4));
  return brands;
}

// Brands of ISO/IEC 23008-12 (HEIF) annex B and of the AVIF specification, section 8.
const avifBrands = ['avif', 'avis'];
const heicBrands = ['heic', 'heix', 'hevc', 'hevx', 'heim', 'heis', 'hevm', 'hevs'];
const anyCodecBrands = ['mif1', 'msf1'];

function kindOfBrands(brands: string[]): PhotoKind | null {
  const major = brands[0] ?? '';
  if (avifBrands.includes(major)) return 'avif';
  if (heicBrands.includes(major)) return 'heic';
  if (!anyCodecBrands.includes(major)) return null;
  return brands.some((brand) => avifBrands.includes(brand)) ? 'avif' : 'heic';
}

const startsWith = (bytes: Uint8Array, magic: number[]): boolean =>
  bytes.length >= magic.length && magic.every((byte, at) => bytes[at] === byte);

const latin = (bytes: Uint8Array, from: number, to: number): string =>
  bytes.length < to ? '' : String.fromCharCode(...bytes.subarray(from, to));
