const BUILT_FILE = /\/_next\/static\/\S+?\.js/;

/**
 * Whether what could not be fetched is no longer on the server, as after a newer version went out, so that trying again
 * brings nothing. The bundler's loader names the file in its error.
 */
export async function isGone(error: unknown): Promise<boolean> {
  const file = error instanceof Error ? error.message.match(BUILT_FILE)?.[0] : undefined;
  if (file === undefined) return false;
  try {
    return (await fetch(file, { method: 'HEAD', cache: 'no-store' })).status === 404;
  } catch {
    // No network: it may still be there.
    return false;
  }
}
