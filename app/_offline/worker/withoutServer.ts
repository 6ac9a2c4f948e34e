const NOWHERE = "default-src 'none'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

/** Paper, ink and ember of `app/tokens.css`, which is no part of this page. */
const STYLE =
  'html{color-scheme:light dark;background:light-dark(#f7f3ea,#171412);color:light-dark(#1f2333,#f4ede1);' +
  'font:1rem/1.5 system-ui,sans-serif}body{max-width:40rem;margin:12vh auto;padding:0 1.25rem}' +
  'h1{font-size:1.875rem;line-height:1.2}a{color:light-dark(#b0401c,#ff9d76)}';
/** The one style that the page may have: the hash of the above. */
const ONLY_STYLE = "style-src 'sha256-trbK0LmxZiIFjvWnmjTsn5AnPrBiRfl3e7OWwZ22uL0='";

/** Not what the router asked for: it then loads the address as a document, which the device has. */
export const notForTheRouter = (): Response =>
  new Response('', { headers: { 'Content-Type': 'text/html; charset=utf-8' } });

/** For a page that is none of the app's. */
export const nothingKept = (): Response =>
  new Response(
    '<!doctype html><html lang="en"><meta charset="utf-8"><meta name="viewport" content="width=device-width">' +
      `<title>No network · Pressminute</title><style>${STYLE}</style><h1>This page is not on this device</h1>` +
      '<p>The server cannot be reached, and nothing is kept for this address. <a href="/jobs">To the jobs</a></p></html>',
    {
      status: 503,
      headers: {
        'Content-Type': 'text/html; charset=utf-8',
        'Content-Security-Policy': `${NOWHERE}; ${ONLY_STYLE}`,
      },
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
