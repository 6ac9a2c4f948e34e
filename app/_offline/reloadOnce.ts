const KEY = 'pressminute-reloaded-for';

/**
 * Opens the page anew by itself, but never twice for the same reason: should that not have mended it, a person decides.
 *
 * @returns false where it was done before, or where that cannot be known
 */
export function reloadOnce(reason: string): boolean {
  try {
    if (sessionStorage.getItem(KEY) === reason) return false;
    sessionStorage.setItem(KEY, reason);
  } catch {
    return false;
  }
  window.location.reload();
  return true;
}
