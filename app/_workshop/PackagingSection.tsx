'use client';

import { newParts } from '@/lib/jobs/newParts';
import { textLimits } from '@/shared/limits';
import { packagingSchema } from '@/shared/schemas/workshop';
import { workshopFieldId } from '../_documents/fieldAddress';
import { today } from '../_documents/useToday';
import { FieldGroup } from '../_fields/FieldGroup';
import { TextField } from '../_fields/TextField';
import { speakerOf } from '../_text/speaker';
import { packagingRates } from './machineRates';
import { PartList } from './PartList';
import { PartRates } from './PartRates';
import type { WorkshopDesk } from './workshopDesk';

/** What single pieces are packed in. */
export function PackagingSection({ desk }: Readonly<{ desk: WorkshopDesk }>) {
  const { workshop, set } = desk;
  const speak = speakerOf(workshop);
  const parts = newParts(today(), workshop);
  return (
    <PartList
      desk={desk}
      list="packagings"
      kind="packaging"
      noun="packaging"
      lineOf={({ perPiece }) => perPiece && speak.rate(perPiece.value, perPiece.unit)}
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
          <PartRates desk={desk} part={packaging} path={path} specs={packagingRates} />
        </>
      )}
    </PartList>
  );
}
