'use client';

import { Fieldset } from '@/app/_docket/common/Fieldset';
import type { PlacementProps } from '@/app/_docket/common/placementProps';
import { useJob } from '@/app/_docket/common/useJob';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { NumberField } from '@/app/_fields/NumberField';
import { RateField } from '@/app/_fields/RateField';
import { jobChoices } from '@/app/_words/docket/choiceWords';
import { numberLimits } from '@/shared/limits';
import { placementSchema } from '@/shared/schemas/job';
import { placementTypicals } from '@/shared/tables/typicalRates';

/** What pressing it takes: minutes, losses, tests and replacements. */
export function PlacementWork({ placement, path }: PlacementProps) {
  const { input, field } = useJob();
  const { name } = placement;
  const of = (label: string, key: string) => field(label, [...path, key], `${label} of ${name}`);
  const kind = input.workshop.presses.find(({ id }) => id === placement.pressId)?.kind ?? 'flat';
  const typical = placementTypicals[kind];
  return (
    <>
      <Fieldset name="Minutes of one press">
        <RateField
          {...of('Hands on it', 'handMinutes')}
          rate={placement.handMinutes}
          units={['min']}
          limits={numberLimits(placementSchema, ['handMinutes', 'value'])}
          typical={typical.handMinutes.typical}
        />
        <RateField
          {...of('The press works alone', 'aloneMinutes')}
          rate={placement.aloneMinutes}
          units={['min']}
          limits={numberLimits(placementSchema, ['aloneMinutes', 'value'])}
          typical={typical.aloneMinutes.typical}
          hint="Nobody is paid for these."
        />
        <RateField
          {...of('The press is held hot', 'hotMinutes')}
          rate={placement.hotMinutes}
          units={['min']}
          limits={numberLimits(placementSchema, ['hotMinutes', 'value'])}
          typical={typical.hotMinutes.typical}
        />
      </Fieldset>
      <Fieldset name="Losses and tests">
        <RateField
          {...of('Presses that spoil the piece', 'scrap')}
          rate={placement.scrap}
          units={['share']}
          typical={typical.scrap.typical}
          limits={numberLimits(placementSchema, ['scrap', 'value'])}
        />
        <NumberField
          {...of('Test presses on scrap cloth', 'testPresses')}
          value={placement.testPresses}
          needed
          {...numberLimits(placementSchema, ['testPresses'])}
          hint="Each with a sheet of its own."
        />
        <ChoiceField
          {...of('Prints for spoiled pieces', 'replacements')}
          value={placement.replacements}
          choices={jobChoices.replacements}
        />
      </Fieldset>
    </>
  );
}
