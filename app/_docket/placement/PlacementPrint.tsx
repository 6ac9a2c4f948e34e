'use client';

import { ArtworkChoice } from '@/app/_docket/artwork/ArtworkChoice';
import { ChecksOfPart } from '@/app/_docket/common/ChecksOfPart';
import { Fieldset } from '@/app/_docket/common/Fieldset';
import type { PlacementProps } from '@/app/_docket/common/placementProps';
import { useJob } from '@/app/_docket/common/useJob';
import { CheckField } from '@/app/_fields/CheckField';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { MeasureField } from '@/app/_fields/MeasureField';
import { TextField } from '@/app/_fields/TextField';
import { jobChoices } from '@/app/_words/docket/choiceWords';
import { numberLimits, textLimits } from '@/shared/limits';
import { placementSchema } from '@/shared/schemas/job';
import { PrintSizes } from './PrintSizes';

/** What is printed where: name, position, size and how the picture lies in it. */
export function PlacementPrint({ placement, path }: PlacementProps) {
  const { field } = useJob();
  const { name } = placement;
  const of = (label: string, key: string) => field(label, [...path, key], `${label} of ${name}`);
  return (
    <>
      <Fieldset name="The print">
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
      </Fieldset>
      <PrintSizes placement={placement} path={path} />
    </>
  );
}
