import sharp from 'sharp';

/** Percent of the picture that is plant, to one decimal, from the drawing of the plants in white on black. */
export async function countCover(plants: string): Promise<number> {
  const pixels = await sharp(Buffer.from(plants), { unlimited: true }).greyscale().raw().toBuffer();
  const covered = pixels.reduce((count, value) => count + (value > 127 ? 1 : 0), 0);
  return Math.round((1000 * covered) / pixels.length) / 10;
}
