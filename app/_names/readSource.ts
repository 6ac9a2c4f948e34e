import type { Wording } from '@/app/_words/findings/wording';
import { csvProblemWords } from '@/app/_words/names/csvProblemWords';
import { pastedTooLargeWords, unreadableFileWords } from '@/app/_words/names/intakeWords';
import type { NamesTable } from '@/lib/names/namesTable';
import { MOST_CSV_BYTES, readCsvBytes } from '@/lib/names/readCsvBytes';
import { readNames } from '@/lib/names/readNames';

/** A table of names, or why there is none. */
export type ReadSource =
  | { readonly state: 'read'; readonly table: NamesTable }
  | { readonly state: 'refused'; readonly why: Wording };

/** Reads what was pasted; a text as long as no list of names is refused before anything is read. */
export function readPasted(text: string, sizes: readonly string[]): ReadSource {
  if (isTooLong(text)) return { state: 'refused', why: pastedTooLargeWords };
  return { state: 'read', table: readNames(text, sizes) };
}

/** Reads a chosen file. Its size is looked at first, so that a large one is never taken into memory. */
export async function readFile(file: File, sizes: readonly string[]): Promise<ReadSource> {
  const refused = (why: Parameters<typeof csvProblemWords>[1]): ReadSource => ({
    state: 'refused',
    why: csvProblemWords(file.name, why),
  });
  if (file.size > MOST_CSV_BYTES) return refused('tooLarge');
  const bytes = await bytesOf(file);
  if (bytes === null) return { state: 'refused', why: unreadableFileWords(file.name) };
  const read = readCsvBytes(bytes);
  if (read.state === 'refused') return refused(read.why);
  return isTooLong(read.text) ? refused('tooLarge') : { state: 'read', table: readNames(read.text, sizes) };
}

// Helpers

/** An order keeps two thirds of them for an item; more would hold the page while they are read. */
const MOST_LINES = 3000;

/** Whether a text is longer than any list of names, so that it is not even shown. */
const isTooLong = (text: string): boolean => text.length > MOST_CSV_BYTES || linesIn(text) > MOST_LINES;

function linesIn(text: string): number {
  let lines = 1;
  for (let at = text.indexOf('\n'); at !== -1; at = text.indexOf('\n', at + 1)) lines += 1;
  return lines;
}

/** @returns null where the browser cannot read the file any more. */
async function bytesOf(file: File): Promise<Uint8Array | null> {
  try {
    return new Uint8Array(await file.arrayBuffer());
  } catch (error) {
    if (error instanceof DOMException) return null;
    throw error;
  }
}
