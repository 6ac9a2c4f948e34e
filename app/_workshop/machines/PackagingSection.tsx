'use client';

import { today } from '@/app/_clock/useToday';
import { workshopFieldId } from '@/app/_documents/fieldAddress';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { TextField } from '@/app/_fields/TextField';
import { formatterFor } from '@/app/_words/formatter';
import type { WorkshopFields } from '@/app/_workshop/workshopFields';
import { newParts } from '@/lib/drafts/newParts';
import { textLimits } from '@/shared/limits';
import { packagingSchema } from '@/shared/schemas/workshop';
import { packagingRates } from './machineRates';
import { PartList } from './PartList';
import { PartRates } from './PartRates';

/** What single pieces are packed in. */
export function PackagingSection({ fields }: Readonly<{ fields: WorkshopFields }>) {
  const { workshop, set } = fields;
  const formatter = formatterFor(workshop);
  const parts = newParts(today(), workshop);
  return (
    <PartList
      fields={fields}
      list="packagings"
      kind="packaging"
      noun="packaging"
      lineOf={({ perPiece }) => perPiece && formatter.rate(perPiece.value, perPiece.unit)}
      adders={[{ label: 'Packaging', make: (id) => parts.packaging(id, 'Bag and sticker') }]}
    >
      {(packaging, path) => (
        <>
          <FieldGroup>
            <TextField
              label="Name"
              id={workshopFieldId([...path, 'name'])}
              value={packaging.name}
              needed
              {...textLimits(packagingSchema, ['name'])}
              onCommit={(name) => set('Name of a packaging', [...path, 'name'], name)}
            />
          </FieldGroup>
          <PartRates fields={fields} part={packaging} path={path} specs={packagingRates} />
        </>
      )}
    </PartList>
  );
}
