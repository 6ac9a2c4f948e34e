import { workerScript } from '@/app/_offline/workerScript';

/** Made once, with the pages that are made at build; the same file on every kind of host. */
export const dynamic = 'force-static';

export async function GET(): Promise<Response> {
  // The development server keeps nothing, so that every change is seen.
  if (process.env.NODE_ENV !== 'production') return new Response(null, { status: 404 });
  return new Response(await workerScript(), {
    headers: { 'Content-Type': 'text/javascript; charset=utf-8' },
  });
}
