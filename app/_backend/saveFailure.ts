/** Why an edit is shown but not kept. The words for each live with the other words of the screens. */
export type SaveFailure =
  /** The disk or the share of it this site may use is full. */
  | 'diskFull'
  /** The disk could not be written, most often because it is nearly full. */
  | 'diskFailed'
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
  /** A file that was to be taken in is not to be had any more. */
  | 'fileGone'
  /** The browser closed the store. */
  | 'connectionLost'
  /** A text holds half of a sign, of which no hash can be made. */
  | 'brokenText'
  /** The browser refused for a reason it did not tell. */
  | 'writeRefused';

/**
 * Names the reason of a failed write. The telling error may sit inside others: an abort wraps a full disk, and
 * some browsers say only in the message what happened.
 */
export function saveFailureOf(error: unknown): SaveFailure {
  const signs = errorSigns(error);
  for (const [pattern, why] of reasons) if (signs.some((sign) => pattern.test(sign))) return why;
  return 'writeRefused';
}

/** The surest first: all nested errors are searched for each. */
const reasons: readonly (readonly [RegExp, SaveFailure])[] = [
  // Within the browser's share of the disk; Chromium on a disk without a byte left; Firefox on the same.
  [/QuotaExceededError|FILE_ERROR_NO_SPACE|NS_ERROR_FILE_NO_DEVICE_SPACE/, 'diskFull'],
  // Chromium on a disk with too little room for a large value tells no more than this.
  [/\bIO ?error\b/i, 'diskFailed'],
  [/^VersionError/, 'newerStore'],
  [/^(SecurityError|NotAllowedError)/, 'storageForbidden'],
  [/^InvalidStateError/, 'connectionLost'],
  [/^NotCanonical: .*surrogate/, 'brokenText'],
];

/** @returns name and message of an error and of those inside it, the outermost first. */
function errorSigns(error: unknown, depth = 6): readonly string[] {
  if (typeof error !== 'object' || error === null || depth === 0) return [];
  const text = (key: 'name' | 'message') => String(Reflect.get(error, key) ?? '');
  const nested: readonly unknown[] = (['inner', 'cause', 'error'] as const).map((key) =>
    Reflect.get(error, key),
  );
  const failures: unknown = Reflect.get(error, 'failures');
  const several: readonly unknown[] = Array.isArray(failures) ? failures.slice(0, 5) : [];
  return [
    `${text('name')}: ${text('message')}`,
    ...[...nested, ...several].flatMap((inner) => errorSigns(inner, depth - 1)),
  ];
}
