/**
 * Where the items of a HEIC or AVIF lie (the box iloc of ISO/IEC 14496-12, 8.11.3), held against how many bytes there are.
 * Boxes alone don't show every cut: one whose length is left open ends wherever the file does.
 */

/** Words for the first item that lies past the end, or null. `from` and `to` enclose what is inside the iloc box. */
export function itemPastTheEnd(view: DataView, from: number, to: number): string | null {
  const read = reader(view, from, to);
  const version = read(1);
  read(3);
  const sizes = read(2);
  const [offsetSize, lengthSize, baseSize] = [sizes >> 12, (sizes >> 8) & 15, (sizes >> 4) & 15];
  const indexSize = version === 0 ? 0 : sizes & 15;
  if (version > 2 || [offsetSize, lengthSize, baseSize, indexSize].some((size) => ![0, 4, 8].includes(size)))
    return 'the places of the items are written in no known form';
  const items = read(version < 2 ? 2 : 4);
  for (let item = 0; item < items; item++) {
    const id = read(version < 2 ? 2 : 4);
    const inThisFile = version === 0 || (read(2) & 15) === 0;
    const elsewhere = read(2) !== 0;
    const base = read(baseSize);
    const extents = read(2);
    if (Number.isNaN(extents)) return 'the places of the items are cut';
    // An extent may take no bytes at all; 65,535 of them an item then say nothing new.
    const written = offsetSize + lengthSize + indexSize > 0 ? extents : Math.min(extents, 1);
    for (let extent = 0; extent < written; extent++) {
      read(indexSize);
      const end = base + read(offsetSize) + read(lengthSize);
      if (Number.isNaN(end)) return 'the places of the items are cut';
      if (inThisFile && !elsewhere && end > view.byteLength)
        return `item ${id} lies past the end of the file, to byte ${end} of ${view.byteLength}`;
    }
  }
  return null;
}

/** Unsigned numbers one after the other; 0 for no bytes, NaN once the box is at its end. */
function reader(view: DataView, from: number, to: number): (size: number) => number {
  let at = from;
  return (size) => {
    if (size === 0) return 0;
    if (at + size > to) return Number.NaN;
    let value = 0;
    for (const end = at + size; at < end; at++) value = value * 256 + view.getUint8(at);
    return value;
  };
}
