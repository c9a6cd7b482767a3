/** Single fields of an XMP packet (ISO 16684-1), found by namespace, whatever prefix the writer chose for it. */

export const xmpNamespaces = {
  exif: 'http://ns.adobe.com/exif/1.0/',
  xmp: 'http://ns.adobe.com/xap/1.0/',
  photoshop: 'http://ns.adobe.com/photoshop/1.0/',
} as const;

/** Packets are a few kilobytes; what is longer than this is not looked at. */
const longestPacket = 1_000_000;

/** The value of `name` as attribute or as element, trimmed; null where it is not written. */
export function xmpField(packet: string, namespace: keyof typeof xmpNamespaces, name: string): string | null {
  if (packet.length > longestPacket) return null;
  const prefix = prefixOf(packet, xmpNamespaces[namespace]);
  if (!prefix) return null;
  const field = `${prefix}:${name}`;
  return attribute(packet, field) ?? element(packet, field);
}

function prefixOf(packet: string, namespace: string): string | null {
  const at = Math.max(packet.indexOf(`="${namespace}"`), packet.indexOf(`='${namespace}'`));
  if (at < 0) return null;
  return /xmlns:([\w.-]{1,40})\s{0,8}$/.exec(packet.slice(Math.max(0, at - 60), at))?.[1] ?? null;
}

function attribute(packet: string, field: string): string | null {
  for (let at = packet.indexOf(field); at >= 0; at = packet.indexOf(field, at + 1)) {
    if (!/\s/.test(packet[at - 1] ?? '')) continue;
    const value = /^\s{0,8}=\s{0,8}(?:"([^"<]{0,200})"|'([^'<]{0,200})')/.exec(
      packet.slice(at + field.length, at + field.length + 220),
    );
    if (value) return (value[1] ?? value[2] ?? '').trim();
  }
  return null;
}

function element(packet: string, field: string): string | null {
  const open = packet.indexOf(`<${field}>`);
  if (open < 0) return null;
  const from = open + field.length + 2;
  const close = packet.indexOf('<', from);
  return close < 0 || close - from > 200 ? null : packet.slice(from, close).trim();
}
