'use client';

import { newParts } from '@/lib/jobs/newParts';
import { textLimits } from '@/shared/limits';
import { type Press, pressKinds, pressSchema } from '@/shared/schemas/workshop';
import { workshopFieldId } from '../_documents/fieldAddress';
import { today } from '../_documents/useToday';
import { ChoiceField } from '../_fields/ChoiceField';
import { FieldGroup } from '../_fields/FieldGroup';
import { TextField } from '../_fields/TextField';
import { speakerOf } from '../_text/speaker';
import { pressRates } from './machineRates';
import { PartList } from './PartList';
import { PartRates } from './PartRates';
import { PlatenFields } from './PlatenFields';
import type { WorkshopDesk } from './workshopDesk';
import { pressKindWords } from './workshopWords';

/** The presses and ovens: their heat, their minutes, their wear. */
export function PressSection({ desk }: Readonly<{ desk: WorkshopDesk }>) {
  const { workshop, set } = desk;
  const speak = speakerOf(workshop);
  const parts = newParts(today(), workshop);
  const lineOf = ({ kind, platen, powerKw }: Press) =>
    [
      pressKindWords[kind],
      platen && `platen ${speak.size(platen.widthMm, platen.heightMm)}`,
      powerKw && speak.rate(powerKw.value, powerKw.unit),
    ]
      .filter((word) => word !== null)
      .join(' · ');
  return (
    <PartList
      desk={desk}
      list="presses"
      kind="press"
      noun="press"
      lineOf={lineOf}
      adders={pressKinds.map((kind) => ({
        label: pressKindWords[kind],
        make: (id) => parts.press(id, pressKindWords[kind], kind),
      }))}
    >
      {(press, path) => (
        <>
          <FieldGroup>
            <TextField
              label="Name"
              id={workshopFieldId([...path, 'name'])}
              value={press.name}
              needed
              {...textLimits(pressSchema, ['name'])}
              onCommit={(name) => set('Name of a press', [...path, 'name'], name)}
            />
            <ChoiceField
              label="Kind"
              id={workshopFieldId([...path, 'kind'])}
              value={press.kind}
              choices={pressKinds.map((value) => ({ value, label: pressKindWords[value] }))}
              onCommit={(kind) => set(`Kind of ${press.name}`, [...path, 'kind'], kind)}
            />
          </FieldGroup>
          <PlatenFields
            platen={press.platen}
            id={workshopFieldId([...path, 'platen'])}
            onCommit={(platen) => set(`Platen of ${press.name}`, [...path, 'platen'], platen)}
          />
          <PartRates desk={desk} part={press} path={path} specs={pressRates(press.kind)} />
        </>
      )}
    </PartList>
  );
}
