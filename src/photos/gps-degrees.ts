/** Numbers of GPS tags, in the forms in which cameras write them. */

/**
 * Degrees from [degrees, minutes, seconds], one number or a text; NaN where they can't be had, and where any of the
 * three is 0/0.
 */
export function degreesOf(value: unknown): number {
  if (typeof value === 'number') return value;
  if (typeof value === 'string') return sexagesimal(numbersIn(value));
  const parts = listOf(value);
  return parts === null ? Number.NaN : sexagesimal(parts);
}

/** One finite number from a number, a list that begins with one, or null. */
export function numberOf(value: unknown): number | null {
  const first = typeof value === 'number' ? value : listOf(value)?.[0];
  return first !== undefined && Number.isFinite(first) ? first : null;
}

/** Plain numbers of an array or a typed array, or null. */
export function listOf(value: unknown): number[] | null {
  if (!Array.isArray(value) && !ArrayBuffer.isView(value)) return null;
  const list = Array.from(value as ArrayLike<unknown>);
  return list.every((part) => typeof part === 'number') ? (list as number[]) : null;
}

function sexagesimal(parts: number[]): number {
  const [degrees = Number.NaN, minutes = 0, seconds = 0] = parts;
  if (parts.length > 3 || minutes < 0 || minutes > 60 || seconds < 0 || seconds > 60) return Number.NaN;
  return degrees + minutes / 60 + seconds / 3600;
}

/**
 * `52,00000,50,00000,34,01180` is a phone that wrote three numbers with decimal commas and commas between them:
 * 52.00000 degrees, 50.00000 minutes, 34.01180 seconds.
 */
export function numbersIn(text: string): number[] {
  const digits = /^\d+(?:,\d+)*$/.test(text.trim()) ? text.trim().split(',') : [];
  if (digits.length === 6) return [0, 2, 4].map((at) => Number(`${digits[at]}.${digits[at + 1]}`));
  const found = text
    .trim()
    .split(/[\s,;]+/)
    .map(Number);
  return found.length <= 3 && found.every((number) => Number.isFinite(number)) && text.trim() !== ''
    ? found
    : [];
}
