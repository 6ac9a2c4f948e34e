import { isOfFile } from './arrivalLabels';

/** What undo or redo has moved. */
interface Moved {
  readonly direction: 'undo' | 'redo';
  /** What the edit was: “Price of a shirt”. */
  readonly label: string;
  /** Names of the documents it was in; null for one that says none. */
  readonly names: readonly (string | null)[];
  /** Numbers of papers that count now, or no more: “3K”. */
  readonly papers?: readonly { readonly number: string; readonly counts: boolean }[];
  /** Nothing but what was noted has moved. */
  readonly onlyNoted?: boolean;
}

/**
 * Says what undo has taken back, or redo has made again, and where.
 *
 * @example movedWords({ direction: 'undo', label: 'Price of a shirt', names: ['Club shirts'] })
 *   // => 'Undone: Price of a shirt, in Club shirts'
 */
export function movedWords(moved: Moved): string {
  const told = whatMoved(moved);
  const papers = (moved.papers ?? []).map(({ number, counts }) =>
    counts
      ? `Version ${number} is in force again.`
      : `Version ${number} is withdrawn; its number is not used again.`,
  );
  return papers.length === 0 ? told : `${told}. ${papers.join(' ')}`;
}

function whatMoved({ direction, label, names, onlyNoted = false }: Moved): string {
  // Nothing written is ever rubbed out: the record shows both.
  if (onlyNoted) return `${direction === 'undo' ? 'Taken back' : 'Counts again'}: ${label}`;
  const done = direction === 'undo' ? 'Undone' : 'Done again';
  const [first, ...others] = names.filter((name) => name !== null);
  // “Remove Club shirts” says where already, and of a whole file a few names would say nothing.
  if (isOfFile(label) || first === undefined || label.includes(first)) return `${done}: ${label}`;
  const more = others.length === 0 ? '' : ` and ${others.length} more`;
  return `${done}: ${label}, in ${first}${more}`;
}

/** @returns what to say where an edit could no longer be taken back or made again. */
export const lostWords = (direction: Moved['direction'], label: string): string =>
  `“${label}” can no longer be ${direction === 'undo' ? 'undone' : 'done again'}: what it changed cannot be read. Nothing was changed.`;
