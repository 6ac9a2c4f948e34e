/** Why an edit is shown but not kept. The words for each live with the other words of the screens. */
export type NotKeptWhy =
  /** The disk or the share of it this site may use is full. */
  | 'diskFull'
  /** The browser has no store, or none that can be used here. */
  | 'noStorage'
  /** The browser forbids the store, as private windows and strict settings do. */
  | 'storageForbidden'
  /** A newer version of the app, open in another tab, has taken over the store. */
  | 'newerTabOpen'
  /** The store was written by a newer version of the app than this one. */
  | 'newerStore'
  /** The document itself was meanwhile written by a newer version of the app. */
  | 'newerDocument'
  /** The document as kept can no longer be read, so nothing may be written over it. */
  | 'unreadableDocument'
  /** The browser closed the store. */
  | 'connectionLost'
  /** The browser refused for a reason it did not tell. */
  | 'writeRefused';

/** Names the reason of a failed write. The telling error may sit inside others: an abort wraps a full disk. */
export const whyNotKept = (error: unknown): NotKeptWhy => {
  const names = errorNames(error);
  for (const [name, why] of reasons) if (names.includes(name)) return why;
  return 'writeRefused';
};

/** The surest first: the names of all nested errors are searched. */
const reasons: readonly (readonly [string, NotKeptWhy])[] = [
  ['QuotaExceededError', 'diskFull'],
  // What Firefox says of a full disk.
  ['NS_ERROR_FILE_NO_DEVICE_SPACE', 'diskFull'],
  ['MissingAPIError', 'noStorage'],
  ['SecurityError', 'storageForbidden'],
  ['NotAllowedError', 'storageForbidden'],
  ['NewerStoreError', 'newerStore'],
  ['DatabaseClosedError', 'connectionLost'],
  ['InvalidStateError', 'connectionLost'],
];

/** @returns the names of an error and of those inside it, the outermost first. */
export const errorNames = (error: unknown, depth = 6): readonly string[] => {
  if (typeof error !== 'object' || error === null || depth === 0) return [];
  const name = 'name' in error && typeof error.name === 'string' ? [error.name] : [];
  const nested = (['inner', 'cause', 'error'] as const).map((key) =>
    key in error ? (Reflect.get(error, key) as unknown) : undefined,
  );
  const failures = 'failures' in error && Array.isArray(error.failures) ? error.failures.slice(0, 5) : [];
  return [...name, ...[...nested, ...failures].flatMap((inner) => errorNames(inner, depth - 1))];
};
