import geodesic from 'geographiclib-geodesic';
import { seededRandom } from './drawing/seeded-random.ts';
import type { SamplePhoto } from './photo-list.ts';
import type { SamplePlot } from './read-season.ts';

export interface Fix {
  latitude: number;
  longitude: number;
  errorM: number;
}

/** Where the phone believed to be: the person stood in or at the plot, and the position is some metres off. */
export function phoneFix(photo: SamplePhoto, plot: SamplePlot): Fix | null {
  if (photo.position) return null;
  const random = seededRandom(`${photo.file} position`);
  const { widthM, lengthM } = plot.size;
  const straightDown = photo.scene.view === 'from above';
  const acrossM = widthM * random.between(0.25, 0.75);
  const alongM = straightDown ? lengthM * random.between(0.2, 0.8) : random.between(0, 2);
  const offM = random.between(0.5, 2.6) + random.between(0, 2.4);
  const { bearingDeg } = plot.corner;
  const stoodAt = step(step(plot.corner, bearingDeg, alongM), bearingDeg + 90, acrossM);
  const at = step(stoodAt, random.between(0, 360), offM);
  return {
    latitude: at.latitude,
    longitude: at.longitude,
    errorM: Number((offM + random.between(0.6, 3.2)).toFixed(1)),
  };
}

/** Tags as the image library writes them: IFD0 the device, IFD2 the exposure, IFD3 the position. */
export function phoneExif(photo: SamplePhoto, fix: Fix | null, plot: SamplePlot) {
  const device = plot.code.startsWith('W') || photo.withoutOffset ? 'Reed 2' : 'Reed 5';
  const taken = photo.takenAt.replaceAll('-', ':').replace('T', ' ');
  return {
    IFD0: { Make: 'Sedgeware', Model: device, DateTime: taken },
    IFD2: {
      DateTimeOriginal: taken,
      DateTimeDigitized: taken,
      ...(photo.withoutOffset ? {} : { OffsetTimeOriginal: '+08:00', OffsetTime: '+08:00' }),
    },
    ...(photo.position === 'never had' ? {} : { IFD3: fix ? positionTags(photo, fix, plot) : BLANKED }),
  };
}

const BLANKED = {
  GPSLatitudeRef: 'N',
  GPSLatitude: '0/1 0/1 0/1',
  GPSLongitudeRef: 'E',
  GPSLongitude: '0/1 0/1 0/1',
};

function positionTags(photo: SamplePhoto, fix: Fix, plot: SamplePlot) {
  const utc = new Date(`${photo.takenAt}+08:00`).toISOString();
  const [hours, minutes, seconds] = utc.slice(11, 19).split(':').map(Number);
  const looking =
    photo.scene.view === 'along the rows'
      ? { GPSImgDirectionRef: 'T', GPSImgDirection: `${plot.corner.bearingDeg}/1` }
      : {};
  return {
    GPSLatitudeRef: 'N',
    GPSLatitude: degreesMinutesSeconds(fix.latitude),
    GPSLongitudeRef: 'E',
    GPSLongitude: degreesMinutesSeconds(fix.longitude),
    GPSTimeStamp: `${hours}/1 ${minutes}/1 ${seconds}/1`,
    GPSDateStamp: utc.slice(0, 10).replaceAll('-', ':'),
    GPSHPositioningError: `${Math.round(fix.errorM * 10)}/10`,
    ...looking,
  };
}

function degreesMinutesSeconds(degrees: number): string {
  const tenThousandths = Math.round(degrees * 3600 * 10_000);
  const minutes = Math.floor(tenThousandths / 600_000);
  return `${Math.floor(minutes / 60)}/1 ${minutes % 60}/1 ${tenThousandths % 600_000}/10000`;
}

function step(from: { latitude: number; longitude: number }, azimuthDeg: number, distanceM: number) {
  const there = geodesic.Geodesic.WGS84.Direct(from.latitude, from.longitude, azimuthDeg, distanceM);
  return { latitude: there.lat2!, longitude: there.lon2! };
}
