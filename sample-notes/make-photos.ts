/**
 * Draws the sample's photos into photos/ and lists them in photos.json.
 * Run with `npx tsx sample-notes/make-photos.ts`; the same photos come out each time.
 */
import { mkdir, readdir, rm, writeFile } from 'node:fs/promises';
import sharp from 'sharp';
import { countCover } from './count-cover.ts';
import { drawPhoto } from './draw-photo.ts';
import { phoneExif, phoneFix } from './phone-exif.ts';
import { SAMPLE_PHOTOS, type SamplePhoto } from './photo-list.ts';
import { readSeason } from './read-season.ts';

const FOLDER = new URL('./photos/', import.meta.url);
const { plots } = readSeason();

await mkdir(FOLDER, { recursive: true });
for (const old of await readdir(FOLDER)) await rm(new URL(old, FOLDER));
const listed = [];
for (const photo of SAMPLE_PHOTOS) listed.push(await makePhoto(photo));
await writeFile(new URL('./photos.json', import.meta.url), `${JSON.stringify(listed, null, 2)}\n`);

async function makePhoto(photo: SamplePhoto) {
  const plot = plots.find(({ code }) => code === photo.plot);
  if (!plot) throw new Error(`${photo.file}: no plot ${photo.plot} in season.yaml`);
  const { picture, plants } = drawPhoto(photo, plot);
  const fix = phoneFix(photo, plot);
  const jpeg = await smallJpeg(picture, photo.scene.view === 'from above', phoneExif(photo, fix, plot));
  await writeFile(new URL(photo.file, FOLDER), jpeg);
  console.log(`${photo.file}  ${Math.round(jpeg.length / 1000)} kB`);
  return {
    file: photo.file,
    plot: photo.plot,
    takenAt: photo.takenAt,
    straightDown: photo.scene.view === 'from above',
    coverPercentTrue: plants ? await countCover(plants) : null,
    position: fix && {
      latitude: Number(fix.latitude.toFixed(7)),
      longitude: Number(fix.longitude.toFixed(7)),
      errorM: fix.errorM,
    },
    remark: remarkOn(photo),
  };
}

/**
 * Lowers the quality until the photo is small enough to keep beside the code. Photos whose green is to be measured
 * keep their colours at full resolution: halved, the green of thin leaves runs out over the soil between them.
 */
async function smallJpeg(
  picture: string,
  straightDown: boolean,
  exif: ReturnType<typeof phoneExif>,
): Promise<Buffer> {
  const largestBytes = straightDown ? 58_000 : 47_000;
  const drawn = await sharp(Buffer.from(picture), { unlimited: true }).flatten().png().toBuffer();
  for (let quality = 80; ; quality -= 4) {
    const jpeg = await sharp(drawn)
      .blur(0.7)
      .jpeg({ quality, mozjpeg: true, chromaSubsampling: straightDown ? '4:4:4' : '4:2:0' })
      .withExif(exif)
      .toBuffer();
    if (jpeg.length <= largestBytes || quality <= 24) return jpeg;
  }
}

function remarkOn(photo: SamplePhoto): string | undefined {
  if (photo.position === 'never had') return 'taken with the position switched off';
  if (photo.position === 'zeroed') return 'position blanked to zero when the photo was passed on';
  return photo.withoutOffset ? 'no offset from UTC beside the time' : undefined;
}
