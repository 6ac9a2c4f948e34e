import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

export type InPlace<T> =
  | { readonly there: true; readonly data: T; readonly says: string }
  | { readonly there: false; readonly says: string };

/**
 * Reads a file of reference values that is kept beside the repository and not in it. Where it is not, the tests
 * that need it are skipped and say so; the project's own lists are tested everywhere.
 *
 * @param name of the file in ../shared/reference, seen from the repository
 * @param as takes what the file holds to the shape that is needed, and throws where it is another
 */
export function inPlace<T>(name: string, as: (content: unknown) => T): InPlace<T> {
  const path = `../shared/reference/${name}`;
  const file = fileURLToPath(new URL(`../../${path}`, import.meta.url));
  if (!existsSync(file)) return { there: false, says: `skipped: ${path} is not beside the repository` };
  return { there: true, data: as(JSON.parse(readFileSync(file, 'utf8'))), says: `read from ${path}` };
}
