import { type NextRequest, NextResponse } from 'next/server';
import { strangerHash } from './app/_firstScreen/strangerScript';
import { pageAt } from './app/_offline/shells';
import { pagePolicy } from './app/_security/contentPolicy';

/**
 * Gives each page its content policy with a fresh nonce; the rest of the headers stand in next.config.ts. Leads the
 * addresses of all jobs to one page, and those of all price lists.
 */
export function proxy(request: NextRequest): NextResponse {
  const policy = pagePolicy(freshNonce(), [strangerHash], process.env.NODE_ENV === 'development');
  // The renderer reads the nonce from the policy among the request's headers.
  const headers = new Headers(request.headers);
  headers.set('Content-Security-Policy', policy);
  const { pathname } = request.nextUrl;
  const page = pageAt(pathname) ?? pathname;
  const response =
    page === pathname
      ? NextResponse.next({ request: { headers } })
      : // Not by `rewrites` in next.config.ts, which would hand the id on to the page.
        NextResponse.rewrite(new URL(page, request.url), { request: { headers } });
  response.headers.set('Content-Security-Policy', policy);
  return response;
}

export const config = {
  // Built files, the service worker and the API carry a policy of their own that needs no nonce (next.config.ts).
  matcher: '/((?!api/|_next/static/|sw\\.js$).*)',
};

function freshNonce(): string {
  return btoa(String.fromCharCode(...crypto.getRandomValues(new Uint8Array(16))));
}
