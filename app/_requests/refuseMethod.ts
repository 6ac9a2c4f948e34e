/**
 * The answer to a method that an address of the API does not take.
 *
 * @param allow methods it takes, as the `Allow` header lists them
 * @param instead what to do instead, a sentence
 */
export const refuseMethod = (allow: string, instead: string) => (): Response =>
  Response.json(
    { error: `This address does not take requests of this kind. ${instead}` },
    { status: 405, headers: { Allow: allow, 'Cache-Control': 'no-store' } },
  );

/** The answer to the question which methods an address takes. */
export const tellMethods = (allow: string) => (): Response =>
  new Response(null, { status: 204, headers: { Allow: allow } });
