'use client';

import { numberLimits, textLimits } from '@/shared/limits';
import { placementSchema } from '@/shared/schemas/job';
import { CheckField } from '../_fields/CheckField';
import { ChoiceField } from '../_fields/ChoiceField';
import { MeasureField } from '../_fields/MeasureField';
import { TextField } from '../_fields/TextField';
import { ArtworkChoice } from './ArtworkChoice';
import { ChecksOfPart } from './ChecksOfPart';
import { jobChoices } from './jobChoices';
import { useJobDesk } from './jobDesk';
import { Part } from './Part';
import { PrintSizes } from './PrintSizes';
import type { PlacementPart } from './placementPart';

/** What is printed where: name, position, size and how the picture lies in it. */
export function PlacementPrint({ placement, path }: PlacementPart) {
  const { field } = useJobDesk();
  const { name } = placement;
  const of = (label: string, key: string) => field(label, [...path, key], `${label} of ${name}`);
  return (
    <>
      <Part name="The print">
        <TextField {...of('Name', 'name')} value={name} needed {...textLimits(placementSchema, ['name'])} />
        <ArtworkChoice placement={placement} path={path} />
        <ChoiceField
          {...of('Where it goes', 'position')}
          value={placement.position}
          choices={jobChoices.position}
        />
        <MeasureField
          {...of('Top below the collar seam', 'dropFromCollarMm')}
          kind="length"
          value={placement.dropFromCollarMm}
          {...numberLimits(placementSchema, ['dropFromCollarMm'])}
          hint="Empty where there is no collar."
        />
        <ChoiceField
          {...of('How it lies in the size', 'fit')}
          value={placement.fit}
          choices={jobChoices.fit}
        />
        <MeasureField
          {...of('Runs past the edge of the piece by', 'bleedMm')}
          kind="length"
          value={placement.bleedMm}
          {...numberLimits(placementSchema, ['bleedMm'])}
          hint="Empty where the print ends inside the piece."
        />
        <MeasureField
          {...of('Nearest that must be seen whole to an edge', 'safeZoneMm')}
          kind="length"
          value={placement.safeZoneMm}
          {...numberLimits(placementSchema, ['safeZoneMm'])}
          hint="To an edge, a handle or a seam. Empty where nobody measured."
        />
        <ChoiceField
          {...of('Seams, zips, buttons', 'raisedParts')}
          value={placement.raisedParts}
          choices={jobChoices.raisedParts}
        />
        <ChecksOfPart>
          <CheckField {...of('Print it mirrored', 'mirror')} checked={placement.mirror} />
        </ChecksOfPart>
      </Part>
      <PrintSizes placement={placement} path={path} />
    </>
  );
}
