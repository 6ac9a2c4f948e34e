// `node app/_commands/serve.mjs [HOST PORT [FOLDER]]` serves the app built in a folder, its own unless told: the
// framework's own server behind a look at what it would fail at. Where to listen is told by the arguments, else by the
// variables HOST and PORT.
import { readFileSync } from 'node:fs';
import { createServer, STATUS_CODES } from 'node:http';
import { fileURLToPath } from 'node:url';
import { builtHeaders } from './builtHeaders.mjs';
import { readHost } from './readHost.mjs';
import { readPort } from './readPort.mjs';
import { refusal } from './refusal.mjs';

// The framework reads it while it is loaded.
Object.assign(process.env, { NODE_ENV: 'production', NEXT_TELEMETRY_DISABLED: '1' });
const { default: next } = await import('next');
const { parseAndValidateFlightRouterState: readRouterState } = await import(
  'next/dist/server/app-render/parse-and-validate-flight-router-state.js'
);

const [hostText = process.env.HOST, portText = process.env.PORT, folder] = process.argv.slice(2);
const dir = folder ?? fileURLToPath(new URL('../..', import.meta.url));
const place = readHost(hostText);
const wish = readPort(portText);
if ('problem' in place) fail(place.problem);
if ('problem' in wish) fail(wish.problem);
const { host } = place;
const { port } = wish;
const manifest = JSON.parse(readFileSync(`${dir}/.next/routes-manifest.json`, 'utf8'));
// What every answer carries until the framework has said more: also those that it never sees.
const headers = builtHeaders(manifest.headers, '/api/');
// The name by which the framework knows itself, whatever is listened on: by another it would take its own pages for
// those of another server, and ask for them over the network.
const app = next({ dev: false, dir, hostname: 'localhost', port });
await app.prepare();
const handle = app.getRequestHandler();

const server = createServer((request, response) => {
  for (const [name, value] of headers) response.setHeader(name, value);
  const refused = refusal(request, readRouterState);
  if (refused === undefined) {
    handle(request, response).catch((error) => {
      console.error(error);
      if (response.headersSent) response.destroy();
      else refuse(request, response, { status: 500, sentence: 'The server failed at this request.' });
    });
    return;
  }
  refuse(request, response, refused);
});

// Not even HTTP: there is no request to answer, only a connection.
server.on('clientError', (error, socket) => {
  if (!socket.writable || ('code' in error && error.code === 'ECONNRESET')) {
    socket.destroy();
    return;
  }
  const status = 'code' in error && error.code === 'HPE_HEADER_OVERFLOW' ? 431 : 400;
  const lines = [...headers, ['Content-Type', 'text/plain; charset=utf-8'], ['Connection', 'close']];
  socket.end(
    `HTTP/1.1 ${status} ${STATUS_CODES[status]}\r\n${lines.map((line) => line.join(': ')).join('\r\n')}\r\n\r\n` +
      'The request cannot be read.\n',
  );
});

/**
 * @param {import('node:http').IncomingMessage} request
 * @param {import('node:http').ServerResponse} response
 * @param {import('./refusal.mjs').Refusal} refused
 */
function refuse(request, response, refused) {
  const isApi = request.url?.startsWith('/api/') === true;
  response.writeHead(refused.status, {
    ...refused.headers,
    'Content-Type': isApi ? 'application/json' : 'text/plain; charset=utf-8',
    'Cache-Control': 'no-store',
    // What may still come of its body is not read.
    Connection: 'close',
  });
  response.end(isApi ? JSON.stringify({ error: refused.sentence }) : `${refused.sentence}\n`);
}

for (const signal of /** @type {const} */ (['SIGINT', 'SIGTERM', 'SIGHUP'])) {
  process.once(signal, () => {
    server.close(() => process.exit(0));
    server.closeAllConnections();
  });
}
server.once('error', (error) => fail(error.message));
server.listen(port, host);

/**
 * @param {string} sentence
 * @returns {never}
 */
function fail(sentence) {
  console.error(sentence);
  process.exit(1);
}
