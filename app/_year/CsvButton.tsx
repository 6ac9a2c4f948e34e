import { Button } from '@/app/_controls/Button';
import { saveBytes } from '@/app/_files/saveBytes';
import { paymentWayWords } from '@/app/_words/orders/notes/orderStepWords';
import { hourNoteWords, leftOutWords, rowKindWords } from '@/app/_words/year/yearNames';
import { yearCsv } from '@/lib/exports/yearCsv';
import { orderNumberText } from '@/shared/orderNumberText';
import { aboutName } from './aboutName';
import type { YearSection } from './yearSection';

type CsvButtonProps = Readonly<{ on: YearSection /** Of the year. */; name: string }>;

/** Hands out the year for whoever keeps the books: a row for each entry. */
export function CsvButton({ on, name }: CsvButtonProps) {
  const { standing, book } = on;
  const save = () => {
    const text = yearCsv(standing.rows, standing.hours, {
      kindOf: rowKindWords,
      noteOf: hourNoteWords,
      leftOutOf: leftOutWords,
      wayOf: ({ way }) => (way === null ? '' : paymentWayWords[way]),
      aboutOf: (about) => {
        const number = about.kind === 'order' ? book.of(about.id)?.standing.number : null;
        return { name: aboutName(about, on), number: number == null ? '' : orderNumberText(number) };
      },
    });
    saveBytes(`Year ${name}.csv`, new TextEncoder().encode(text), 'text/csv;charset=utf-8');
  };
  return <Button onPress={save}>Save for the books, CSV</Button>;
}
