import { isPlainObject } from '@/lib/merging/sameValue';

/** @returns what a record is called, readable or not; null where no name can be made out. */
export function claimedName(raw: unknown): string | null {
  const body = isPlainObject(raw) ? raw.body : undefined;
  const name = isPlainObject(body) ? body.name : undefined;
  return typeof name === 'string' && name.trim() !== '' ? name.trim() : null;
}
