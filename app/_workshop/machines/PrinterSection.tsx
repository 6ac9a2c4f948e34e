'use client';

import { today } from '@/app/_clock/useToday';
import { workshopFieldId } from '@/app/_documents/fieldAddress';
import { CheckField } from '@/app/_fields/CheckField';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { MeasureField } from '@/app/_fields/MeasureField';
import { NumberField } from '@/app/_fields/NumberField';
import { TextField } from '@/app/_fields/TextField';
import { YesNoField } from '@/app/_fields/YesNoField';
import { unitEdge } from '@/app/_numbers/unitEdge';
import { formatterFor } from '@/app/_words/formatter';
import type { WorkshopFields } from '@/app/_workshop/workshopFields';
import { newParts } from '@/lib/drafts/newParts';
import { numberLimits, textLimits } from '@/shared/limits';
import { printerSchema } from '@/shared/schemas/workshop';
import { printerRates } from './machineRates';
import { PartList } from './PartList';
import { PartRates } from './PartRates';

/** The printers: what they draw, what they cost, and how near the edge they print. */
export function PrinterSection({ fields }: Readonly<{ fields: WorkshopFields }>) {
  const { workshop, set } = fields;
  const formatter = formatterFor(workshop);
  // Margins are often eighths of an inch, which two decimals would round.
  const length = unitEdge('length', workshop);
  const parts = newParts(today(), workshop);
  return (
    <PartList
      fields={fields}
      list="printers"
      kind="printer"
      noun="printer"
      lineOf={({ marginMm, borderless }) =>
        borderless
          ? 'prints to the edge'
          : `prints up to ${formatter.number(length.shown(marginMm), 3)} ${length.unit} from the edge`
      }
      adders={[{ label: 'Printer', make: (id) => parts.printer(id, 'Printer') }]}
    >
      {(printer, path) => (
        <>
          <FieldGroup>
            <TextField
              label="Name"
              id={workshopFieldId([...path, 'name'])}
              value={printer.name}
              needed
              {...textLimits(printerSchema, ['name'])}
              onCommit={(name) => set('Name of a printer', [...path, 'name'], name)}
            />
            <MeasureField
              label="Margin it cannot print"
              id={workshopFieldId([...path, 'marginMm'])}
              kind="length"
              value={printer.marginMm}
              needed
              {...numberLimits(printerSchema, ['marginMm'])}
              onCommit={(value) => set(`Margin, ${printer.name}`, [...path, 'marginMm'], value)}
            />
          </FieldGroup>
          <CheckField
            label="It can print to the edge of the sheet"
            checked={printer.borderless}
            onCommit={(value) => set(`Borderless, ${printer.name}`, [...path, 'borderless'], value)}
          />
          <ChoiceField
            label="Side of the paper it prints"
            id={workshopFieldId([...path, 'printedSide'])}
            value={printer.printedSide}
            choices={[
              { value: 'up', label: 'The side that faces up in the tray' },
              { value: 'down', label: 'The side that faces down in the tray' },
              { value: 'unsure', label: 'Not sure' },
            ]}
            hint="Mark one sheet with an arrow and print a test: the coated side must be the printed one."
            onCommit={(value) => set(`Printed side, ${printer.name}`, [...path, 'printedSide'], value)}
          />
          <NumberField
            label="Rated for, a month"
            id={workshopFieldId([...path, 'ratedSheetsPerMonth'])}
            unit="sheets"
            width="narrow"
            value={printer.ratedSheetsPerMonth}
            {...numberLimits(printerSchema, ['ratedSheetsPerMonth'])}
            hint="As its maker states; empty where nobody looked it up."
            onCommit={(sheets) =>
              set(`Rated sheets, ${printer.name}`, [...path, 'ratedSheetsPerMonth'], sheets)
            }
          />
          <MeasureField
            label="Longest page it takes"
            id={workshopFieldId([...path, 'longestPageMm'])}
            kind="length"
            width="narrow"
            value={printer.longestPageMm}
            {...numberLimits(printerSchema, ['longestPageMm'])}
            hint="As its maker states; empty where nobody looked it up."
            onCommit={(value) => set(`Longest page, ${printer.name}`, [...path, 'longestPageMm'], value)}
          />
          <TextField
            label="Colour profile to choose"
            id={workshopFieldId([...path, 'colourProfile'])}
            value={printer.colourProfile ?? ''}
            {...textLimits(printerSchema, ['colourProfile'])}
            hint="As it is called in the printer’s window."
            onCommit={(words) =>
              set(`Colour profile, ${printer.name}`, [...path, 'colourProfile'], words === '' ? null : words)
            }
          />
          <YesNoField
            label="It has light inks (light cyan, light magenta)?"
            id={workshopFieldId([...path, 'lightInks'])}
            value={printer.lightInks}
            hint={
              printer.lightInks === true
                ? 'They are not counted apart: light parts take more millilitres of a thinner ink than is told.'
                : undefined
            }
            onCommit={(value) => set(`Light inks, ${printer.name}`, [...path, 'lightInks'], value)}
          />
          <PartRates fields={fields} part={printer} path={path} specs={printerRates} />
        </>
      )}
    </PartList>
  );
}
