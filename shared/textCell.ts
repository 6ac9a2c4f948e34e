/** A cell that begins with one of these is run as a formula by some spreadsheets; more marks keep what is read back. */
const RUNS = /^'*[=+\-@\t\r]/;

/**
 * @param separator the sign that parts the cells
 * @returns a text as a cell of separated values (RFC 4180): never a formula, whatever it begins with
 */
export function textCell(text: string, separator = ','): string {
  const harmless = RUNS.test(text) ? `'${text}` : text;
  const isQuoted = harmless.includes(separator) || /["\r\n]/.test(harmless);
  return isQuoted ? `"${harmless.replaceAll('"', '""')}"` : harmless;
}

/** @returns what such a cell says, without the mark that keeps spreadsheets from running it. */
export const cellText = (cell: string): string => (RUNS.test(cell) ? cell.replace(/^'/, '') : cell);
