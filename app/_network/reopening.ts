const KEY = 'pressminute-reopened-for';

/** Opening the page anew for the sake of a file that is gone: offered once for each, so that nobody goes in circles. */
export const reopening = {
  wasTried(file: string): boolean {
    try {
      return sessionStorage.getItem(KEY) === file;
    } catch {
      // Forbidden: then it is offered again.
      return false;
    }
  },
  now(file: string): void {
    try {
      sessionStorage.setItem(KEY, file);
    } catch {
      // As above.
    }
    window.location.reload();
  },
};
