/** EXIF blocks written by hand, so that a test can put blanks, 0/0 and other things there that no library would write. */

export type TagValue =
  | { ascii: string; bytes?: number }
  | { rationals: [number, number][] }
  | { short: number }
  | { byte: number }
  /** A value type that does not exist. */
  | { nonsense: number };

export interface ExifInput {
  ifd0?: Record<number, TagValue>;
  exif?: Record<number, TagValue>;
  gps?: Record<number, TagValue>;
}

/** Tag numbers of Exif 2.32. */
export const tag = {
  orientation: 0x0112,
  modifyDate: 0x0132,
  dateTimeOriginal: 0x9003,
  createDate: 0x9004,
  offsetTime: 0x9010,
  offsetTimeOriginal: 0x9011,
  subSecTimeOriginal: 0x9291,
  latitudeRef: 1,
  latitude: 2,
  longitudeRef: 3,
  longitude: 4,
  altitudeRef: 5,
  altitude: 6,
  timeStamp: 7,
  dateStamp: 0x1d,
} as const;

const ascii = (text: string): TagValue => ({ ascii: text });
const whole = (...numbers: number[]): TagValue => ({ rationals: numbers.map((number) => [number, 1]) });

/** Plot edge at 14 10' 12" N, 121 15' 3.6" E, 21 m above the sea, as a phone writes it. */
export const fieldGps: Record<number, TagValue> = {
  [tag.latitudeRef]: ascii('N'),
  [tag.latitude]: whole(14, 10, 12),
  [tag.longitudeRef]: ascii('E'),
  [tag.longitude]: {
    rationals: [
      [121, 1],
      [15, 1],
      [36, 10],
    ],
  },
  [tag.altitudeRef]: { byte: 0 },
  [tag.altitude]: whole(21),
  [tag.timeStamp]: whole(22, 31, 5),
  [tag.dateStamp]: ascii('2026:07:13'),
};
export const fieldTime: Record<number, TagValue> = { [tag.dateTimeOriginal]: ascii('2026:07:14 06:31:07') };
export const fieldLatitude = 14.17;
export const fieldLongitude = 121.251;

/** A TIFF block, little endian: IFD0 with its pointers, then the blocks. */
export function exifBlock({ ifd0 = {}, exif, gps }: ExifInput): Buffer {
  const first: Record<number, TagValue | { pointer: number }> = { ...ifd0 };
  const blocks = [
    { pointerTag: 0x8769, tags: exif },
    { pointerTag: 0x8825, tags: gps },
  ].filter((block) => block.tags !== undefined);
  for (const { pointerTag } of blocks) first[pointerTag] = { pointer: 0 };
  let at = 8 + directory(first, 8).length;
  const bodies: Buffer[] = [];
  for (const { pointerTag, tags } of blocks) {
    first[pointerTag] = { pointer: at };
    bodies.push(directory(tags!, at));
    at += bodies.at(-1)!.length;
  }
  return Buffer.concat([Buffer.from('49492a0008000000', 'hex'), directory(first, 8), ...bodies]);
}

function directory(tags: Record<number, TagValue | { pointer: number }>, start: number): Buffer {
  const entries = Object.entries(tags).map(([number, value]) => ({
    number: Number(number),
    ...encoded(value),
  }));
  const head = Buffer.alloc(2 + entries.length * 12 + 4);
  head.writeUInt16LE(entries.length, 0);
  const tail: Buffer[] = [];
  let tailAt = start + head.length;
  for (const [index, { number, type, count, data }] of entries.entries()) {
    const at = 2 + index * 12;
    head.writeUInt16LE(number, at);
    head.writeUInt16LE(type, at + 2);
    head.writeUInt32LE(count, at + 4);
    if (data.length <= 4) data.copy(head, at + 8);
    else {
      head.writeUInt32LE(tailAt, at + 8);
      tail.push(data);
      tailAt += data.length;
    }
  }
  return Buffer.concat([head, ...tail]);
}

function encoded(value: TagValue | { pointer: number }): { type: number; count: number; data: Buffer } {
  if ('ascii' in value) {
    const data = Buffer.alloc(value.bytes ?? value.ascii.length + 1);
    data.write(value.ascii, 'latin1');
    return { type: 2, count: data.length, data };
  }
  if ('rationals' in value) {
    const data = Buffer.alloc(8 * value.rationals.length);
    for (const [index, [over, under]] of value.rationals.entries()) {
      data.writeUInt32LE(over, index * 8);
      data.writeUInt32LE(under, index * 8 + 4);
    }
    return { type: 5, count: value.rationals.length, data };
  }
  const data = Buffer.alloc(4);
  if ('pointer' in value) {
    data.writeUInt32LE(value.pointer);
    return { type: 4, count: 1, data };
  }
  if ('nonsense' in value) return { type: value.nonsense, count: 1, data };
  if ('short' in value) {
    data.writeUInt16LE(value.short);
    return { type: 3, count: 1, data };
  }
  data.writeUInt8(value.byte);
  return { type: 1, count: 1, data };
}
