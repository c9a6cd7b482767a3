/** Small photos of every kind, written here, so that the tests run where no photo lies. */
import { deflateSync } from 'node:zlib';
import sharp, { type Sharp } from 'sharp';
import { type ExifInput, exifBlock, fieldGps, fieldTime } from './written-exif.ts';

/** Left third red, the rest green, 48 by 32: which way is up shows at once. */
export function picture(width = 48, height = 32): Sharp {
  const third = Math.round(width / 3);
  const data = Buffer.alloc(width * height * 3);
  for (let pixel = 0; pixel < width * height; pixel++)
    data.set(pixel % width < third ? [200, 40, 40] : [50, 150, 60], pixel * 3);
  return sharp(data, { raw: { width, height, channels: 3 } });
}

export async function jpeg(exif: ExifInput | null = null, xmp: string | null = null): Promise<Buffer> {
  const plain = await picture().jpeg().toBuffer();
  const segments = [
    ...(exif ? [segment(Buffer.concat([Buffer.from('Exif\0\0', 'latin1'), exifBlock(exif)]))] : []),
    ...(xmp ? [segment(Buffer.from(`http://ns.adobe.com/xap/1.0/\0${xmp}`, 'latin1'))] : []),
  ];
  return Buffer.concat([plain.subarray(0, 2), ...segments, plain.subarray(2)]);
}

function segment(body: Buffer): Buffer {
  const head = Buffer.from([0xff, 0xe1, 0, 0]);
  head.writeUInt16BE(body.length + 2, 2);
  return Buffer.concat([head, body]);
}

/** A photo as a phone in the field would write it, in each of the kinds that can be written here. */
export const fieldPhoto = (): Promise<Buffer> => jpeg({ exif: fieldTime, gps: fieldGps });

const sharpExif = {
  IFD2: { DateTimeOriginal: '2026:07:14 06:31:07', OffsetTimeOriginal: '+08:00' },
  IFD3: {
    GPSLatitudeRef: 'N',
    GPSLatitude: '14/1 10/1 12/1',
    GPSLongitudeRef: 'E',
    GPSLongitude: '121/1 15/1 36/10',
  },
};

export const webp = (): Promise<Buffer> => picture().withExif(sharpExif).webp().toBuffer();
export const avif = (): Promise<Buffer> => picture().withExif(sharpExif).avif({ effort: 0 }).toBuffer();
export const tiff = (): Promise<Buffer> => picture().tiff().toBuffer();
export const png = (): Promise<Buffer> => picture().png().toBuffer();

/** With an eXIf chunk, and with the older text chunk. */
export async function pngWith(chunk: 'eXIf' | 'zTXt', exif: ExifInput): Promise<Buffer> {
  const plain = await png();
  const block = exifBlock(exif);
  const hex = Buffer.concat([Buffer.from('Exif\0\0', 'latin1'), block]).toString('hex');
  const profile = `\nexif\n${String(hex.length / 2).padStart(8)}\n${hex.replace(/.{72}/g, '$&\n')}\n`;
  const body =
    chunk === 'eXIf'
      ? block
      : Buffer.concat([
          Buffer.from('Raw profile type exif\0\0', 'latin1'),
          deflateSync(Buffer.from(profile, 'latin1')),
        ]);
  const headerEnd = 8 + 25;
  return Buffer.concat([plain.subarray(0, headerEnd), pngChunk(chunk, body), plain.subarray(headerEnd)]);
}

function pngChunk(type: string, body: Buffer): Buffer {
  const chunk = Buffer.alloc(12 + body.length);
  chunk.writeUInt32BE(body.length, 0);
  chunk.write(type, 4, 'latin1');
  body.copy(chunk, 8);
  chunk.writeUInt32BE(checksum(chunk.subarray(4, 8 + body.length)), 8 + body.length);
  return chunk;
}

/** CRC of PNG (third edition, annex D); node:zlib has none in the first Node 20. */
export function checksum(bytes: Uint8Array): number {
  let crc = 0xffffffff;
  for (const byte of bytes) {
    crc ^= byte;
    for (let bit = 0; bit < 8; bit++) crc = crc & 1 ? (crc >>> 1) ^ 0xedb88320 : crc >>> 1;
  }
  return (crc ^ 0xffffffff) >>> 0;
}

export function box(type: string, ...bodies: Uint8Array[]): Buffer {
  const body = Buffer.concat(bodies);
  const head = Buffer.alloc(8);
  head.writeUInt32BE(8 + body.length, 0);
  head.write(type, 4, 'latin1');
  return Buffer.concat([head, body]);
}

export const ftyp = (...brands: string[]): Buffer =>
  box('ftyp', Buffer.from(`${brands[0]}\0\0\0\0${brands.join('')}`, 'latin1'));

/** A HEIC that holds nothing but an EXIF item: enough for its tags, not for a picture. */
export function heicWithExif(exif: ExifInput, brands = ['heic', 'mif1']): Buffer {
  const item = Buffer.concat([Buffer.from([0, 0, 0, 6]), Buffer.from('Exif\0\0', 'latin1'), exifBlock(exif)]);
  const full = (version: number): Buffer => Buffer.from([version, 0, 0, 0]);
  const infe = box('infe', full(2), Buffer.from([0, 1, 0, 0]), Buffer.from('Exif\0', 'latin1'));
  const metaOf = (offset: number): Buffer => {
    const place = Buffer.alloc(14);
    place.writeUInt16BE(1, 0);
    place.writeUInt16BE(1, 4);
    place.writeUInt32BE(offset, 6);
    place.writeUInt32BE(item.length, 10);
    const iloc = box('iloc', full(0), Buffer.from([0x44, 0x00, 0, 1]), place);
    return box('meta', full(0), box('iinf', full(0), Buffer.from([0, 1]), infe), iloc);
  };
  const head = ftyp(...brands);
  const meta = metaOf(head.length + metaOf(0).length + 8);
  return Buffer.concat([head, meta, box('mdat', item)]);
}

/** The eighty bytes that make a reader which steps by length stand still: a file type, then a box of no length. */
export const endlessHeic = (): Buffer => Buffer.concat([ftyp('heic', 'mif1'), Buffer.alloc(56)]);
