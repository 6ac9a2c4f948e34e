import { readFile } from 'node:fs/promises';
import { dayOfFile } from './dayOfFile';

interface Unusable {
  readonly kind: 'unusable';
  readonly why: string;
}

/** What a file that was asked about came to. */
type Told = (
  | Unusable
  | {
      /** Refused: something stands in the way, said in the answer. */
      readonly kind: 'planned' | 'refused';
      readonly answer: object;
      /** Said on standard error, in words. */
      readonly beside: readonly string[];
    }
) & {
  /** Said where the file did not come whole. */
  readonly note?: string | null;
};

/**
 * Reads the file a command was given, writes its answer to standard output and what is to be said beside it to standard
 * error. A documents.json may name its day as asOf; else it is asked today.
 *
 * @returns exit code 0: planned; 2: something stands in the way, said in the answer and on standard error; 1: the file
 *   cannot be used, said on standard error
 */
export async function answerFile<Asked extends { readonly kind: 'usable'; readonly file: string }>(
  asked: Asked | Unusable,
  tell: (bytes: Uint8Array, asked: Asked, day: string) => Promise<Told>,
): Promise<number> {
  if (asked.kind === 'unusable') return unusable(asked.why);
  const { file } = asked;
  let bytes: Uint8Array;
  try {
    bytes = await readFile(file);
  } catch (error) {
    return unusable(`${file} cannot be read: ${error instanceof Error ? error.message : String(error)}`);
  }
  const day = dayOfFile(bytes, file, 'Nothing was planned.');
  if (day.kind === 'unusable') return unusable(day.why);
  const { note = null, ...told } = await tell(bytes, asked, day.day);
  if (note !== null) say(note);
  if (told.kind === 'unusable') return unusable(told.why);
  for (const sentence of told.beside) say(sentence);
  process.stdout.write(`${JSON.stringify(told.answer, null, 2)}\n`);
  return told.kind === 'planned' ? 0 : 2;
}

// Helpers

function say(sentence: string): void {
  process.stderr.write(`${sentence}\n`);
}

function unusable(why: string): number {
  say(why);
  return 1;
}
