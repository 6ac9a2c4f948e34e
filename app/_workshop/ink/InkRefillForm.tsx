'use client';

import { Disclosure } from '@/app/_controls/Disclosure';
import { useTextContext } from '@/app/_fields/useTextContext';
import { formatterFor } from '@/app/_words/formatter';
import type { WorkshopFields } from '@/app/_workshop/workshopFields';
import { InkRefillFields } from './InkRefillFields';

type InkRefillFormProps = Readonly<{
  fields: WorkshopFields;
  /** Days on which prints are noted. */
  printDays: ReadonlySet<string>;
}>;

/** A short form for ink that was poured in. */
export function InkRefillForm({ fields, printDays }: InkRefillFormProps) {
  const formatter = formatterFor(useTextContext());
  return (
    <Disclosure id="ink-refill" level={4} heading="Note a refill" line="when ink is poured in">
      <InkRefillFields
        label="A refill"
        first={null}
        printDays={printDays}
        submit="Note the refill"
        onNote={(body) =>
          fields.workspace.note(`Refill of ${formatter.day(body.day)}`, [{ kind: 'inkRefill', body }])
        }
      />
    </Disclosure>
  );
}
