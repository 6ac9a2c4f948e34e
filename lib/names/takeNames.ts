import type { NameRow } from '@/shared/schemas/order';
import { canBeTaken, type NamesPreview, type PreviewRow } from './namePreview';

/** Rows for the order, and those that the maker has to mend or leave first. */
interface TakenNames {
  readonly rows: readonly NameRow[];
  readonly left: readonly PreviewRow[];
}

/**
 * The rows of an order that a preview comes to. One with a fault comes as it stands, a size of no blank among them: the
 * order tells it from then on.
 *
 * @param newId an id for each
 * @param leftOut lines that the maker does not want
 */
export function takeNames(
  { rows }: Pick<NamesPreview, 'rows'>,
  newId: () => string,
  leftOut: ReadonlySet<number> = new Set(),
): TakenNames {
  const wanted = rows.filter(({ line }) => !leftOut.has(line));
  return {
    rows: wanted
      .filter(canBeTaken)
      .flatMap(({ name, size, number, pieces }) =>
        Array.from({ length: pieces }, () => ({ id: newId(), name, size, number })),
      ),
    left: wanted.filter((row) => !canBeTaken(row)),
  };
}
