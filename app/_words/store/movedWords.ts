/** What undo or redo has moved. */
interface Moved {
  readonly direction: 'undo' | 'redo';
  /** What the edit was: “Price of a shirt”. */
  readonly label: string;
  /** Names of the documents it was in; null for one that says none. */
  readonly names: readonly (string | null)[];
}

/**
 * Says what undo has taken back, or redo has made again, and where.
 *
 * @example movedWords({ direction: 'undo', label: 'Price of a shirt', names: ['Club shirts'] })
 *   // => 'Undone: Price of a shirt, in Club shirts'
 */
export function movedWords({ direction, label, names }: Moved): string {
  const done = direction === 'undo' ? 'Undone' : 'Done again';
  const [first, ...others] = names.filter((name) => name !== null);
  // “Remove Club shirts” says where already.
  if (first === undefined || label.includes(first)) return `${done}: ${label}`;
  const more = others.length === 0 ? '' : ` and ${others.length} more`;
  return `${done}: ${label}, in ${first}${more}`;
}

/** @returns what to say where an edit could no longer be taken back or made again. */
export const lostWords = (direction: Moved['direction'], label: string): string =>
  `“${label}” can no longer be ${direction === 'undo' ? 'undone' : 'done again'}: what it changed cannot be read. Nothing was changed.`;
