'use client';

import { today } from '@/app/_clock/useToday';
import { workshopFieldId } from '@/app/_documents/fieldAddress';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { TextField } from '@/app/_fields/TextField';
import { formatterFor } from '@/app/_words/formatter';
import { pressKindWords } from '@/app/_words/workshop/workshopWords';
import type { WorkshopFields } from '@/app/_workshop/workshopFields';
import { newParts } from '@/lib/drafts/newParts';
import { textLimits } from '@/shared/limits';
import { type Press, pressKinds, pressSchema } from '@/shared/schemas/workshop';
import { pressRates } from './machineRates';
import { PartList } from './PartList';
import { PartRates } from './PartRates';
import { PlatenFields } from './PlatenFields';
import { RatingFields } from './RatingFields';

/** The presses and ovens: their heat, their minutes, their wear. */
export function PressSection({ fields }: Readonly<{ fields: WorkshopFields }>) {
  const { workshop, set } = fields;
  const formatter = formatterFor(workshop);
  const parts = newParts(today(), workshop);
  const lineOf = ({ kind, platen, powerKw }: Press) =>
    [
      pressKindWords[kind],
      platen && `platen ${formatter.size(platen.widthMm, platen.heightMm)}`,
      powerKw && formatter.rate(powerKw.value, powerKw.unit),
    ]
      .filter((word) => word !== null)
      .join(' · ');
  return (
    <PartList
      fields={fields}
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
          <RatingFields fields={fields} press={press} path={path} />
          <PartRates fields={fields} part={press} path={path} specs={pressRates(press.kind)} />
        </>
      )}
    </PartList>
  );
}
