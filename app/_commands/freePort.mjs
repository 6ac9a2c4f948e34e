import { createServer } from 'node:net';

/** The only address served: the app is for the person at this machine. */
export const HOST = '127.0.0.1';

/**
 * The first port from `start` upward that nobody listens on.
 *
 * @param {number} start 0 lets the system choose
 * @param {(port: number) => Promise<number | undefined>} [tryPort] the number listened on, or nothing when busy
 * @returns {Promise<number | undefined>} nothing when a hundred in a row are busy
 */
export async function freePort(start, tryPort = listenOnce) {
  for (let port = start; port < start + 100 && port <= 65_535; port += 1) {
    const found = await tryPort(port);
    if (found !== undefined) return found;
  }
  return undefined;
}

/**
 * @param {number} port
 * @returns {Promise<number | undefined>}
 */
function listenOnce(port) {
  return new Promise((resolve) => {
    const server = createServer();
    server.once('error', () => resolve(undefined));
    server.listen(port, HOST, () => {
      const address = server.address();
      server.close(() => resolve(typeof address === 'object' && address !== null ? address.port : undefined));
    });
  });
}
