/** What makes a picture unfit for counting its green. The limits come from drawn pictures with known cover: common practice. */
import type { PictureRgb } from './canopy-cover.ts';

export const darkestMeanGrey = 45;
export const mostGlarePercent = 5;
export const leastSharpness = 0.015;

/** Empty where nothing speaks against the figure. */
export function pictureWarnings(picture: PictureRgb): string[] {
  const grey = greyOf(picture);
  const glarePercent = glareShare(picture) * 100;
  const warnings: string[] = [];
  if (meanOf(grey) < darkestMeanGrey)
    warnings.push('The picture is very dark: shade and plants look alike. Take it again in better light.');
  if (glarePercent > mostGlarePercent)
    warnings.push(
      `${Math.round(glarePercent)} % of the picture is glare, which hides what lies under it. Stand so that the sun or sky is not mirrored.`,
    );
  if (sharpness(grey, picture) < leastSharpness)
    warnings.push(
      'The picture is blurred, or shows nothing but an even surface. Hold still and tap to focus.',
    );
  return warnings;
}

/** Share, 0 to 1, of pixels that are bright (230 of 255 and more in the brightest channel) and without colour. */
export function glareShare({ data, width, height }: PictureRgb): number {
  let glare = 0;
  for (let pixel = 0; pixel < width * height; pixel++) {
    const [red, green, blue] = [data[pixel * 3]!, data[pixel * 3 + 1]!, data[pixel * 3 + 2]!];
    const brightest = Math.max(red, green, blue);
    if (brightest >= 230 && brightest - Math.min(red, green, blue) <= 0.12 * brightest) glare++;
  }
  return width * height === 0 ? 0 : glare / (width * height);
}

/** Luma of ITU-R BT.601, 0 to 255. */
function greyOf({ data, width, height }: PictureRgb): Float32Array {
  const grey = new Float32Array(width * height);
  for (let pixel = 0; pixel < grey.length; pixel++)
    grey[pixel] = 0.299 * data[pixel * 3]! + 0.587 * data[pixel * 3 + 1]! + 0.114 * data[pixel * 3 + 2]!;
  return grey;
}

/** Variance of the Laplacian as a share of the variance of the grey itself, so that few plants do not pass for blur. */
function sharpness(grey: Float32Array, picture: PictureRgb): number {
  const mean = meanOf(grey);
  const contrast = meanOf(grey.map((value) => (value - mean) ** 2));
  return contrast === 0 ? 0 : laplacianVariance(grey, picture) / contrast;
}

/**
 * Variance of the Laplacian (four neighbours), the focus measure of Pech-Pacheco et al. 2000 (Proc. ICPR 3:314-317;
 * memory): small where no edge is sharp. 0 where the picture is too small to have an inside.
 */
export function laplacianVariance(
  grey: ArrayLike<number>,
  { width, height }: Pick<PictureRgb, 'width' | 'height'>,
): number {
  let [sum, squares, count] = [0, 0, 0];
  for (let y = 1; y < height - 1; y++) {
    for (let x = 1; x < width - 1; x++) {
      const at = y * width + x;
      const edge = grey[at - 1]! + grey[at + 1]! + grey[at - width]! + grey[at + width]! - 4 * grey[at]!;
      sum += edge;
      squares += edge * edge;
      count++;
    }
  }
  return count === 0 ? 0 : squares / count - (sum / count) ** 2;
}

function meanOf(values: Float32Array): number {
  let sum = 0;
  for (const value of values) sum += value;
  return values.length === 0 ? 0 : sum / values.length;
}
