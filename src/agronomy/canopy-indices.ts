/**
 * Greenness of one pixel in chromatic coordinates (r = R / (R + G + B) and so on), so that brightness alone changes
 * nothing. Red, green and blue in any one unit, none negative.
 */

/**
 * 2g - r - b, which is 3g - 1 (Woebbecke et al. 1995, Trans. ASAE 38(1):259-269): -1 pure red or blue, 0 grey, 2 pure
 * green. Black has no colour and gets 0.
 */
export function excessGreen(red: number, green: number, blue: number): number {
  const sum = red + green + blue;
  return sum === 0 ? 0 : (2 * green - red - blue) / sum;
}

/** 2G - R - B without division by the sum, as in Richardson et al. 2007; grows with the light. */
export const rawExcessGreen = (red: number, green: number, blue: number): number => 2 * green - red - blue;

/** 1.4r - g (Meyer & Camargo Neto 2008, Comput. Electron. Agric. 63:282-293; the factor from memory). Black gets 0. */
export function excessRed(red: number, green: number, blue: number): number {
  const sum = red + green + blue;
  return sum === 0 ? 0 : (1.4 * red - green) / sum;
}
