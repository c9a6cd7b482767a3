/**
 * Raw tags out of a photo's bytes: the only file that knows exifr. It can be sent into an endless loop by a crafted
 * file, so this runs where it can be killed, behind the box walk.
 */
import exifr from 'exifr';
import sharp from 'sharp';
import { type BoxWalk, walkBoxes } from './box-walk.ts';
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
  const first = await readTags(kind === 'jpeg' ? jpegHead(bytes) : walk.sound ? bytes : lengthened(bytes));
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
  ifd0?: { ExifIFD?: unknown; GpsIFD?: unknown };
}

/** One bad tag hides those after it in its block: where the block is there and its main tags are not, each is asked for alone. */
async function readTags(bytes: Uint8Array): Promise<RawTags | null> {
  const found = await parse(bytes, exifNames, gpsNames, true);
  if (!found) return null;
  const tags = {
    exif: found.exif ?? {},
    gps: found.gps ?? {},
    xmp: typeof found.xmp === 'string' ? found.xmp : null,
  };
  const exifHides = found.ifd0?.ExifIFD !== undefined && !('DateTimeOriginal' in tags.exif);
  const gpsHides =
    found.ifd0?.GpsIFD !== undefined && !('GPSLatitude' in tags.gps && 'GPSLongitude' in tags.gps);
  if (exifHides)
    for (const name of exifNames) Object.assign(tags.exif, (await parse(bytes, [name], [], false))?.exif);
  if (gpsHides)
    for (const name of gpsNames) Object.assign(tags.gps, (await parse(bytes, [], [name], false))?.gps);
  tags.exif = withBlankForms(tags.exif);
  return tags;
}

async function parse(
  bytes: Uint8Array,
  exif: readonly string[],
  gps: readonly string[],
  xmp: boolean,
): Promise<Parsed | null> {
  try {
    const options = {
      tiff: true,
      ifd0: { pick: ['Orientation'] },
      exif: exif.length > 0 ? { pick: [...exif] } : false,
      gps: gps.length > 0 ? { pick: [...gps] } : false,
      xmp: xmp ? { parse: false, multiSegment: false } : false,
      mergeOutput: false,
      translateKeys: true,
      translateValues: false,
      reviveValues: false,
      // Keeps the pointers to the blocks, which tell an empty block from a missing one.
      sanitize: false,
      silentErrors: true,
    };
    return ((await exifr.parse(bytes, options as object)) as Parsed | undefined) ?? {};
  } catch {
    return null;
  }
}

/**
 * WebP, AVIF and newer HEIC, which exifr alone refuses: their EXIF block comes out of sharp, behind six bytes of head.
 * In PNG it may lie in a text chunk.
 */
async function secondRoute(kind: PhotoKind, bytes: Uint8Array, xmp: string | null): Promise<RawTags | null> {
  const found = await sharp(bytes, { failOn: 'none', limitInputPixels: mostPixels })
    .metadata()
    .catch(() => null);
  const block = found?.exif ? withoutHead(found.exif) : kind === 'png' ? pngProfile(bytes) : null;
  const tags = block ? await readTags(block) : null;
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
