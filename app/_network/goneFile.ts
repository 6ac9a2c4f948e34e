const BUILT_FILE = /\/_next\/static\/\S+?\.js/;

/**
 * The file that is no longer on the server, as after a newer version went out, so that trying again brings nothing; null
 * where it may still come. The bundler's loader names it in its error.
 */
export async function goneFile(error: unknown): Promise<string | null> {
  const file = error instanceof Error ? error.message.match(BUILT_FILE)?.[0] : undefined;
  if (file === undefined) return null;
  try {
    return (await fetch(file, { method: 'HEAD', cache: 'no-store' })).status === 404 ? file : null;
  } catch {
    // No network: it may still be there.
    return null;
  }
}
