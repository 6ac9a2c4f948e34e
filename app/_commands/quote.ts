import { readFile, writeFile } from 'node:fs/promises';
import { answerQuote } from '@/app/_requests/answerQuote';
import { isCopy } from '@/app/_requests/copyOfFile';
import { orderOfCopy } from '@/app/_requests/orderOfCopy';
import { parseJson } from '@/app/_requests/readBody';
import { daySchema } from '@/shared/schemas/rate';
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
  const day = dayIn(bytes, file);
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

type Day =
  | { readonly kind: 'day'; readonly day: string }
  | { readonly kind: 'unusable'; readonly why: string };

/** A text may say on which day it is asked, so that what it answers does not age. */
function dayIn(bytes: Uint8Array, file: string): Day {
  const today: Day = { kind: 'day', day: new Date().toISOString().slice(0, 10) };
  if (isArchive(bytes)) return today;
  const text = parseJson(new TextDecoder().decode(bytes));
  if (text.kind === 'notJson') {
    return isCopy(bytes)
      ? today
      : { kind: 'unusable', why: `${file} is not JSON: ${text.why}. Nothing was quoted.` };
  }
  const { value } = text;
  const given: unknown = typeof value === 'object' && value !== null ? Reflect.get(value, 'asOf') : undefined;
  if (given === undefined) return today;
  const day = daySchema.safeParse(given);
  return day.success
    ? { kind: 'day', day: day.data }
    : { kind: 'unusable', why: `asOf of ${file} is not a day like 2026-11-25. Nothing was quoted.` };
}

function isArchive(bytes: Uint8Array): boolean {
  return bytes[0] === 0x50 && bytes[1] === 0x4b;
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
