const NOWHERE = "default-src 'none'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

/** Not what the router asked for: it then loads the address as a document, which the device has. */
export const notForTheRouter = (): Response =>
  new Response('', { headers: { 'Content-Type': 'text/html; charset=utf-8' } });

/** For a page that is none of the app's. */
export const nothingKept = (): Response =>
  new Response(
    '<!doctype html><html lang="en"><meta charset="utf-8"><meta name="viewport" content="width=device-width">' +
      '<title>No network · Pressminute</title><h1>This page is not on this device</h1>' +
      '<p>The server cannot be reached, and nothing is kept for this address. <a href="/jobs">To the jobs</a></p></html>',
    {
      status: 503,
      headers: { 'Content-Type': 'text/html; charset=utf-8', 'Content-Security-Policy': NOWHERE },
    },
  );

/** For a request to the API. */
export const noServer = (): Response =>
  new Response(
    JSON.stringify({
      error: 'The server cannot be reached, so nothing was priced. The screens work without it.',
    }),
    {
      status: 503,
      headers: { 'Content-Type': 'application/json', 'Content-Security-Policy': NOWHERE },
    },
  );
