'use client';

import { today } from '@/app/_clock/useToday';
import { workshopFieldId } from '@/app/_documents/fieldAddress';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { MeasureField } from '@/app/_fields/MeasureField';
import { NumberField } from '@/app/_fields/NumberField';
import { TextField } from '@/app/_fields/TextField';
import { formatterFor } from '@/app/_words/formatter';
import type { WorkshopFields } from '@/app/_workshop/workshopFields';
import { newParts } from '@/lib/drafts/newParts';
import { numberLimits, textLimits } from '@/shared/limits';
import { sheetSchema } from '@/shared/schemas/workshop';
import { sheetSizes } from '@/shared/tables/sheetSizes';
import { mmFromInches } from '@/shared/units';
import { sheetRates } from './machineRates';
import { PartList } from './PartList';
import { PartRates } from './PartRates';

/** The sheets of transfer paper: common sizes, or one's own. */
export function SheetSection({ fields }: Readonly<{ fields: WorkshopFields }>) {
  const { workshop, set } = fields;
  const formatter = formatterFor(workshop);
  const parts = newParts(today(), workshop);
  return (
    <PartList
      fields={fields}
      list="sheets"
      kind="sheet"
      noun="sheet"
      lineOf={({ form, widthMm, heightMm, price }) =>
        [
          form === 'roll' ? `roll, ${formatter.length(widthMm)} wide` : formatter.size(widthMm, heightMm),
          price && formatter.rate(price.value, price.unit),
        ]
          .filter((word) => word !== null)
          .join(' · ')
      }
      adders={[
        ...Object.values(sheetSizes).map((size) => ({
          label: `${size.name}, ${formatter.size(size.widthMm, size.heightMm)}`,
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
          <TextField
            label="Paper setting to choose"
            id={workshopFieldId([...path, 'mediaSetting'])}
            value={sheet.mediaSetting ?? ''}
            {...textLimits(sheetSchema, ['mediaSetting'])}
            hint="As it is called in the printer’s window."
            onCommit={(words) =>
              set(`Paper setting, ${sheet.name}`, [...path, 'mediaSetting'], words === '' ? null : words)
            }
          />
          <PartRates fields={fields} part={sheet} path={path} specs={sheetRates(sheet.form)} />
        </>
      )}
    </PartList>
  );
}
