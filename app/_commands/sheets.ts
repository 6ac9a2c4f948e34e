import { readFile, stat } from 'node:fs/promises';
import { plainContext } from '@/app/_requests/plainContext';
import { parseJson } from '@/app/_requests/readBody';
import { findingWords } from '@/app/_words/findings/findingWords';
import { documentFindings } from '@/lib/findings/documentFindings';
import type { FitProblem } from '@/lib/packing/fitProblem';
import { packRoll } from '@/lib/packing/roll/packRoll';
import { bestSheets } from '@/lib/packing/sheet/bestSheets';
import { formatNumber } from '@/shared/formatNumber';
import { type SheetRequest, sheetRequestSchema } from '@/shared/schemas/sheetRequest';

/*
 * npm run -s sheets -- FILE.json: pieces laid on sheets or on a roll.
 * Exit code 0: laid out; 2: a piece does not fit; 1: the file cannot be used. Sentences go to standard error.
 */

/** Ten thousand pieces, each with a long name, stay well below. */
const LARGEST_FILE_BYTES = 5_000_000;

const [file, ...rest] = process.argv.slice(2);

process.exitCode = await run();

async function run(): Promise<number> {
  if (file === undefined || rest.length > 0) return unusable('Name one file: npm run -s sheets -- FILE.json');
  const text = await readText(file);
  if (text.kind === 'unreadable') return unusable(text.why);
  const body = parseJson(text.text);
  if (body.kind !== 'json') {
    return unusable(
      `${file} is not JSON${body.kind === 'notJson' ? `: ${body.why}` : ''}. Nothing was laid out.`,
    );
  }
  const parsed = sheetRequestSchema.safeParse(body.value);
  if (!parsed.success) {
    const findings = documentFindings(parsed.error, 'request', { value: body.value });
    return unusable(
      findings
        .map((finding) => findingWords(finding, plainContext))
        .map(({ sentence, detail }) => `${sentence} ${detail}`.trim())
        .join('\n'),
    );
  }
  const answer = layOut(parsed.data);
  if (answer.ok) {
    process.stdout.write(`${JSON.stringify(answer.value, null, 2)}\n`);
    return 0;
  }
  return refuse(answer.problem, parsed.data);
}

type Text =
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'unreadable'; readonly why: string };

async function readText(path: string): Promise<Text> {
  try {
    const { size } = await stat(path);
    if (size > LARGEST_FILE_BYTES) {
      const why = `${path} has ${formatNumber(size, 'en')} bytes; at most ${formatNumber(LARGEST_FILE_BYTES, 'en')} are read.`;
      return { kind: 'unreadable', why };
    }
    return { kind: 'text', text: await readFile(path, 'utf8') };
  } catch (error) {
    const why = `${path} cannot be read: ${error instanceof Error ? error.message : String(error)}`;
    return { kind: 'unreadable', why };
  }
}

function layOut({ sheet, roll, ...request }: SheetRequest) {
  if (sheet !== undefined) {
    return bestSheets({ ...request, sheetWidthMm: sheet.widthMm, sheetHeightMm: sheet.heightMm });
  }
  return packRoll({ ...request, rollWidthMm: roll?.widthMm ?? 0 });
}

function refuse(problem: FitProblem, { sheet, roll, marginMm }: SheetRequest): number {
  const paper =
    sheet === undefined
      ? `a roll ${length(roll?.widthMm ?? 0)} wide`
      : `a sheet of ${length(sheet.widthMm)} × ${length(sheet.heightMm)}`;
  if (problem.kind === 'noRoom') {
    return unusable(`Margins of ${length(marginMm)} leave nothing of ${paper}. Nothing was laid out.`);
  }
  const tooLarge = problem.pieces.map((piece) => ({
    ...piece,
    message: `“${piece.id}” of ${length(piece.widthMm)} × ${length(piece.heightMm)} does not fit ${paper} with margins of ${length(marginMm)}. The largest of its shape that fits is ${length(piece.largestWidthMm)} × ${length(piece.largestHeightMm)}.`,
  }));
  process.stdout.write(`${JSON.stringify({ tooLarge }, null, 2)}\n`);
  for (const { message } of tooLarge) process.stderr.write(`${message}\n`);
  return 2;
}

function length(millimetres: number): string {
  return `${formatNumber(millimetres, 'en')} mm`;
}

function unusable(why: string): number {
  process.stderr.write(`${why}\n`);
  return 1;
}
