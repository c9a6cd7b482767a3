/**
 * Raw tags out of a photo's bytes: the only file that knows exifr. It can be sent into an endless loop by a crafted
 * file, so this runs where it can be killed, behind the box walk.
 */
import exifr from 'exifr';
import sharp from 'sharp';
import { walkBoxes } from './box-walk.ts';
import { mostPixels } from './ingest.ts';
import { isIsoMedia, kindOf } from './kind.ts';
import { type ExifTags, type GpsTags, noTags, type RawTags } from './raw-tags.ts';

/** Never throws: where nothing can be read, there are no tags. */
export async function readMetadata(bytes: Uint8Array): Promise<RawTags> {
  if (kindOf(bytes) === null || standsStill(bytes)) return noTags();
  const first = await readTags(bytes);
  if (first && hasTiff(first)) return first;
  return (await readThroughSharp(bytes, first?.xmp ?? null)) ?? first ?? noTags();
}

/** A cut file still has its tags, so only the faults that trap a reader keep it out. */
function standsStill(bytes: Uint8Array): boolean {
  const walk = isIsoMedia(bytes) ? walkBoxes(bytes) : { sound: true as const };
  return !walk.sound && walk.fault !== 'cut';
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
  errors?: unknown[];
}

async function readTags(bytes: Uint8Array): Promise<RawTags | null> {
  const found = await parse(bytes, exifNames, gpsNames, true);
  if (!found) return null;
  const tags = {
    exif: found.exif ?? {},
    gps: found.gps ?? {},
    xmp: typeof found.xmp === 'string' ? found.xmp : null,
  };
  if (found.errors?.length) await readOneByOne(bytes, tags);
  tags.exif = withBlankForms(tags.exif);
  return tags;
}

/** One bad tag hides those after it in the same block, so the missing ones are asked for alone. */
async function readOneByOne(bytes: Uint8Array, tags: RawTags): Promise<void> {
  for (const name of exifNames) {
    if (!(name in tags.exif)) Object.assign(tags.exif, (await parse(bytes, [name], [], false))?.exif);
  }
  for (const name of gpsNames) {
    if (!(name in tags.gps)) Object.assign(tags.gps, (await parse(bytes, [], [name], false))?.gps);
  }
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
      sanitize: true,
      silentErrors: true,
    };
    return ((await exifr.parse(bytes, options as object)) as Parsed | undefined) ?? {};
  } catch {
    return null;
  }
}

/** WebP, AVIF and newer HEIC, which exifr alone refuses: their EXIF block comes out of sharp, behind six bytes of head. */
async function readThroughSharp(bytes: Uint8Array, xmp: string | null): Promise<RawTags | null> {
  const found = await sharp(bytes, { failOn: 'none', limitInputPixels: mostPixels })
    .metadata()
    .catch(() => null);
  if (!found) return null;
  const tags = found.exif ? await readTags(withoutHead(found.exif)) : null;
  return { ...(tags ?? noTags()), xmp: xmp ?? found.xmp?.toString('utf8') ?? null };
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
