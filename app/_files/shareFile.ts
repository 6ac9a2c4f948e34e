type Shared = 'shared' | 'stopped' | 'cannot';

/** @returns whether this browser can hand a file on to another app, as phones can. */
export function canShare(file: File): boolean {
  try {
    return navigator.canShare?.({ files: [file] }) === true;
  } catch {
    // Some browsers refuse to be asked about files at all.
    return false;
  }
}

/**
 * Hands a file on to whatever the maker chooses. It must be made before the tap that asks for it: browsers take
 * no request for sharing that comes long after.
 *
 * @returns `stopped` where the maker changed their mind, `cannot` where the browser refused
 */
export async function shareFile(file: File): Promise<Shared> {
  if (!canShare(file)) return 'cannot';
  try {
    await navigator.share({ files: [file] });
    return 'shared';
  } catch (error) {
    return error instanceof DOMException && error.name === 'AbortError' ? 'stopped' : 'cannot';
  }
}
