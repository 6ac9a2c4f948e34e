/** Methods that the framework knows. The addresses of the API answer by themselves to those that they do not take. */
const KNOWN_METHODS = ['DELETE', 'GET', 'HEAD', 'OPTIONS', 'PATCH', 'POST', 'PUT'];
const PAGE_METHODS = ['GET', 'HEAD'];

/**
 * @typedef {{ status: number, sentence: string, headers?: Record<string, string> }} Refusal
 * @typedef {{
 *   method?: string | undefined,
 *   url?: string | undefined,
 *   headers: Readonly<Record<string, string | readonly string[] | undefined>>,
 * }} Asked
 */

/**
 * Requests that the framework would fail at with status 500 and without the security headers, and those that no
 * address has an answer to.
 *
 * @param {Asked} request
 * @param {(state: string) => void} readRouterState throws at a router state that cannot be read
 * @returns {Refusal | undefined} nothing for a request that may go on
 */
export function refusal({ method = '', url = '', headers }, readRouterState) {
  const [path = ''] = url.split('?');
  if (!path.startsWith('/')) return { status: 400, sentence: 'The address does not begin with a slash.' };
  if (!isReadable(path)) {
    return {
      status: 400,
      sentence: 'The address has a percent sign that does not stand for a letter. Check how it was copied.',
    };
  }
  // The framework would send the visitor on to an address that is another site's when it is read once more.
  if (/[/\\]{2}|\\/.test(path)) return { status: 404, sentence: 'There is no page at this address.' };
  const isApi = path.startsWith('/api/');
  if (!(isApi ? KNOWN_METHODS : PAGE_METHODS).includes(method)) {
    const taken =
      path === '/api/price' ? ['OPTIONS', 'POST'] : isApi ? ['GET', 'HEAD', 'OPTIONS'] : PAGE_METHODS;
    return {
      status: 405,
      sentence: 'This address does not take requests of this kind.',
      headers: { Allow: taken.join(', ') },
    };
  }
  const state = headers['next-router-state-tree'];
  if (state !== undefined && !succeeds(() => readRouterState(String(state)))) {
    return { status: 400, sentence: 'A header of the request cannot be read: Next-Router-State-Tree.' };
  }
  return undefined;
}

/** @param {string} path */
const isReadable = (path) => succeeds(() => decodeURIComponent(path));

/** @param {() => unknown} attempt */
function succeeds(attempt) {
  try {
    attempt();
    return true;
  } catch {
    return false;
  }
}
