type Directives = Readonly<Record<string, readonly string[]>>;

/**
 * The content policy of a page.
 *
 * @param nonce one unguessable word for each answer; the framework puts it on its own script tags
 * @param hashes of the scripts that stand in pages word for word, such as `sha256-…`
 * @param isDevelopment the development server rebuilds error traces with `eval` and paints its overlay with
 *   inline styles; the built app does neither
 */
export function pagePolicy(nonce: string, hashes: readonly string[], isDevelopment: boolean): string {
  return written({
    'default-src': ["'none'"],
    // Not 'strict-dynamic': it would let a trusted script add scripts of any origin, and inline ones.
    'script-src': [
      "'self'",
      `'nonce-${nonce}'`,
      ...hashes.map((hash) => `'${hash}'`),
      ...(isDevelopment ? ["'unsafe-eval'"] : []),
    ],
    'style-src': ["'self'", ...(isDevelopment ? ["'unsafe-inline'"] : [])],
    'img-src': ["'self'", 'blob:', 'data:'],
    'font-src': ["'self'"],
    'connect-src': ["'self'"],
    'worker-src': ["'self'"],
    'manifest-src': ["'self'"],
    'base-uri': ["'none'"],
    'form-action': ["'self'"],
    'frame-ancestors': ["'none'"],
    'object-src': ["'none'"],
  });
}

/**
 * The content policy of built files. A worker is bound by the policy its own script arrives with and not by
 * that of the page, so without this one a worker could reach any host.
 */
export const filePolicy: string = written({
  'default-src': ["'none'"],
  'script-src': ["'self'"],
  'connect-src': ["'self'"],
  'img-src': ["'self'", 'blob:', 'data:'],
  'worker-src': ["'self'"],
  'base-uri': ["'none'"],
  'frame-ancestors': ["'none'"],
});

/** The content policy of the service worker, which fetches the app's own files and runs nothing but itself. */
export const serviceWorkerPolicy: string = written({
  'default-src': ["'none'"],
  'script-src': ["'self'"],
  'connect-src': ["'self'"],
  'base-uri': ["'none'"],
  'frame-ancestors': ["'none'"],
});

/** The content policy of API answers: data, never a document. */
export const dataPolicy: string = written({
  'default-src': ["'none'"],
  'base-uri': ["'none'"],
  'form-action': ["'none'"],
  'frame-ancestors': ["'none'"],
});

function written(directives: Directives): string {
  return Object.entries(directives)
    .map(([name, sources]) => [name, ...sources].join(' '))
    .join('; ');
}
