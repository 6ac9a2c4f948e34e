'use client';

import { ChecksOfPart } from '@/app/_docket/common/ChecksOfPart';
import { Fieldset } from '@/app/_docket/common/Fieldset';
import type { PlacementProps } from '@/app/_docket/common/placementProps';
import { useJob } from '@/app/_docket/common/useJob';
import { CheckField } from '@/app/_fields/CheckField';
import { MeasureField } from '@/app/_fields/MeasureField';
import { NumberField } from '@/app/_fields/NumberField';
import { numberLimits } from '@/shared/limits';
import { textileKinds } from '@/shared/schemas/blank';
import { placementSchema, recipeSchema } from '@/shared/schemas/job';

/** Steps of the recipe besides heat and time, and where lips touch a cup. */
export function PlacementSteps({ placement, path }: PlacementProps) {
  const { input, field } = useJob();
  const { name, rim } = placement;
  const { steps } = placement.recipe;
  const step = (label: string, key: keyof typeof steps) =>
    field(label, [...path, 'recipe', 'steps', key], `${label} of ${name}`);
  const line = input.job.lines.find(({ placements }) => placements.includes(placement));
  const kind = input.blanks[line?.blankId ?? '']?.kind ?? 'garment';
  const isCloth = textileKinds.includes(kind);
  return (
    <Fieldset name="Steps">
      {isCloth && (
        <NumberField
          {...step('Cools under the transfer', 'coolSeconds')}
          unit="s"
          value={steps.coolSeconds}
          {...numberLimits(recipeSchema, ['steps', 'coolSeconds'])}
          width="narrow"
          hint="0 for not at all."
        />
      )}
      <NumberField
        {...step('Pieces in one press', 'piecesPerPress')}
        value={steps.piecesPerPress}
        needed
        {...numberLimits(recipeSchema, ['steps', 'piecesPerPress'])}
        width="narrow"
        hint="Its minutes are those of one piece."
      />
      {kind === 'drinkware' && (
        <MeasureField
          {...field('Ends below the rim', [...path, 'rim', 'belowMm'], `Distance from the rim of ${name}`)}
          kind="length"
          value={rim.belowMm}
          {...numberLimits(placementSchema, ['rim', 'belowMm'])}
          width="narrow"
          hint="Empty where nobody measured."
        />
      )}
      <ChecksOfPart>
        {isCloth && <CheckField {...step('Rolled for lint', 'lintRoll')} checked={steps.lintRoll === true} />}
        <CheckField {...step('All four edges taped', 'tapeEdges')} checked={steps.tapeEdges === true} />
        {!isCloth && (
          <CheckField {...step('Cooled by a fan', 'evenCooling')} checked={steps.evenCooling === true} />
        )}
        {kind === 'drinkware' && (
          <CheckField
            {...field('Printed inside the cup', [...path, 'rim', 'inside'], `Inside of ${name}`)}
            checked={rim.inside}
          />
        )}
      </ChecksOfPart>
    </Fieldset>
  );
}
