import { type NextRequest, NextResponse } from 'next/server';
import { strangerHash } from './app/_firstScreen/strangerScript';
import { pagePolicy } from './app/_security/contentPolicy';

/** Gives each page its content policy with a fresh nonce; the rest of the headers stand in next.config.ts. */
export function proxy(request: NextRequest): NextResponse {
  const policy = pagePolicy(freshNonce(), [strangerHash], process.env.NODE_ENV === 'development');
  // The renderer reads the nonce from the policy among the request's headers.
  const headers = new Headers(request.headers);
  headers.set('Content-Security-Policy', policy);
  const response = NextResponse.next({ request: { headers } });
  response.headers.set('Content-Security-Policy', policy);
  return response;
}

export const config = {
  // Built files and the API carry a policy of their own that needs no nonce (next.config.ts).
  matcher: '/((?!api/|_next/static/).*)',
};

function freshNonce(): string {
  return btoa(String.fromCharCode(...crypto.getRandomValues(new Uint8Array(16))));
}
