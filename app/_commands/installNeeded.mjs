/**
 * @typedef {{ version?: string, optional?: boolean }} LockedPackage
 * @typedef {{ packages?: Record<string, LockedPackage> }} Lockfile
 */

/**
 * Whether the installed packages differ from those the lockfile names. Versions are compared and not file
 * times, which a fresh clone, a copy or a restored cache all shuffle.
 *
 * @param {Lockfile} wanted package-lock.json
 * @param {Lockfile | undefined} installed node_modules/.package-lock.json, which npm writes when it is done
 * @returns {boolean}
 */
export function installNeeded(wanted, installed) {
  if (installed === undefined) return true;
  return Object.entries(wanted.packages ?? {}).some(([place, locked]) => {
    const found = installed.packages?.[place];
    // The nameless entry is the project itself; optional ones are left out on machines they are not for.
    if (place === '' || (locked.optional === true && found === undefined)) return false;
    return found?.version !== locked.version;
  });
}
