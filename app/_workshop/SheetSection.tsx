'use client';

import { newParts } from '@/lib/jobs/newParts';
import { numberLimits, textLimits } from '@/shared/limits';
import { sheetSchema } from '@/shared/schemas/workshop';
import { sheetSizes } from '@/shared/tables/sheetSizes';
import { mmFromInches } from '@/shared/units';
import { workshopFieldId } from '../_documents/fieldAddress';
import { today } from '../_documents/useToday';
import { ChoiceField } from '../_fields/ChoiceField';
import { FieldGroup } from '../_fields/FieldGroup';
import { MeasureField } from '../_fields/MeasureField';
import { NumberField } from '../_fields/NumberField';
import { TextField } from '../_fields/TextField';
import { speakerOf } from '../_text/speaker';
import { sheetRates } from './machineRates';
import { PartList } from './PartList';
import { PartRates } from './PartRates';
import type { WorkshopDesk } from './workshopDesk';

/** The sheets of transfer paper: common sizes, or one's own. */
export function SheetSection({ desk }: Readonly<{ desk: WorkshopDesk }>) {
  const { workshop, set } = desk;
  const speak = speakerOf(workshop);
  const parts = newParts(today(), workshop);
  return (
    <PartList
      desk={desk}
      list="sheets"
      kind="sheet"
      noun="sheet"
      lineOf={({ form, widthMm, heightMm, price }) =>
        [
          form === 'roll' ? `roll, ${speak.length(widthMm)} wide` : speak.size(widthMm, heightMm),
          price && speak.rate(price.value, price.unit),
        ]
          .filter((word) => word !== null)
          .join(' · ')
      }
      adders={[
        ...Object.values(sheetSizes).map((size) => ({
          label: `${size.name}, ${speak.size(size.widthMm, size.heightMm)}`,
          make: (id: string) => parts.sheet(id, `${size.name} sheet`, size),
        })),
        {
          label: 'A size of my own',
          make: (id) => parts.sheet(id, 'Own sheet', { widthMm: 200, heightMm: 300 }),
        },
        {
          label: 'A roll',
          make: (id) => ({
            ...parts.sheet(id, 'Roll of transfer paper', {
              widthMm: mmFromInches(24),
              heightMm: mmFromInches(40),
            }),
            form: 'roll',
            price: null,
          }),
        },
      ]}
    >
      {(sheet, path) => (
        <>
          <FieldGroup>
            <TextField
              label="Name"
              id={workshopFieldId([...path, 'name'])}
              value={sheet.name}
              needed
              {...textLimits(sheetSchema, ['name'])}
              onCommit={(name) => set('Name of a sheet', [...path, 'name'], name)}
            />
            <ChoiceField
              label="It comes as"
              id={workshopFieldId([...path, 'form'])}
              value={sheet.form}
              choices={[
                { value: 'cut', label: 'Cut sheets' },
                { value: 'roll', label: 'A roll' },
              ]}
              // What one form costs says nothing of the other: the price is asked anew, and undo brings it back.
              onCommit={(form) => set(`Form of ${sheet.name}`, path, { ...sheet, form, price: null })}
            />
            <MeasureField
              label="Width"
              id={workshopFieldId([...path, 'widthMm'])}
              kind="length"
              width="narrow"
              value={sheet.widthMm}
              needed
              {...numberLimits(sheetSchema, ['widthMm'])}
              onCommit={(value) => set(`Width, ${sheet.name}`, [...path, 'widthMm'], value)}
            />
            <MeasureField
              label={sheet.form === 'roll' ? 'Longest print' : 'Height'}
              id={workshopFieldId([...path, 'heightMm'])}
              kind="length"
              width="narrow"
              value={sheet.heightMm}
              needed
              {...numberLimits(sheetSchema, ['heightMm'])}
              onCommit={(value) => set(`Height, ${sheet.name}`, [...path, 'heightMm'], value)}
            />
            {sheet.form === 'roll' && (
              <MeasureField
                label="A new roll holds"
                id={workshopFieldId([...path, 'rollLengthMm'])}
                kind="rollLength"
                width="narrow"
                value={sheet.rollLengthMm}
                {...numberLimits(sheetSchema, ['rollLengthMm'])}
                onCommit={(length) => set(`Length of ${sheet.name}`, [...path, 'rollLengthMm'], length)}
              />
            )}
            <NumberField
              label="Grammage"
              id={workshopFieldId([...path, 'gramsPerSquareMetre'])}
              width="narrow"
              unit="g/m²"
              value={sheet.gramsPerSquareMetre}
              {...numberLimits(sheetSchema, ['gramsPerSquareMetre'])}
              onCommit={(value) => set(`Grammage, ${sheet.name}`, [...path, 'gramsPerSquareMetre'], value)}
            />
            <ChoiceField
              label="Paper"
              id={workshopFieldId([...path, 'paper'])}
              value={sheet.paper}
              choices={[
                { value: 'transfer', label: 'Sublimation transfer paper' },
                { value: 'other', label: 'Another paper' },
              ]}
              onCommit={(value) => set(`Paper, ${sheet.name}`, [...path, 'paper'], value)}
            />
          </FieldGroup>
          <PartRates desk={desk} part={sheet} path={path} specs={sheetRates(sheet.form)} />
        </>
      )}
    </PartList>
  );
}
