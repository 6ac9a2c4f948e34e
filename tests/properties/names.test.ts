import fc from 'fast-check';
import { describe, it } from 'vitest';
import { cellsOf } from '@/lib/names/cells';
import { compareCounts } from '@/lib/names/compareCounts';
import { nameCounts } from '@/lib/names/nameCounts';
import { nameListText, rowsOfNameList } from '@/lib/names/nameListText';
import { previewNames } from '@/lib/names/previewNames';
import { readNames } from '@/lib/names/readNames';
import { sizeForm, sizeFormCsv } from '@/lib/names/sizeForm';
import { takeNames } from '@/lib/names/takeNames';
import { cases } from '@/tests/tools/cases';

const SIZES = ['S', 'M', 'L', 'XL', '2XL'];
const words = { name: 'Name', size: 'Size', number: 'Number', howTo: '' };

/** Any text a name may be: no line ends within, no spaces around, as fields take it. */
const name = fc
  .string({ unit: 'grapheme', minLength: 1, maxLength: 40 })
  .map((text) => text.replace(/[\r\n\t\0]/g, '').trim())
  .filter((text) => text !== '' && !text.includes('\uFEFF'));
const row = fc.record({
  name,
  size: fc.constantFrom(...SIZES),
  number: fc.oneof(fc.constant(''), fc.nat(9999).map(String)),
});
interface Person {
  readonly name: string;
  readonly size: string;
  readonly number: string;
}
const rows = fc.array(row, { minLength: 1, maxLength: 30 });
const same = (one: unknown, other: unknown) => JSON.stringify(one) === JSON.stringify(other);

const commas = (people: readonly Person[]) => sizeFormCsv(sizeForm('', SIZES, people, 3), words);
/** As a spreadsheet puts cells on the clipboard. */
const tabs = (people: readonly Person[]) =>
  [{ name: 'Name', size: 'Size', number: 'Number' }, ...people]
    .map((one) =>
      [one.name, one.size, one.number].map((cell) => `"${cell.replaceAll('"', '""')}"`).join('\t'),
    )
    .join('\r\n');

describe('names', () => {
  it('come back from a table with commas or tabs as they went out', () => {
    fc.assert(
      fc.property(rows, fc.constantFrom(commas, tabs), (people, write) => {
        const read = readNames(write(people), SIZES);
        const back = previewNames(read, SIZES).rows;
        return same(
          back.map(({ name: who, size, number }) => ({ name: who, size, number })),
          people,
        );
      }),
      cases(500),
    );
  });

  it('lose no cell of any table that is written by RFC 4180', () => {
    const cell = fc.string({
      unit: fc.constantFrom('a', '"', ',', '\r\n', '\n', ' ', ';', 'é'),
      maxLength: 8,
    });
    const table = fc.array(fc.array(cell, { minLength: 2, maxLength: 4 }), { minLength: 1, maxLength: 6 });
    fc.assert(
      fc.property(table, (cells) => {
        const text = cells
          .map((line) => line.map((one) => `"${one.replaceAll('"', '""')}"`).join(','))
          .join('\r\n');
        const full = cells.filter((line) => line.some((one) => one.trim() !== ''));
        return same(
          cellsOf(text, ',').rows.map((line) => line.cells),
          full,
        );
      }),
      cases(500),
    );
  });

  it('lose no sign of a text but separators, quotes and line ends, whatever the text is', () => {
    const text = fc.string({ unit: fc.constantFrom('a', 'b', '"', ',', '\n', '\r'), maxLength: 40 });
    const letters = (of: string) => of.replace(/[^ab]/g, '');
    fc.assert(
      fc.property(
        text,
        (pasted) =>
          letters(
            cellsOf(pasted, ',')
              .rows.flatMap(({ cells }) => cells)
              .join(''),
          ) === letters(pasted),
      ),
      cases(500),
    );
  });

  it('come to as many pieces by size as rows have a size, and taking their counts leaves no difference', () => {
    const some = fc.array(fc.record({ size: fc.constantFrom(...SIZES, '', '7XL') }), { maxLength: 60 });
    const quantities = fc.array(fc.record({ size: fc.constantFrom(...SIZES), quantity: fc.nat(20) }), {
      maxLength: 5,
    });
    fc.assert(
      fc.property(some, quantities, (people, ordered) => {
        const { sizes, unknown, withoutSize } = nameCounts(people, SIZES);
        const sum = (of: typeof sizes) => of.reduce((all, { quantity }) => all + quantity, 0);
        const withSize = people.filter(({ size }) => size !== '').length;
        const { byNames } = compareCounts(people, ordered, SIZES);
        return (
          sum(sizes) + sum(unknown) === withSize &&
          withoutSize === people.length - withSize &&
          compareCounts(people, byNames, SIZES).differences.length === 0
        );
      }),
      cases(500),
    );
  });

  it('come to one row of the preview for each line, and to one row of the order for each piece', () => {
    const line = fc
      .tuple(name, fc.constantFrom('L', '2 x L', 'M/L', '7XL', '', 'xxl'))
      .map((cells) => cells.join('\t'));
    fc.assert(
      fc.property(
        fc.array(
          line.filter((text) => !text.includes('"')),
          { minLength: 2, maxLength: 20 },
        ),
        (lines) => {
          const table = {
            ...readNames(lines.join('\n'), SIZES, '\t'),
            columns: ['name', 'size'] as const,
            hasHead: false,
          };
          const preview = previewNames(table, SIZES);
          const { rows: taken, left } = takeNames(preview, () => 'id');
          return preview.rows.length === lines.length && taken.length === preview.pieces && left.length === 0;
        },
      ),
      cases(300),
    );
  });

  it('read back from the list to be printed are the same list again', () => {
    const text = fc
      .array(fc.oneof(name, fc.nat(99).map(String)), { maxLength: 12 })
      .map((lines) => lines.join('\n'));
    fc.assert(
      fc.property(text, (list) => {
        const once = nameListText(rowsOfNameList(list, [], () => 'id'));
        return nameListText(rowsOfNameList(once, [], () => 'id')) === once;
      }),
      cases(300),
    );
  });
});
