import { pageAt } from '@/app/_offline/shells';

/** What the service worker looks at in a request. */
interface Asked {
  readonly method: string;
  readonly mode: string;
  readonly url: string;
  readonly headers: Pick<Headers, 'has'>;
}

/** What is asked for, which decides where the answer comes from. */
type AskedFor =
  | { readonly kind: 'page'; readonly page: string }
  /** A page that is none of ours, or an answer of the API opened as one. */
  | { readonly kind: 'otherPage' }
  | { readonly kind: 'slashTooMany'; readonly address: string }
  /** What the router asks for when a link is pressed: the same address as the page, but not a document. */
  | { readonly kind: 'router' }
  | { readonly kind: 'api' }
  | { readonly kind: 'file'; readonly path: string }
  /** Nothing that concerns the service worker. */
  | { readonly kind: 'none' };

/** @param origin the app's own, such as `https://pressminute.example` */
export function askedFor({ method, mode, url, headers }: Asked, origin: string): AskedFor {
  const { origin: host, pathname, search } = new URL(url);
  if (method !== 'GET' && !pathname.startsWith('/api/')) return { kind: 'none' };
  if (host !== origin) return { kind: 'none' };
  if (pathname.startsWith('/api/')) return { kind: 'api' };
  if (headers.has('rsc')) return { kind: 'router' };
  if (mode !== 'navigate') return { kind: 'file', path: pathname };
  // Without its last slash such an address could be read as one of another site: the server refuses it.
  if (pathname.includes('//')) return { kind: 'otherPage' };
  if (pathname.length > 1 && pathname.endsWith('/'))
    return { kind: 'slashTooMany', address: pathname.slice(0, -1) + search };
  const page = pageAt(pathname);
  return page === null ? { kind: 'otherPage' } : { kind: 'page', page };
}
