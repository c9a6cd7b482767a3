/**
 * Walks the boxes of an ISO media file (ISO/IEC 14496-12, 4.2) before anything else reads it.
 * A box of no length makes readers that step by length stand still for ever; a box that runs past the end is a cut
 * file, and a cut HEIC decodes "successfully" with part of the picture plain green.
 */

import { itemPastTheEnd } from './item-extents.ts';

export type BoxWalk =
  | { sound: true }
  | { sound: false; fault: 'stands-still' | 'cut' | 'malformed'; words: string };

interface Box {
  type: string;
  start: number;
  /** First byte after the header. */
  body: number;
  end: number;
}

const sound: BoxWalk = { sound: true };

export function walkBoxes(bytes: Uint8Array): BoxWalk {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  return walkLevel(view, 0, bytes.byteLength, 0);
}

/** Boxes that hold boxes, with the bytes between the header and the first of them; only those that readers of photos enter. */
const holders: Record<string, number> = { meta: 4, iprp: 0, ipco: 0, moov: 0, dinf: 0 };
const deepest = 6;

function walkLevel(view: DataView, from: number, to: number, depth: number): BoxWalk {
  let at = from;
  let hasMeta = false;
  while (at < to) {
    // Length 0 means "to the end of the file", which only the last box, the picture's data, may say. Readers look for
    // the meta box first, so where none came before they would wait for it at this one.
    const box = readBox(view, at, to, depth === 0 && hasMeta);
    if ('sound' in box) return box;
    hasMeta ||= box.type === 'meta';
    const inside = holders[box.type];
    if (inside !== undefined && depth < deepest) {
      const below = walkLevel(view, box.body + inside, box.end, depth + 1);
      if (!below.sound) return below;
    }
    const items = box.type === 'iinf' ? walkItems(view, box, depth) : sound;
    if (!items.sound) return items;
    const past = box.type === 'iloc' ? itemPastTheEnd(view, box.body, box.end) : null;
    if (past !== null) return fault('cut', past);
    at = box.end;
  }
  return sound;
}

function readBox(view: DataView, at: number, to: number, mayBeOpen: boolean): Box | BoxWalk {
  if (to - at < 8) return fault('cut', `${to - at} bytes are left where a box should begin, at byte ${at}`);
  const type = String.fromCharCode(...new Uint8Array(view.buffer, view.byteOffset + at + 4, 4));
  let size = view.getUint32(at);
  let header = 8;
  if (size === 0 && mayBeOpen && type === 'mdat') size = to - at;
  if (size === 1) {
    if (to - at < 16) return fault('cut', `the file ends inside the head of box ${named(type)}`);
    size = Number(view.getBigUint64(at + 8));
    header = 16;
  }
  if (size === 0) return fault('stands-still', `box ${named(type)} at byte ${at} has no length`);
  if (size < header)
    return fault('malformed', `box ${named(type)} at byte ${at} is shorter than its own head`);
  if (at + size > to) return fault('cut', `box ${named(type)} runs past the end of the file`);
  return { type, start: at, body: at + header, end: at + size };
}

/** The list of items: a version and a count, then one box an item. */
function walkItems(view: DataView, list: Box, depth: number): BoxWalk {
  if (list.end - list.body < 6) return fault('cut', 'the list of items is cut');
  const countBytes = view.getUint8(list.body) === 0 ? 2 : 4;
  return walkLevel(view, list.body + 4 + countBytes, list.end, depth + 1);
}

const fault = (kind: 'stands-still' | 'cut' | 'malformed', words: string): BoxWalk => ({
  sound: false,
  fault: kind,
  words,
});

const named = (type: string): string => `'${type.replace(/[^ -~]/g, '?')}'`;
