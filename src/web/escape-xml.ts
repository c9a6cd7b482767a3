const MARKS: Record<string, string> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' };

/** Text that may stand in an SVG or HTML document, in an attribute too. */
export const escapeXml = (text: string): string => text.replace(/[&<>"']/g, (mark) => MARKS[mark]!);
