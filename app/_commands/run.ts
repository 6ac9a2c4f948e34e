import { answerRun } from '@/app/_requests/answerRun';
import { runOfCopy } from '@/app/_requests/runOfCopy';
import { answerFile } from './answerFile';
import { runArguments } from './runArguments';

/*
 * npm run -s run -- FILE: what is to be bought for a run in a carried file (.zip, or its documents.json), its clock, and
 * where it was pressed how it came out against its standard and what it taught; --run ID names one of several. What does
 * not add up in what was noted is said on standard error. Exit code 2: it cannot be planned; what it came to is in the
 * answer all the same.
 */
process.exitCode = await answerFile(
  runArguments(process.argv.slice(2)),
  async (bytes, { file, runId }, day) => {
    const read = await runOfCopy(bytes, { file, runId, day });
    return read.kind === 'unusable' ? read : { note: read.note, ...answerRun(read.asked) };
  },
);
