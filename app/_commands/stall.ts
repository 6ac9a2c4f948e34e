import { answerStall } from '@/app/_requests/answerStall';
import { stallOfCopy } from '@/app/_requests/stallOfCopy';
import { answerFile } from './answerFile';
import { stallArguments } from './stallArguments';

/*
 * npm run -s stall -- FILE: the plan of a stall day in a carried file (.zip, or its documents.json), with the maker's
 * numbers and with the advice, and the money of the day where it was counted; --day ID names one of several, --hold RANGE
 * keeps the maker's numbers of a range in the advice. Exit code 2: something stands in the way.
 */
process.exitCode = await answerFile(
  stallArguments(process.argv.slice(2)),
  async (bytes, { file, dayId, hold }, day) => {
    const read = await stallOfCopy(bytes, { file, dayId, day });
    return read.kind === 'unusable'
      ? read
      : { note: read.note, ...answerStall(read.asked, hold, read.figures) };
  },
);
