/** A band of a score as it is printed: `0`, `<1`, `>65`, `>=61`, `26-50`. */
export interface Band {
  score: number;
  printed: string;
  from: number;
  to: number;
  /** The end itself lies outside. */
  fromOpen: boolean;
  toOpen: boolean;
}

/** Rows of the table in code, so an unreadable one is a mistake of ours and throws. */
export function printedBand(score: number, printed: string): Band {
  const range = /^(\d+)-(\d+)$/.exec(printed);
  if (range) return band(score, printed, Number(range[1]), Number(range[2]));
  const oneSided = /^(>=|>|<)(\d+)$/.exec(printed);
  if (oneSided?.[1] === '<')
    return { ...band(score, printed, 0, Number(oneSided[2])), fromOpen: true, toOpen: true };
  if (oneSided)
    return {
      ...band(score, printed, Number(oneSided[2]), Number.POSITIVE_INFINITY),
      fromOpen: oneSided[1] === '>',
    };
  if (/^\d+$/.test(printed)) return band(score, printed, Number(printed), Number(printed));
  throw new Error(`unreadable band ${printed}`);
}

export function inBand(value: number, { from, to, fromOpen, toOpen }: Band): boolean {
  return (fromOpen ? value > from : value >= from) && (toOpen ? value < to : value <= to);
}

const band = (score: number, printed: string, from: number, to: number): Band => ({
  score,
  printed,
  from,
  to,
  fromOpen: false,
  toOpen: false,
});
