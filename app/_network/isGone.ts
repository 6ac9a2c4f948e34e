const BUILT_FILE = /\/_next\/static\/\S+?\.js/;
const BUILT = '/_next/static/';

/**
 * Whether what could not be fetched is no longer on the server, as after a newer version went out, so that trying again
 * brings nothing and the page opened anew has its own.
 *
 * @param why what the browser or the bundler's loader said; some name the file in it
 */
export async function isGone(why: string): Promise<boolean> {
  const file = why.match(BUILT_FILE)?.[0];
  try {
    return file === undefined ? await isOlderThanServer() : (await look(file, 'HEAD')).status === 404;
  } catch {
    // No network: it may still be there.
    return false;
  }
}

// Helpers

/** The service worker's script lists every file of the version on the server, and is itself never kept. */
async function isOlderThanServer(): Promise<boolean> {
  const answer = await look('/sw.js', 'GET');
  const list = answer.ok ? await answer.text() : '';
  // The development server has no list.
  return list.includes(BUILT) && ownScripts().some((script) => !list.includes(`"${script}"`));
}

/** What the page was sent with and has fetched since: another version has other names for what it changed. */
const ownScripts = (): readonly string[] =>
  [...document.querySelectorAll<HTMLScriptElement>('script[src]')]
    .map(({ src }) => new URL(src).pathname)
    .filter((path) => path.startsWith(BUILT));

const look = (address: string, method: 'GET' | 'HEAD'): Promise<Response> =>
  fetch(address, { method, cache: 'no-store' });
