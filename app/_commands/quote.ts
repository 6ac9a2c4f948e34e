import { readFile, writeFile } from 'node:fs/promises';
import { answerQuote } from '@/app/_requests/answerQuote';
import { orderOfCopy } from '@/app/_requests/orderOfCopy';
import { dayOfFile } from './dayOfFile';
import { quoteArguments } from './quoteArguments';
import { quoteFile } from './quoteFile';

/*
 * npm run -s quote -- FILE: the quote of an order in a carried file (.zip, or its documents.json), as the app makes it;
 * --order ID names one of several, --pdf OUT.pdf writes the paper. A documents.json may name its day as asOf; else it is
 * quoted today. Exit code 0: quoted; 2: something stands in the way, said in the answer and on standard error; 1: the
 * file cannot be used, said on standard error.
 */
process.exitCode = await run();

async function run(): Promise<number> {
  const asked = quoteArguments(process.argv.slice(2));
  if (asked.kind === 'unusable') return unusable(asked.why);
  const { file, orderId, pdf } = asked;
  let bytes: Uint8Array;
  try {
    bytes = await readFile(file);
  } catch (error) {
    return unusable(`${file} cannot be read: ${error instanceof Error ? error.message : String(error)}`);
  }
  const day = dayOfFile(bytes, file, 'Nothing was quoted.');
  if (day.kind === 'unusable') return unusable(day.why);
  const read = await orderOfCopy(bytes, { file, orderId, day: day.day });
  if (read.kind === 'unusable') return unusable(read.why);
  if (read.note !== null) process.stderr.write(`${read.note}\n`);
  const quoted = answerQuote(read.asked, day.day);
  if (quoted.kind === 'refused') {
    const { number, obstacles } = quoted;
    process.stdout.write(`${JSON.stringify({ number, obstacles }, null, 2)}\n`);
    process.stderr.write(`${obstacles.map(({ message }) => message).join('\n')}\n`);
    return 2;
  }
  process.stdout.write(`${JSON.stringify(quoted.answer, null, 2)}\n`);
  if (pdf === null) return 0;
  const words = read.asked.jobs[0]?.input.workshop.papers.words ?? [];
  return writePaper({ quote: quoted.quote, words, fileOf: read.fileOf }, pdf);
}

async function writePaper(asked: Parameters<typeof quoteFile>[0], path: string): Promise<number> {
  const paper = await quoteFile(asked);
  if (paper.kind === 'lettersMissing')
    return unusable(
      `${path} was not written: no type here has ${paper.letters.join(', ')}. The app draws such letters as pictures.`,
    );
  if (paper.lost.length > 0)
    process.stderr.write(
      `${path} leaves a named place for ${paper.lost.join(', ')}: not in the file, or of a format that only the app reads.\n`,
    );
  try {
    await writeFile(path, paper.bytes);
    return 0;
  } catch (error) {
    return unusable(`${path} cannot be written: ${error instanceof Error ? error.message : String(error)}`);
  }
}

function unusable(why: string): number {
  process.stderr.write(`${why}\n`);
  return 1;
}
