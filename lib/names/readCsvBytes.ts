/** What is in a file that should hold comma-separated values. */
type CsvBytes =
  | { readonly state: 'text'; readonly text: string }
  | {
      readonly state: 'refused';
      readonly why:
        | 'empty'
        | 'tooLarge'
        /** A workbook of a spreadsheet program, which saves as CSV. */
        | 'workbook'
        /** In no encoding that the file tells and that is read here; nothing is guessed. */
        | 'encoding';
    };

/** Some 20,000 rows, ten times what an order holds. */
export const MOST_CSV_BYTES = 1_000_000;

/**
 * Reads the bytes of a CSV file: UTF-8, with its mark or without, and UTF-16 with its mark (Unicode Standard, 23.8). What
 * is neither could be any of dozens of encodings, in each of which names read otherwise: that is told.
 */
export function readCsvBytes(bytes: Uint8Array): CsvBytes {
  if (bytes.length === 0) return { state: 'refused', why: 'empty' };
  if (bytes.length > MOST_CSV_BYTES) return { state: 'refused', why: 'tooLarge' };
  if (workbooks.some((sign) => beginsWith(bytes, sign))) return { state: 'refused', why: 'workbook' };
  const encoding = marks.find(({ sign }) => beginsWith(bytes, sign))?.encoding ?? 'utf-8';
  const text = decoded(bytes, encoding);
  // UTF-16 without its mark, UTF-32 and files of other kinds are full of zeros.
  if (text === null || text.includes('\0')) return { state: 'refused', why: 'encoding' };
  return text.trim() === '' ? { state: 'refused', why: 'empty' } : { state: 'text', text };
}

// Helpers

const marks = [
  { sign: [0xef, 0xbb, 0xbf], encoding: 'utf-8' },
  { sign: [0xff, 0xfe], encoding: 'utf-16le' },
  { sign: [0xfe, 0xff], encoding: 'utf-16be' },
] as const;

/** A ZIP archive, and the compound file of older programs. */
const workbooks = [
  [0x50, 0x4b, 0x03, 0x04],
  [0xd0, 0xcf, 0x11, 0xe0],
] as const;

const beginsWith = (bytes: Uint8Array, sign: readonly number[]): boolean =>
  sign.every((byte, at) => bytes[at] === byte);

function decoded(bytes: Uint8Array, encoding: 'utf-8' | 'utf-16le' | 'utf-16be'): string | null {
  // What runs the tests and the server may know UTF-16 in one order only.
  if (encoding === 'utf-16be') return decoded(swapped(bytes), 'utf-16le');
  try {
    return new TextDecoder(encoding, { fatal: true }).decode(bytes);
  } catch (error) {
    if (!(error instanceof TypeError)) throw error;
    return null;
  }
}

const swapped = (bytes: Uint8Array): Uint8Array => bytes.map((_, at) => bytes[at ^ 1] ?? 0);
