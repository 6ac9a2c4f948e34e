/** The port `npm start` takes when nothing else is asked for. */
export const DEFAULT_PORT = 3000;

/**
 * Reads the PORT variable.
 *
 * @param {string | undefined} text
 * @returns {{ port: number } | { problem: string }}
 */
export function readPort(text) {
  if (text === undefined || text.trim() === '') return { port: DEFAULT_PORT };
  const port = Number(text);
  // Digits only: Number would also take 3e3 and 0xbb8, which nobody means as a port.
  if (/^\d+$/.test(text.trim()) && port >= 1 && port <= 65_535) return { port };
  return { problem: `PORT is ${JSON.stringify(text)}, and a port is a whole number from 1 to 65535.` };
}
