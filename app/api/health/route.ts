import { refuseMethod, tellMethods } from '@/app/_requests/refuseMethod';

// Asked anew every time: an answer made at build would be given by a server that is gone.
export const dynamic = 'force-dynamic';

/** Says that the server answers; nothing is kept on it that could be ill. */
export const GET = (): Response =>
  Response.json({ status: 'ok' }, { headers: { 'Cache-Control': 'no-store' } });

const methods = 'GET, HEAD, OPTIONS';
export const OPTIONS = tellMethods(methods);

const refuse = refuseMethod(methods, 'Ask with GET.');

export { refuse as DELETE, refuse as PATCH, refuse as POST, refuse as PUT };
