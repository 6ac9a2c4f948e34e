/** A cell that begins with one of these is run as a formula by some spreadsheets; more marks keep what is read back. */
const RUNS = /^'*[=+\-@\t\r]/;

/**
 * @returns a text as a cell of values parted by commas (RFC 4180), semicolons or tabs: never a formula, whatever it
 *   begins with
 */
export function textCell(text: string): string {
  const harmless = RUNS.test(text) ? `'${text}` : text;
  return /[",;\t\r\n]/.test(harmless) ? `"${harmless.replaceAll('"', '""')}"` : harmless;
}

/** @returns what such a cell says, without the mark that keeps spreadsheets from running it. */
export const cellText = (cell: string): string => (RUNS.test(cell) ? cell.replace(/^'/, '') : cell);
