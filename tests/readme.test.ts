import { execFileSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

const README = fileURLToPath(new URL('../README.md', import.meta.url));
const START = fileURLToPath(new URL('../src/start.mjs', import.meta.url));
const EXAMPLE = /<!-- example:start -->\n([\s\S]*?)<!-- example:end -->/;

/** The note of the README's example, as it stands in its first block. */
const exampleNote = (text: string): string =>
  /```text\n([\s\S]*?)\n```/.exec(text)![1]!.replaceAll('\n', ' ');

function exampleText(note: string): string {
  const args = ['read', '--text', note, '--on', '2031-08-07', '--plots', 'E7,E8,E9', '--dictated'];
  const read = execFileSync(process.execPath, [START, ...args], { encoding: 'utf8' });
  return (
    `A dictated note, as the recogniser wrote it on 7 August 2031:\n\n\`\`\`text\n${wrapped(note)}\n\`\`\`\n\n` +
    `What is read from it, each fact with its words and the rule that found it ` +
    '(`npm run --silent read -- --text "…" --on 2031-08-07 --plots E7,E8,E9 --dictated`):\n\n' +
    `\`\`\`\n${read.trim()}\n\`\`\`\n`
  );
}

const wrapped = (note: string): string => note.replace(/(.{1,110})(?: |$)/g, '$1\n').trim();

/** `UPDATE_README=yes` writes what the reader says now; without it the README must say it already. */
test('the README shows what the reader really reads', () => {
  const text = readFileSync(README, 'utf8');
  const now = exampleText(exampleNote(EXAMPLE.exec(text)![1]!));
  if (process.env.UPDATE_README === 'yes') {
    writeFileSync(
      README,
      text.replace(EXAMPLE, () => `<!-- example:start -->\n${now}<!-- example:end -->`),
    );
  } else {
    expect(EXAMPLE.exec(text)![1]).toBe(now);
  }
});
