import { isPlainObject } from '@/lib/merging/sameValue';
import { sha256OfValue } from './sha256';

/** @returns whether the text of a paper still is what its hash was made of, as it was written and before any step. */
export function isPaperSound(raw: unknown): boolean {
  if (!isPlainObject(raw)) return false;
  try {
    return sha256OfValue(raw.body) === raw.sha256;
  } catch {
    // Half of a surrogate pair has no canonical text, so no paper was ever made of it.
    return false;
  }
}
