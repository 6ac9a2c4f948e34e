'use client';

import { useState } from 'react';
import { useToday } from '@/app/_clock/useToday';
import { Button } from '@/app/_controls/Button';
import { Fold } from '@/app/_controls/Fold';
import { CheckField } from '@/app/_fields/CheckField';
import { NumberField } from '@/app/_fields/NumberField';
import { saveBytes } from '@/app/_files/saveBytes';
import { sizeFormWords } from '@/app/_words/names/sizeFormWords';
import { sizeForm, sizeFormCsv, sizeFormMessage } from '@/lib/names/sizeForm';
import { paperHeading } from '@/lib/quotes/paperHeading';
import { mostEntries, numberLimits } from '@/shared/limits';
import { customerSchema } from '@/shared/schemas/customer';
import { type Order, orderLineSchema } from '@/shared/schemas/order';
import { z } from '@/shared/schemas/z';
import { wantedPieces } from '@/shared/wantedPieces';
import styles from './Names.module.css';
import type { NamesWorkspace } from './namesWorkspace';
import type { NamedLine } from './orderNames';
import { SizeFormStatus } from './SizeFormStatus';
import { useSizeFormFile } from './useSizeFormFile';

type SizeFormPartProps = Readonly<{
  workspace: NamesWorkspace;
  orderId: string;
  order: Order;
  named: NamedLine;
  sizes: readonly string[];
}>;

/** The form in which a club says who gets which size, with what is known already: to print, as a table, as a message. */
export function SizeFormPart({ workspace, orderId, order, named, sizes }: SizeFormPartProps) {
  const { line, rows } = named;
  const { workshop, customers, readFile } = workspace;
  const day = useToday();
  const [hasNumbers, setNumbers] = useState(rows.some(({ number }) => number !== ''));
  const [empty, setEmpty] = useState<number | null>(null);
  const { state, write } = useSizeFormFile({ words: workshop.papers.words, readFile });
  const missing = empty ?? Math.max(rows.length === 0 ? ROWS : 0, wantedPieces([line]) - rows.length);
  const form = sizeForm(`${order.name}, ${line.name}`, sizes, rows, missing);
  const print = () => {
    // Its head is that of every paper of the order; an enquiry may have no customer yet.
    const customer = customers[order.customerId ?? ''] ?? customerSchema.parse({ name: order.name });
    const { language, page, seller } = paperHeading({
      orderId,
      order,
      orderNumber: null,
      customer,
      workshop,
      day,
    });
    write(form.title, { ...form, language, page, seller, hasNumbers });
  };
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
          blockedBy={state.kind === 'writing' ? 'The form is being written.' : undefined}
          onPress={print}
        >
          Form to print
        </Button>
        <Button
          onPress={() =>
            // With its mark: without it some spreadsheets read another encoding.
            saveBytes(
              `${form.title}.csv`,
              new TextEncoder().encode(`\uFEFF${sizeFormCsv(form, sizeFormWords(hasNumbers, sizes))}`),
              'text/csv;charset=utf-8',
            )
          }
        >
          Table to send
        </Button>
      </div>
      <SizeFormStatus state={state} />
      <Fold summary="As a message" line="to copy; what comes back can be pasted here">
        <pre className={styles.message} dir="auto">
          {sizeFormMessage(form, sizeFormWords(hasNumbers))}
        </pre>
      </Fold>
    </div>
  );
}

// Helpers

/** Where nobody said how many there are. */
const ROWS = 20;
const emptyRowsSchema = z
  .int()
  .min(0)
  .max(mostEntries(orderLineSchema, ['names']));
