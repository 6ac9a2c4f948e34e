'use client';

import { today } from '@/app/_clock/useToday';
import { workshopFieldId } from '@/app/_documents/fieldAddress';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { TextField } from '@/app/_fields/TextField';
import { speakerOf } from '@/app/_words/formatter';
import { newParts } from '@/lib/drafts/newParts';
import { packagingRates } from './machineRates';
import { PartList } from './PartList';
import { PartRates } from './PartRates';
import type { WorkshopDesk } from './workshopForm';

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
      most={50}
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
              longest={120}
              onCommit={(name) => set('Name of a packaging', [...path, 'name'], name)}
            />
          </FieldGroup>
          <PartRates desk={desk} part={packaging} path={path} specs={packagingRates} />
        </>
      )}
    </PartList>
  );
}
