import { readFile } from 'node:fs/promises';
import { answerRun } from '@/app/_requests/answerRun';
import { runOfCopy } from '@/app/_requests/runOfCopy';
import { dayOfFile } from './dayOfFile';
import { runArguments } from './runArguments';

/*
 * npm run -s run -- FILE: what is to be bought for a run in a carried file (.zip, or its documents.json), its clock, and
 * where it was pressed how it came out against its standard and what it taught; --run ID names one of several. A
 * documents.json may name its day as asOf; else it is planned today. Exit code 0: planned; 2: something stands in the way,
 * said in the answer and on standard error; 1: the file cannot be used, said on standard error.
 */
process.exitCode = await run();

async function run(): Promise<number> {
  const asked = runArguments(process.argv.slice(2));
  if (asked.kind === 'unusable') return unusable(asked.why);
  const { file, runId } = asked;
  let bytes: Uint8Array;
  try {
    bytes = await readFile(file);
  } catch (error) {
    return unusable(`${file} cannot be read: ${error instanceof Error ? error.message : String(error)}`);
  }
  const day = dayOfFile(bytes, file, 'Nothing was planned.');
  if (day.kind === 'unusable') return unusable(day.why);
  const read = await runOfCopy(bytes, { file, runId, day: day.day });
  if (read.kind === 'unusable') return unusable(read.why);
  if (read.note !== null) process.stderr.write(`${read.note}\n`);
  const planned = answerRun(read.asked);
  if (planned.kind === 'refused') {
    const { troubles } = planned;
    process.stdout.write(`${JSON.stringify({ troubles }, null, 2)}\n`);
    process.stderr.write(`${troubles.map(({ message }) => message).join('\n')}\n`);
    return 2;
  }
  for (const sentence of planned.beside) process.stderr.write(`${sentence}\n`);
  process.stdout.write(`${JSON.stringify(planned.answer, null, 2)}\n`);
  return 0;
}

function unusable(why: string): number {
  process.stderr.write(`${why}\n`);
  return 1;
}
