import { isPlainObject } from '@/lib/merging/sameValue';
import { ERASED } from './erasedWord';

/** Makes another text of one. */
export type Rewrite = (text: string) => string;

/** @returns a rewriting that takes texts out wherever they stand as words of their own, in capitals or not */
export function takingOut(texts: readonly string[]): Rewrite {
  if (texts.length === 0) return (text) => text;
  // The longer first: “Ana Silva” must not leave “Silva” behind.
  const alternatives = texts
    .toSorted((one, other) => other.length - one.length)
    .map((text) => text.replace(/[\\^$.*+?()[\]{}|]/g, '\\$&').replace(/\s+/g, '\\s+'));
  const pattern = new RegExp(`(?<![\\p{L}\\p{N}])(?:${alternatives.join('|')})(?![\\p{L}\\p{N}])`, 'giu');
  return (text) => text.replace(pattern, ERASED);
}

/** @returns the same JSON value with everything that somebody typed into it rewritten; ids and choices stay. */
export function rewritten(value: unknown, rewrite: Rewrite): unknown {
  if (Array.isArray(value)) return value.map((item) => rewritten(item, rewrite));
  if (!isPlainObject(value)) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, part]) => [
      key,
      typeof part === 'string' && TYPED.has(key) ? rewrite(part) : rewritten(part, rewrite),
    ]),
  );
}

/** @returns whether a rewriting would change anything typed in a JSON value. */
export function isTouched(value: unknown, rewrite: Rewrite): boolean {
  if (Array.isArray(value)) return value.some((item) => isTouched(item, rewrite));
  if (!isPlainObject(value)) return false;
  return Object.entries(value).some(([key, part]) =>
    typeof part === 'string' && TYPED.has(key) ? rewrite(part) !== part : isTouched(part, rewrite),
  );
}

/** Keys of free text in drafts and entries. */
const TYPED: ReadonlySet<string> = new Set([
  ...['name', 'customer', 'note', 'label', 'reason', 'what', 'why', 'underCostWhy', 'fileName', 'text'],
  ...['lot', 'provenLot', 'supplier', 'heading', 'tagline', 'asked', 'agreed', 'heardFrom', 'nameList'],
]);
