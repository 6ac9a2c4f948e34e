import { isIP } from 'node:net';

/** The only address served unless another is asked for: the app is for the person at this machine. */
export const OWN_HOST = '127.0.0.1';

/**
 * Reads the HOST variable: the address of this machine that is listened on.
 *
 * @param {string | undefined} text
 * @returns {{ host: string, isOwn: boolean } | { problem: string }} `isOwn`: nobody but this machine gets an answer
 */
export function readHost(text) {
  const host = text?.trim() ?? '';
  if (host === '') return { host: OWN_HOST, isOwn: true };
  if (host === 'localhost' || host === '::1' || (isIP(host) === 4 && host.startsWith('127.')))
    return { host, isOwn: true };
  if (isIP(host) !== 0 || HOST_NAME.test(host)) return { host, isOwn: false };
  return {
    problem: `HOST is ${JSON.stringify(text)}, and only an address of this machine can be listened on: ${OWN_HOST} for this machine alone, 0.0.0.0 for everybody in its network.`,
  };
}

/**
 * @param {string} host
 * @param {number} port
 * @returns {string} where the app is opened from this machine
 */
export const addressOf = (host, port) =>
  host === '0.0.0.0' || host === '::'
    ? `http://${OWN_HOST}:${port}`
    : `http://${isIP(host) === 6 ? `[${host}]` : host}:${port}`;

// Labels of letters, digits and hyphens, RFC 1123 §2.1; a last one of digits alone is a mistyped address.
const LABEL = '[A-Za-z0-9](?:[A-Za-z0-9-]{0,61}[A-Za-z0-9])?';
const HOST_NAME = new RegExp(`^(?:${LABEL}\\.)*(?!\\d+$)${LABEL}$`);
