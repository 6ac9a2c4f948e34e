import { readFile } from 'node:fs/promises';
import { isStanding } from '@/shared/finding';
import { answerRequest } from '../_edges/answerRequest';
import { parseJson } from '../_edges/readBody';

/*
 * npm run -s price -- FILE.json: the same answer as POST /api/price.
 * Exit code 0: priced; 2: a stop was found; 1: the file cannot be used, said on standard error.
 */
const [file, ...rest] = process.argv.slice(2);

process.exitCode = await run();

async function run(): Promise<number> {
  if (file === undefined || rest.length > 0) return unusable('Name one file: npm run -s price -- FILE.json');
  let text: string;
  try {
    text = await readFile(file, 'utf8');
  } catch (error) {
    return unusable(`${file} cannot be read: ${error instanceof Error ? error.message : String(error)}`);
  }
  const body = parseJson(text);
  if (body.kind !== 'json') {
    return unusable(
      `${file} is not JSON${body.kind === 'notJson' ? `: ${body.why}` : ''}. Nothing was priced.`,
    );
  }
  const { kind, ...answer } = answerRequest(body.value, new Date().toISOString().slice(0, 10));
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
