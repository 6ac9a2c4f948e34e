import { readFile } from 'node:fs/promises';
import { answerCurve } from '@/app/_requests/answerCurve';
import { answerRequest } from '@/app/_requests/answerRequest';
import { isCopy } from '@/app/_requests/copyOfFile';
import { jobOfCopy } from '@/app/_requests/jobOfCopy';
import { parseJson } from '@/app/_requests/readBody';
import { withBreaks } from '@/app/_requests/withBreaks';
import { isStanding } from '@/shared/finding';
import { priceArguments } from './priceArguments';

/*
 * npm run -s price -- FILE: the same answer as POST /api/price, of a request in JSON, or of a job in a copy or a carried
 * file (.zip, or its documents.json); --job ID names one of several. With --curve A..B also the batch curve, the
 * two-part tariff and the inversions of the lists as they are sold; --at PRICE puts a price on every piece of the
 * curve. --breaks auto:6:FROM asks the sums for six breaks from an order on, --breaks 1,6,12 takes these.
 * Exit code 0: priced; 2: a stop was found; 1: the file cannot be used, said on standard error.
 */
process.exitCode = await run();

async function run(): Promise<number> {
  const asked = priceArguments(process.argv.slice(2));
  if (asked.kind === 'unusable') return unusable(asked.why);
  const { file, jobId, curve, breaks } = asked;
  let bytes: Uint8Array;
  try {
    bytes = await readFile(file);
  } catch (error) {
    return unusable(`${file} cannot be read: ${error instanceof Error ? error.message : String(error)}`);
  }
  const today = new Date().toISOString().slice(0, 10);
  const read = await requestIn(bytes, { file, jobId, today });
  if (read.kind === 'unusable') return unusable(read.why);
  if (read.note !== null) process.stderr.write(`${read.note}\n`);
  const request = breaks === null ? read.value : withBreaks(read.value, breaks);
  const { kind, ...answer } =
    curve === null ? answerRequest(request, today) : answerCurve(request, today, curve);
  if (kind === 'unusable') {
    return unusable(answer.findings.map(({ message, detail }) => `${message} ${detail}`.trim()).join('\n'));
  }
  process.stdout.write(`${JSON.stringify(answer, null, 2)}\n`);
  return answer.findings.some(isStanding) ? 2 : 0;
}

async function requestIn(
  bytes: Uint8Array,
  asked: Parameters<typeof jobOfCopy>[1],
): ReturnType<typeof jobOfCopy> {
  if (isCopy(bytes)) return jobOfCopy(bytes, asked);
  const { file, jobId } = asked;
  if (jobId !== null) return { kind: 'unusable', why: `--job names a job of a copy, and ${file} is none.` };
  const body = parseJson(new TextDecoder().decode(bytes));
  return body.kind === 'json'
    ? { kind: 'request', value: body.value, note: null }
    : { kind: 'unusable', why: `${file} is not JSON: ${body.why}. Nothing was priced.` };
}

function unusable(why: string): number {
  process.stderr.write(`${why}\n`);
  return 1;
}
