/**
 * Green cover of a picture taken straight down. Excess green in chromatic coordinates, 2g - r - b (Woebbecke et al. 1995,
 * Trans. ASAE 38(1):259-269), against excess red 1.4r - g with the fixed threshold zero (Meyer & Camargo Neto 2008,
 * Comput. Electron. Agric. 63:282-293).
 */
export interface PictureRgb {
  /** Three bytes a pixel. */
  data: Uint8Array;
  width: number;
  height: number;
}

export interface GreenCover {
  /** 0 to 100. */
  coverPercent: number;
  method: string;
  warnings: string[];
  /** One byte a pixel: 1 plant, 0 not. */
  mask: Uint8Array;
}

/** -1 to 2; black is 0. */
export function excessGreen(red: number, green: number, blue: number): number {
  const sum = red + green + blue;
  return sum === 0 ? 0 : (2 * green - red - blue) / sum;
}

export function excessRed(red: number, green: number, blue: number): number {
  const sum = red + green + blue;
  return sum === 0 ? 0 : (1.4 * red - green) / sum;
}

export function greenCover({ data, width, height }: PictureRgb): GreenCover {
  const mask = new Uint8Array(width * height);
  let plant = 0;
  for (let pixel = 0; pixel < mask.length; pixel++) {
    const [red, green, blue] = [data[pixel * 3]!, data[pixel * 3 + 1]!, data[pixel * 3 + 2]!];
    if (excessGreen(red, green, blue) - excessRed(red, green, blue) > 0) {
      mask[pixel] = 1;
      plant++;
    }
  }
  const coverPercent = mask.length === 0 ? 0 : (100 * plant) / mask.length;
  return {
    coverPercent: Math.round(coverPercent * 10) / 10,
    method: 'excess green minus excess red, above zero',
    warnings: [],
    mask,
  };
}
