'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { CheckField } from '@/app/_fields/CheckField';
import { NumberField } from '@/app/_fields/NumberField';
import { saveBytes } from '@/app/_files/saveBytes';
import { sizeFormWords } from '@/app/_words/names/sizeFormWords';
import { sizeForm, sizeFormCsv } from '@/lib/names/sizeForm';
import { mostEntries, numberLimits } from '@/shared/limits';
import { orderLineSchema } from '@/shared/schemas/order';
import { z } from '@/shared/schemas/z';
import { wantedPieces } from '@/shared/wantedPieces';
import styles from './Names.module.css';
import type { NamesWorkspace } from './namesWorkspace';
import type { NamedLine } from './orderNames';

type SizeFormPartProps = Readonly<{
  workspace: NamesWorkspace;
  orderName: string;
  named: NamedLine;
  sizes: readonly string[];
}>;

/** The form in which a club says who gets which size, with what is known already. */
export function SizeFormPart({ orderName, named, sizes }: SizeFormPartProps) {
  const { line, rows } = named;
  const [hasNumbers, setNumbers] = useState(rows.some(({ number }) => number !== ''));
  const [empty, setEmpty] = useState<number | null>(null);
  const missing = empty ?? Math.max(rows.length === 0 ? ROWS : 0, wantedPieces([line]) - rows.length);
  const form = sizeForm(`${orderName}, ${line.name}`, sizes, rows, missing);
  const words = sizeFormWords(hasNumbers, sizes);
  return (
    <div className={styles.intake}>
      <NumberField
        label="Empty rows"
        width="narrow"
        value={missing}
        {...numberLimits(emptyRowsSchema, [])}
        onCommit={setEmpty}
      />
      <CheckField label="With numbers" checked={hasNumbers} onCommit={setNumbers} />
      <div className={styles.ways}>
        <Button
          onPress={() =>
            // With its mark: without it some spreadsheets read another encoding.
            saveBytes(`${form.title}.csv`, new TextEncoder().encode(`\uFEFF${sizeFormCsv(form, words)}`), CSV)
          }
        >
          Save as a table
        </Button>
      </div>
    </div>
  );
}

// Helpers

const CSV = 'text/csv;charset=utf-8';
/** Where nobody said how many there are. */
const ROWS = 20;
const emptyRowsSchema = z
  .int()
  .min(0)
  .max(mostEntries(orderLineSchema, ['names']));
