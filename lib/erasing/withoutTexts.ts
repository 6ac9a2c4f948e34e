import { ERASED } from './erasedWord';
import { changedAt, textsAt } from './placesIn';
import { typedTexts } from './typedTexts';

/** Makes another text of one. */
export type Rewrite = (text: string) => string;

/** A text that somebody typed, and where it stands. */
interface TypedText {
  /** As in `openItems.what`. */
  readonly path: string;
  readonly text: string;
}

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

/** @returns the body of a kind with what somebody typed freely into it rewritten; all else stays. */
export const rewritten = (kind: string, body: unknown, rewrite: Rewrite): unknown =>
  placesOf(kind).reduce<unknown>(
    (value, path) => changedAt(value, path, (part) => (typeof part === 'string' ? rewrite(part) : part)),
    body,
  );

/** @returns the typed texts of a body that a rewriting would change */
export const touchedTexts = (kind: string, body: unknown, rewrite: Rewrite): readonly TypedText[] =>
  placesOf(kind).flatMap((path) =>
    textsAt(body, path).flatMap((text) => (rewrite(text) === text ? [] : [{ path, text }])),
  );

const placesOf = (kind: string): readonly string[] =>
  Object.hasOwn(typedTexts, kind) ? (typedTexts[kind] ?? []) : [];
