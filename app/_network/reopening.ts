const KEY = 'pressminute-reopened-from';

/** Opening the page anew for a part that is gone: offered once for each version, so that nobody goes in circles. */
export const reopening = {
  /** Whether this page was opened anew already, and is still of the same version. */
  wasTried(): boolean {
    try {
      return sessionStorage.getItem(KEY) === version();
    } catch {
      // Forbidden: then it is offered again.
      return false;
    }
  },
  now(): void {
    try {
      sessionStorage.setItem(KEY, version());
    } catch {
      // As above.
    }
    window.location.reload();
  },
};

/** The first script of a page is named by its content, and another in every version that changed it. */
const version = (): string => document.querySelector('script[src]')?.getAttribute('src') ?? '';
