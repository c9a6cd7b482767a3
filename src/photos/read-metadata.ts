/**
 * Raw tags out of a photo's bytes: the only file that knows exifr. It can be sent into an endless loop by a crafted
 * file, so this runs where it can be killed, behind the box walk.
 */
import exifr from 'exifr';
import sharp from 'sharp';
import { type BoxWalk, walkBoxes } from './box-walk.ts';
import { disarmTags } from './disarm-tags.ts';
import { mostPixels } from './ingest.ts';
import { jpegHead } from './jpeg-head.ts';
import { isIsoMedia, kindOf, type PhotoKind } from './kind.ts';
import { pngProfile } from './png-profile.ts';
import { type ExifTags, type GpsTags, noTags, type RawTags } from './raw-tags.ts';

/** Never throws: where nothing can be read, there are no tags. */
export async function readMetadata(bytes: Uint8Array): Promise<RawTags> {
  const kind = kindOf(bytes);
  const walk: BoxWalk = isIsoMedia(bytes) ? walkBoxes(bytes) : { sound: true };
  // A cut file still has its tags; the other faults trap a reader.
  if (kind === null || (!walk.sound && walk.fault !== 'cut')) return noTags();
  const first =
    kind === 'png'
      ? null
      : await readTags(
          disarmTags(kind === 'jpeg' ? jpegHead(bytes) : walk.sound ? bytes : lengthened(bytes)),
        );
  if (kind === 'jpeg' || (first && hasTiff(first))) return first ?? noTags();
  return (await secondRoute(kind, bytes, first?.xmp ?? null)) ?? first ?? noTags();
}

/** The block of tags may run past the cut; with zeros behind it, what did arrive can be read. */
function lengthened(bytes: Uint8Array): Uint8Array {
  const longer = new Uint8Array(bytes.length + 65_536);
  longer.set(bytes);
  return longer;
}

const hasTiff = (tags: RawTags): boolean => Object.keys(tags.exif).length + Object.keys(tags.gps).length > 0;

const exifNames = [
  'DateTimeOriginal',
  'CreateDate',
  'SubSecTimeOriginal',
  'SubSecTimeDigitized',
  'OffsetTime',
  'OffsetTimeOriginal',
  'OffsetTimeDigitized',
] as const satisfies (keyof ExifTags)[];

const gpsNames = [
  'GPSLatitudeRef',
  'GPSLatitude',
  'GPSLongitudeRef',
  'GPSLongitude',
  'GPSAltitudeRef',
  'GPSAltitude',
  'GPSTimeStamp',
  'GPSDateStamp',
  'GPSImgDirectionRef',
  'GPSImgDirection',
  'GPSHPositioningError',
] as const satisfies (keyof GpsTags)[];

interface Parsed {
  exif?: ExifTags;
  gps?: GpsTags;
  xmp?: unknown;
}

/** One bad tag hides those after it in its block: where one is met, each that is still missing is asked for alone. */
async function readTags(bytes: Uint8Array): Promise<RawTags | null> {
  const all = { exif: exifNames, gps: gpsNames, xmp: true };
  const whole = await parse(bytes, all, 'strict');
  const found = whole ?? (await parse(bytes, all, 'lenient'));
  if (!found) return null;
  const exif = { ...found.exif };
  const gps = { ...found.gps };
  if (!whole) {
    for (const name of exifNames.filter((wanted) => !(wanted in exif)))
      Object.assign(exif, (await parse(bytes, { exif: [name], gps: [], xmp: false }, 'lenient'))?.exif);
    for (const name of gpsNames.filter((wanted) => !(wanted in gps)))
      Object.assign(gps, (await parse(bytes, { exif: [], gps: [name], xmp: false }, 'lenient'))?.gps);
  }
  return { exif: withBlankForms(exif), gps, xmp: typeof found.xmp === 'string' ? found.xmp : null };
}

interface Wanted {
  exif: readonly string[];
  gps: readonly string[];
  xmp: boolean;
}

/** Null where it throws: at the first fault when strict, only where nothing at all can be read when lenient. */
async function parse(
  bytes: Uint8Array,
  wanted: Wanted,
  manner: 'strict' | 'lenient',
): Promise<Parsed | null> {
  const options = {
    tiff: true,
    ifd0: { pick: ['Orientation'] },
    exif: wanted.exif.length > 0 && { pick: [...wanted.exif] },
    gps: wanted.gps.length > 0 && { pick: [...wanted.gps] },
    xmp: wanted.xmp && { parse: false, multiSegment: false },
    mergeOutput: false,
    translateKeys: true,
    translateValues: false,
    reviveValues: false,
    silentErrors: manner === 'lenient',
  };
  try {
    return ((await exifr.parse(bytes, options)) as Parsed | undefined) ?? {};
  } catch {
    return null;
  }
}

/**
 * WebP, AVIF and newer HEIC, which exifr alone refuses: their EXIF block comes out of sharp, behind six bytes of head.
 * In PNG it is cut out here.
 */
async function secondRoute(kind: PhotoKind, bytes: Uint8Array, xmp: string | null): Promise<RawTags | null> {
  const found = await sharp(bytes, { failOn: 'none', limitInputPixels: mostPixels })
    .metadata()
    .catch(() => null);
  const block = kind === 'png' ? pngProfile(bytes) : found?.exif ? withoutHead(found.exif) : null;
  const tags = block ? await readTags(disarmTags(block)) : null;
  return { ...(tags ?? noTags()), xmp: xmp ?? found?.xmp?.toString('utf8') ?? null };
}

const withoutHead = (block: Buffer): Buffer =>
  block.toString('latin1', 0, 4) === 'Exif' ? block.subarray(6) : block;

// Exif 2.32, 4.6.5: an unknown date keeps its colons and has blanks for digits. exifr trims strings, so what it leaves
// of such a one gets its blanks back; only then can the flag quote what stands in the file.
const blankDate = '    :  :     :  :  ';
const blankOffset = '   :  ';

function withBlankForms(tags: ExifTags): ExifTags {
  return Object.fromEntries(
    Object.entries(tags).map(([name, value]) => {
      const form = [blankDate, blankOffset].find((blank) => blank.trim() === value);
      return [name, form ?? value];
    }),
  );
}
