/** How long a reading takes: a 40-word note warm, and how the time grows up to 200,000 characters. Run with tsx. */
import { readNote } from '../../src/reading/read.ts';
import type { NoteToRead } from '../../src/reading/record.ts';

const WORDS =
  'T1R1 is tillering and there are some sedges along the north bund, no rats, water at five cm. Maybe blast in the corner, look again on Friday. T1R2 leans a bit at the inlet after the storm, tie it tomorrow.';
const note = (text: string): NoteToRead => ({
  id: 'bench',
  observedAt: '2031-03-14T07:00',
  plots: ['T1R1', 'T1R2', 'T2R1', 'T2R2', 'T3R1', 'T3R2'].map((code) => ({ code, names: [] })),
  plot: null,
  channel: 'dictated',
  text,
});

export function benchReader(): string[] {
  for (let round = 0; round < 300; round++) readNote(note(WORDS));
  const small = median(400, () => readNote(note(WORDS)));
  const lengths = [12_500, 50_000, 200_000];
  const times = lengths.map((length) =>
    median(3, () =>
      readNote(note(`${WORDS} `.repeat(Math.ceil(length / (WORDS.length + 1))).slice(0, length))),
    ),
  );
  const perCharacter = times.map((time, index) => time / lengths[index]!);
  return [
    `A note of ${WORDS.split(' ').length} words, warm: ${small.toFixed(3)} ms (median)`,
    ...lengths.map(
      (length, index) =>
        `${length} characters: ${times[index]!.toFixed(0)} ms, ${(perCharacter[index]! / perCharacter[0]!).toFixed(2)} times the first a character`,
    ),
  ];
}

function median(rounds: number, work: () => unknown): number {
  const times = Array.from({ length: rounds }, () => {
    const start = performance.now();
    work();
    return performance.now() - start;
  });
  return times.sort((a, b) => a - b)[Math.floor(rounds / 2)]!;
}

if (process.argv[1]?.endsWith('reader.ts')) for (const line of benchReader()) console.log(line);
