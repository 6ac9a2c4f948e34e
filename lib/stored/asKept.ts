import type { Entry, Paper } from '@/shared/schemas/happened';

/**
 * @returns a paper or an entry in the version it was written in, as its row is and its hash was made of; copies carry it
 * so, and the same one met elsewhere is the same
 */
export function asKept(paper: Paper): Paper;
export function asKept(entry: Entry): Entry;
export function asKept(item: Entry): Entry {
  const { kept, ...rest } = item;
  return kept === undefined ? item : { ...rest, ...kept };
}

type Written = Pick<Entry, 'version' | 'body'>;

/** @returns what is to be known of the row beside the body that is read; nothing where both are of one version. */
export const keptBeside = ({ version, body }: Written, known: number): Pick<Entry, 'kept'> =>
  version === known ? {} : { kept: { version, body } };
