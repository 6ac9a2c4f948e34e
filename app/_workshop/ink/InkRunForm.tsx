'use client';

import { Disclosure } from '@/app/_controls/Disclosure';
import type { WorkshopFields } from '@/app/_workshop/workshopFields';
import { InkRunFields } from './InkRunFields';

/** A short form for what was printed outside of any job here; a job's own prints are noted on its docket. */
export function InkRunForm({ fields }: Readonly<{ fields: WorkshopFields }>) {
  return (
    <Disclosure
      id="ink-run"
      level={4}
      heading="Note prints by hand"
      line="a job’s own prints are noted on its docket, under its sheets"
    >
      <InkRunFields
        label="Prints"
        first={null}
        submit="Note the prints"
        onNote={(body) => fields.workspace.note(`${body.name}, noted`, [{ kind: 'inkPrints', body }])}
      />
    </Disclosure>
  );
}
