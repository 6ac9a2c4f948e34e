import type { NameRow } from '@/shared/schemas/order';

type ToPrint = Pick<NameRow, 'name' | 'number'>;

/** @returns the names and numbers to be printed, one to a line of text, as a line of a job holds them. */
export const nameListText = (rows: readonly ToPrint[]): string =>
  rows
    .map(printed)
    .filter((text) => text !== '')
    .join('\n');

/** @returns the lines of such a text, composed alike; empty ones are left out. */
export const namesOfList = (text: string): readonly string[] =>
  text
    .split('\n')
    .map((line) => line.normalize('NFC').trim())
    .filter((line) => line !== '');

/**
 * Reads that text back into rows. Sizes do not stand in it: they come from the rows that print the same, each once;
 * what is new has none.
 *
 * @param former rows of the order
 * @param newId an id for each new row
 */
export function rowsOfNameList(
  text: string,
  former: readonly NameRow[],
  newId: () => string,
): readonly NameRow[] {
  const known = new Map<string, NameRow[]>();
  for (const row of former) known.set(printed(row), [...(known.get(printed(row)) ?? []), row]);
  return namesOfList(text).map((line) => {
    const before = known.get(line)?.shift();
    if (before !== undefined) return before;
    const [, name = line, number = ''] = /^(.*\S)\s+(\p{Nd}{1,4})$/u.exec(line) ?? [];
    return /^\p{Nd}{1,4}$/u.test(line)
      ? { id: newId(), name: '', size: '', number: line }
      : { id: newId(), name, size: '', number };
  });
}

/** What stands in one and not in the other; one that stands there twice counts twice. */
export function nameListDifferences(
  text: string,
  rows: readonly ToPrint[],
): { readonly onlyInList: readonly string[]; readonly onlyInRows: readonly string[] } {
  const [list, own] = [namesOfList(text), namesOfList(nameListText(rows))];
  return { onlyInList: without(list, own), onlyInRows: without(own, list) };
}

// Helpers

const printed = ({ name, number }: ToPrint): string =>
  `${name} ${number}`
    .normalize('NFC')
    .replace(/[\r\n]+/g, ' ')
    .trim();

function without(lines: readonly string[], others: readonly string[]): readonly string[] {
  const left = new Map<string, number>();
  for (const line of others) left.set(line, (left.get(line) ?? 0) + 1);
  return lines.filter((line) => {
    const there = left.get(line) ?? 0;
    left.set(line, there - 1);
    return there <= 0;
  });
}
