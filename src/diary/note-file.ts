/** PURE. A note as a text file: a few header lines, an empty line, the words. */
export interface NoteFile {
  /** Local, `YYYY-MM-DDTHH:MM`. */
  observedAt: string;
  author: string;
  plot: string | null;
  channel: 'typed' | 'dictated';
  photos: string[];
  text: string;
}

const HEADERS = ['on', 'by', 'plot', 'spoken', 'photos', 'id'] as const;

/** The note, or what is wrong with the file and in which line. */
export function parseNoteFile(content: string): NoteFile | { problem: string } {
  const lines = content
    .replace(/^\uFEFF/, '')
    .replaceAll('\r\n', '\n')
    .split('\n');
  const blank = lines.findIndex((line) => line.trim() === '');
  const head = blank < 0 ? lines : lines.slice(0, blank);
  const header = new Map<string, string>();
  for (const [index, line] of head.entries()) {
    const match = line.match(/^([A-Za-z]+):\s*(.*)$/);
    const name = match?.[1]?.toLowerCase() ?? '';
    if (!match || !HEADERS.includes(name as (typeof HEADERS)[number])) {
      return {
        problem: `line ${index + 1}: “${line.slice(0, 40)}” is no header line. Known are On, By, Plot, Spoken, Photos; then an empty line, then the words.`,
      };
    }
    header.set(name, match[2]!.trim());
  }
  const on = header.get('on')?.replace(' ', 'T') ?? '';
  if (!/^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}$/.test(on)) {
    return {
      problem: 'the line “On: 2031-07-14 06:55” with the note’s day and time is missing or of another form.',
    };
  }
  return {
    observedAt: on,
    author: header.get('by') ?? '',
    plot: header.get('plot') || null,
    channel: /^(yes|true|1)$/i.test(header.get('spoken') ?? '') ? 'dictated' : 'typed',
    photos: (header.get('photos') ?? '')
      .split(',')
      .map((name) => name.trim())
      .filter(Boolean),
    text:
      blank < 0
        ? ''
        : lines
            .slice(blank + 1)
            .join('\n')
            .trim(),
  };
}

/** The same note as a file, which parseNoteFile reads back. */
export function noteFileText(note: NoteFile): string {
  return [
    `On: ${note.observedAt.replace('T', ' ')}`,
    ...(note.author ? [`By: ${note.author}`] : []),
    ...(note.plot ? [`Plot: ${note.plot}`] : []),
    ...(note.channel === 'dictated' ? ['Spoken: yes'] : []),
    ...(note.photos.length > 0 ? [`Photos: ${note.photos.join(', ')}`] : []),
    '',
    note.text,
    '',
  ].join('\n');
}
