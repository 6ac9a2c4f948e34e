'use client';

import { Disclosure } from '@/app/_controls/Disclosure';
import { useTextContext } from '@/app/_fields/useTextContext';
import { formatterFor } from '@/app/_words/formatter';
import { InkRefillFields } from './InkRefillFields';
import type { WorkshopFields } from './workshopFields';

/** A short form for ink that was poured in. */
export function InkRefillForm({ fields }: Readonly<{ fields: WorkshopFields }>) {
  const formatter = formatterFor(useTextContext());
  return (
    <Disclosure id="ink-refill" level={4} heading="Note a refill" line="when ink is poured in">
      <InkRefillFields
        label="A refill"
        first={null}
        submit="Note the refill"
        onNote={(body) =>
          fields.workspace.note(`Refill of ${formatter.day(body.day)}`, [{ kind: 'inkRefill', body }])
        }
      />
    </Disclosure>
  );
}
