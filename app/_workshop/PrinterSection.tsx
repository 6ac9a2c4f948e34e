'use client';

import { newParts } from '@/lib/jobs/newParts';
import { numberLimits, textLimits } from '@/shared/limits';
import { printerSchema } from '@/shared/schemas/workshop';
import { workshopFieldId } from '../_documents/fieldAddress';
import { today } from '../_documents/useToday';
import { CheckField } from '../_fields/CheckField';
import { ChoiceField } from '../_fields/ChoiceField';
import { FieldGroup } from '../_fields/FieldGroup';
import { MeasureField } from '../_fields/MeasureField';
import { TextField } from '../_fields/TextField';
import { unitEdge } from '../_fields/unitEdge';
import { speakerOf } from '../_text/speaker';
import { printerRates } from './machineRates';
import { PartList } from './PartList';
import { PartRates } from './PartRates';
import type { WorkshopDesk } from './workshopDesk';

/** The printers: what they draw, what they cost, and how near the edge they print. */
export function PrinterSection({ desk }: Readonly<{ desk: WorkshopDesk }>) {
  const { workshop, set } = desk;
  const speak = speakerOf(workshop);
  // Margins are often eighths of an inch, which two decimals would round.
  const length = unitEdge('length', workshop);
  const parts = newParts(today(), workshop);
  return (
    <PartList
      desk={desk}
      list="printers"
      kind="printer"
      noun="printer"
      lineOf={({ marginMm, borderless }) =>
        borderless
          ? 'prints to the edge'
          : `prints up to ${speak.number(length.shown(marginMm), 3)} ${length.unit} from the edge`
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
            ]}
            hint="Mark one sheet with an arrow and print a test: the coated side must be the printed one."
            onCommit={(value) => set(`Printed side, ${printer.name}`, [...path, 'printedSide'], value)}
          />
          <PartRates desk={desk} part={printer} path={path} specs={printerRates} />
        </>
      )}
    </PartList>
  );
}
