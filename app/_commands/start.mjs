// `npm start`: installs what is missing, builds, serves, and says where. Plain Node, because it runs before
// any package is installed.
import { fileURLToPath } from 'node:url';
import { ensureInstalled } from './ensureInstalled.mjs';
import { freePort } from './freePort.mjs';
import { addressOf, readHost } from './readHost.mjs';
import { readPort } from './readPort.mjs';
import { forwardSignals, runChild } from './runChild.mjs';

const READY_WITHIN_MS = 60_000;
const OPEN_TO_OTHERS =
  'Everybody in the network of this machine can open it. Browsers work without a network, install the app and promise to keep its data only where it comes by https, or from this machine itself.';
const root = fileURLToPath(new URL('../..', import.meta.url));
const next = 'node_modules/next/dist/bin/next';

let stopped = false;
forwardSignals(() => {
  stopped = true;
});

const wish = readPort(process.env.PORT);
if ('problem' in wish) fail(wish.problem);
const place = readHost(process.env.HOST);
if ('problem' in place) fail(place.problem);

const problem = await ensureInstalled(root);
if (stopped) process.exit(0);
if (problem !== undefined) fail(problem);

console.log('Building …');
const build = await runChild(process.execPath, [next, 'build'], { cwd: root });
if (stopped) process.exit(0);
if (build.code !== 0) fail('The app could not be built; the lines above say why.');

const port = await freePort(wish.port, place.host);
if (port === undefined)
  fail(
    `No port from ${wish.port} on can be listened on at ${place.host}. Set PORT to a free one, or HOST to an address of this machine.`,
  );
if (port !== wish.port) console.log(`Port ${wish.port} is busy, so port ${port} is taken instead.`);

const address = addressOf(place.host, port);
const served = runChild(process.execPath, ['app/_commands/serve.mjs', place.host, String(port)], {
  cwd: root,
  quiet: true,
});
const first = await Promise.race([served, firstAnswer(address)]);
if (first === 'answered') {
  console.log(`\nPressminute runs at ${address}  (Ctrl+C ends it)`);
  if (!place.isOwn) console.log(OPEN_TO_OTHERS);
} else if (first === 'silent') console.error(`No answer from ${address} yet; still waiting.`);
const { code } = await served;
if (stopped) process.exit(0);
fail(`The server ended by itself with code ${code}.`);

/**
 * @param {string} url
 * @returns {Promise<'answered' | 'silent'>}
 */
async function firstAnswer(url) {
  const until = Date.now() + READY_WITHIN_MS;
  while (Date.now() < until && !stopped) {
    try {
      await fetch(url);
      return 'answered';
    } catch {
      await new Promise((resolve) => setTimeout(resolve, 100));
    }
  }
  return 'silent';
}

/**
 * @param {string} sentence
 * @returns {never}
 */
function fail(sentence) {
  console.error(`\n${sentence}`);
  process.exit(1);
}
