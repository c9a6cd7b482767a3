/**
 * `npm run --silent read -- FILE.jsonl [--trace]` reads a file of notes; `--text "…" --on 2031-03-14 [--plot B2]
 * [--plots B1,B2] [--dictated]` reads one note and shows in plain words what was found, and why.
 */
import { readFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { readNote } from '../reading/read.ts';
import { readFile } from './read-file.ts';
import { tellReading } from './tell-reading.ts';

const USAGE = `Usage: read FILE.jsonl [--trace]
       read --text "words of the note" --on YYYY-MM-DD [--plot CODE] [--plots CODE,CODE] [--dictated]`;

process.exitCode = run(process.argv.slice(2));

function run(args: string[]): number {
  const options = optionsOf(args);
  if (typeof options === 'string') return refuse(options);
  const { values, positionals } = options;
  if (values.text !== undefined) return readText(values.text, values);
  const [path] = positionals;
  if (!path) return refuse(USAGE);
  const text = textOf(path);
  if (text === null) return refuse(`Cannot open ${path}. Give the path of a file with one note a line.`);
  const { lines, problems } = readFile(text, values.trace ?? false);
  if (lines.length > 0) process.stdout.write(`${lines.join('\n')}\n`);
  for (const problem of problems) console.error(problem);
  return problems.length > 0 ? 1 : 0;
}

function optionsOf(args: string[]) {
  try {
    return parseArgs({
      args,
      allowPositionals: true,
      options: {
        trace: { type: 'boolean' },
        text: { type: 'string' },
        on: { type: 'string' },
        plot: { type: 'string' },
        plots: { type: 'string' },
        dictated: { type: 'boolean' },
      },
    });
  } catch (error) {
    return `${error instanceof Error ? error.message : 'These options are not known.'}\n${USAGE}`;
  }
}

function readText(
  text: string,
  options: { on?: string; plot?: string; plots?: string; dictated?: boolean },
): number {
  const on = options.on ?? '';
  if (!/^\d{4}-\d{2}-\d{2}$/.test(on) || Number.isNaN(Date.parse(on)))
    return refuse(`--on needs the day of the note, such as 2031-03-14.\n${USAGE}`);
  const codes = [
    ...new Set(
      [...(options.plots ?? '').split(','), options.plot ?? ''].map((code) => code.trim()).filter(Boolean),
    ),
  ];
  const reading = readNote({
    id: 'note',
    observedAt: `${on}T12:00`,
    plots: codes.map((code) => ({ code, names: [] })),
    plot: options.plot ?? null,
    channel: options.dictated ? 'dictated' : 'typed',
    text,
  });
  console.log(tellReading(reading));
  return 0;
}

function textOf(path: string): string | null {
  try {
    return readFileSync(path, 'utf8');
  } catch {
    return null;
  }
}

function refuse(message: string): number {
  console.error(message);
  return 2;
}
