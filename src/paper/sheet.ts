import { readFileSync } from 'node:fs';
import { createEvaluator } from '../engine/rig/evaluate.ts';
import { readRigFile } from '../engine/rig/file.ts';
import { stages } from '../engine/rig/stages.ts';
import { fullReader } from './fullReader.ts';
import { workedAsData } from './json.ts';
import { markdown } from './markdown.ts';

/** Prints the whole worked rig of a file: `sheet FILE` as Markdown, `sheet FILE --json` as data. */
function main(words: readonly string[]): number {
  const files = words.filter((word) => !word.startsWith('--'));
  const flags = words.filter((word) => word.startsWith('--'));
  const [file] = files;
  if (file === undefined || files.length > 1 || flags.some((flag) => flag !== '--json')) {
    return complain('Use: npm run --silent sheet -- FILE [--json]');
  }
  let text: string;
  try {
    text = readFileSync(file, 'utf8');
  } catch (error) {
    return complain(`${file} cannot be read: ${error instanceof Error ? error.message : error}`);
  }
  const reading = readRigFile(text);
  if (!reading.ok) {
    return complain([`${file} is refused:`, ...reading.reasons.map((r) => `- ${r}`)].join('\n'));
  }
  const worked = createEvaluator(stages, fullReader)(reading.rig);
  process.stdout.write(
    flags.includes('--json')
      ? `${JSON.stringify(workedAsData(reading.rig, worked, stages), null, 2)}\n`
      : markdown(reading.rig, worked, stages),
  );
  return 0;
}

function complain(says: string): number {
  process.stderr.write(`${says}\n`);
  return 1;
}

// Whoever reads the sheet may stop early, as `head` does.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
});
process.exitCode = main(process.argv.slice(2));
