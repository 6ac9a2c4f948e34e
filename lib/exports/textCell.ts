/** A cell that begins with one of these is run as a formula by some spreadsheets. */
const RUNS = /^[=+\-@\t\r]/;

/** @returns a text as a cell of comma-separated values (RFC 4180): never a formula, whatever it begins with. */
export function textCell(text: string): string {
  const harmless = RUNS.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(harmless) ? `"${harmless.replaceAll('"', '""')}"` : harmless;
}
