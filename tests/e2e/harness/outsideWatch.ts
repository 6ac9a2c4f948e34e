import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';

/** Notes every attempt to reach another host. */
export interface OutsideWatch {
  /** For the browser's proxy setting. */
  readonly url: string;
  /** What was asked for since the last call. */
  taken(): readonly string[];
  close(): void;
}

/**
 * A proxy that lets nothing through. The browser sends it whatever does not go to the app itself, so it also
 * sees what page events do not show: requests of workers, beacons, sockets.
 */
export async function startOutsideWatch(): Promise<OutsideWatch> {
  let asked: string[] = [];
  const server = createServer((request, response) => {
    asked.push(request.url ?? '');
    response.writeHead(502).end();
  });
  server.on('connect', (request, socket) => {
    asked.push(request.url ?? '');
    socket.end('HTTP/1.1 502 Bad Gateway\r\n\r\n');
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  return {
    url: `http://127.0.0.1:${(server.address() as AddressInfo).port}`,
    taken() {
      const now = asked;
      asked = [];
      return now;
    },
    close() {
      server.close();
      server.closeAllConnections();
    },
  };
}
