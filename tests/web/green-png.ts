import sharp from 'sharp';

/** A plain green picture of 60 x 45 pixels; each shade is another file. */
export const greenPng = (shade: number): Promise<Buffer> =>
  sharp({ create: { width: 60, height: 45, channels: 3, background: { r: shade, g: 130, b: shade } } })
    .png()
    .toBuffer();
