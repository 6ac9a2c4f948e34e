import { readFile } from 'node:fs/promises';
import { answerCurve } from '@/app/_requests/answerCurve';
import { answerRequest } from '@/app/_requests/answerRequest';
import { parseJson } from '@/app/_requests/readBody';
import { withBreaks } from '@/app/_requests/withBreaks';
import { isStanding } from '@/shared/finding';
import { priceArguments } from './priceArguments';

/*
 * npm run -s price -- FILE.json: the same answer as POST /api/price. With --curve A..B also the batch curve, the
 * two-part tariff and the inversions of the lists as they are sold; --at PRICE puts a price on every piece of the
 * curve. --breaks auto:6:FROM asks the sums for six breaks from an order on, --breaks 1,6,12 takes these.
 * Exit code 0: priced; 2: a stop was found; 1: the file cannot be used, said on standard error.
 */
process.exitCode = await run();

async function run(): Promise<number> {
  const asked = priceArguments(process.argv.slice(2));
  if (asked.kind === 'unusable') return unusable(asked.why);
  const { file, curve, breaks } = asked;
  let text: string;
  try {
    text = await readFile(file, 'utf8');
  } catch (error) {
    return unusable(`${file} cannot be read: ${error instanceof Error ? error.message : String(error)}`);
  }
  const body = parseJson(text);
  if (body.kind !== 'json') {
    return unusable(`${file} is not JSON: ${body.why}. Nothing was priced.`);
  }
  const today = new Date().toISOString().slice(0, 10);
  const request = breaks === null ? body.value : withBreaks(body.value, breaks);
  const { kind, ...answer } =
    curve === null ? answerRequest(request, today) : answerCurve(request, today, curve);
  if (kind === 'unusable') {
    return unusable(answer.findings.map(({ message, detail }) => `${message} ${detail}`.trim()).join('\n'));
  }
  process.stdout.write(`${JSON.stringify(answer, null, 2)}\n`);
  return answer.findings.some(isStanding) ? 2 : 0;
}

function unusable(why: string): number {
  process.stderr.write(`${why}\n`);
  return 1;
}
