/** A colour as hue in degrees, saturation and lightness in percent. */
export interface Colour {
  hue: number;
  saturation: number;
  lightness: number;
}

export const YOUNG_GREEN: Colour = { hue: 86, saturation: 46, lightness: 43 };
export const FED_GREEN: Colour = { hue: 100, saturation: 38, lightness: 29 };
export const DARK_GREEN: Colour = { hue: 112, saturation: 40, lightness: 24 };
export const HUNGRY_YELLOW: Colour = { hue: 66, saturation: 45, lightness: 42 };
export const GRASS_GREEN: Colour = { hue: 78, saturation: 52, lightness: 40 };
export const SEDGE_GREEN: Colour = { hue: 92, saturation: 56, lightness: 46 };
export const BROADLEAF_GREEN: Colour = { hue: 128, saturation: 40, lightness: 33 };
export const PANICLE: Colour = { hue: 74, saturation: 42, lightness: 50 };
export const STRAW: Colour = { hue: 46, saturation: 42, lightness: 62 };
const HAZE: Colour = { hue: 96, saturation: 16, lightness: 66 };

export const lighter = (colour: Colour, by: number): Colour => ({
  ...colour,
  lightness: Math.min(92, Math.max(6, colour.lightness + by)),
});

/** Towards the pale of the distance; `share` 0 is none, 1 all. */
export const hazed = (colour: Colour, share: number): Colour => ({
  hue: colour.hue + (HAZE.hue - colour.hue) * share,
  saturation: colour.saturation + (HAZE.saturation - colour.saturation) * share,
  lightness: colour.lightness + (HAZE.lightness - colour.lightness) * share,
});

export const css = ({ hue, saturation, lightness }: Colour): string =>
  `hsl(${hue.toFixed(0)},${saturation.toFixed(0)}%,${lightness.toFixed(1)}%)`;
