import { createServer } from 'node:net';
import { OWN_HOST } from './readHost.mjs';

/**
 * The first port from `start` upward that nobody listens on.
 *
 * @param {number} start 0 lets the system choose
 * @param {string} [host] the address it is to listen on
 * @param {(port: number, host: string) => Promise<number | undefined>} [tryPort] the number listened on, or nothing
 *   when busy
 * @returns {Promise<number | undefined>} nothing when a hundred in a row are busy
 */
export async function freePort(start, host = OWN_HOST, tryPort = listenOnce) {
  for (let port = start; port < start + 100 && port <= 65_535; port += 1) {
    const found = await tryPort(port, host);
    if (found !== undefined) return found;
  }
  return undefined;
}

/**
 * @param {number} port
 * @param {string} host
 * @returns {Promise<number | undefined>}
 */
function listenOnce(port, host) {
  return new Promise((resolve) => {
    const server = createServer();
    server.once('error', () => resolve(undefined));
    server.listen(port, host, () => {
      const address = server.address();
      server.close(() => resolve(typeof address === 'object' && address !== null ? address.port : undefined));
    });
  });
}
