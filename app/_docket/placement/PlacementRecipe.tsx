'use client';

import { ChecksOfPart } from '@/app/_docket/common/ChecksOfPart';
import { Fieldset } from '@/app/_docket/common/Fieldset';
import type { PlacementProps } from '@/app/_docket/common/placementProps';
import { useJob } from '@/app/_docket/common/useJob';
import { CheckField } from '@/app/_fields/CheckField';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { MeasureField } from '@/app/_fields/MeasureField';
import { NumberField } from '@/app/_fields/NumberField';
import { jobChoices } from '@/app/_words/docket/choiceWords';
import { numberLimits } from '@/shared/limits';
import { recipeSchema } from '@/shared/schemas/job';
import styles from './PlacementRecipe.module.css';

/** How it is pressed: press, heat, time, pressure, papers. */
export function PlacementRecipe({ placement, path }: PlacementProps) {
  const { input, field } = useJob();
  const { name, recipe } = placement;
  const of = (label: string, key: string) => field(label, [...path, 'recipe', key], `${label} of ${name}`);
  const { presses } = input.workshop;
  const press = field('Press', [...path, 'pressId'], `Press of ${name}`);
  const heat = of('Temperature', 'temperature');
  return (
    <Fieldset name="The recipe">
      <ChoiceField
        {...press}
        value={presses.some(({ id }) => id === placement.pressId) ? placement.pressId : null}
        choices={presses.map((one) => ({ value: one.id, label: one.name }))}
      />
      <div className={styles.pair}>
        <NumberField
          {...heat}
          value={recipe.temperature.value}
          needed
          {...numberLimits(recipeSchema, ['temperature', 'value'])}
          width="narrow"
          onCommit={(value) => heat.onCommit({ ...recipe.temperature, value })}
        />
        <div className={styles.unit}>
          <ChoiceField
            label={`Scale of the temperature of ${name}`}
            labelled
            width="narrow"
            value={recipe.temperature.unit}
            choices={jobChoices.temperatureUnit}
            onCommit={(unit) => heat.onCommit({ ...recipe.temperature, unit })}
          />
        </div>
      </div>
      <NumberField
        {...of('Dwell', 'dwellSeconds')}
        unit="s"
        value={recipe.dwellSeconds}
        needed
        {...numberLimits(recipeSchema, ['dwellSeconds'])}
        width="narrow"
      />
      <ChoiceField {...of('Pressure', 'pressure')} value={recipe.pressure} choices={jobChoices.pressure} />
      <MeasureField
        {...of('Reading at the gauge', 'pressureKpa')}
        kind="pressure"
        value={recipe.pressureKpa}
        {...numberLimits(recipeSchema, ['pressureKpa'])}
        width="narrow"
        hint="Empty without one."
      />
      <NumberField
        {...of('Preheat', 'preheatSeconds')}
        unit="s"
        value={recipe.preheatSeconds}
        {...numberLimits(recipeSchema, ['preheatSeconds'])}
        width="narrow"
        hint="Empty for none."
      />
      <ChoiceField
        {...of('Paper over the print', 'protectivePaper')}
        value={recipe.protectivePaper}
        choices={jobChoices.protectivePaper}
      />
      <NumberField
        {...of('Good presses logged', 'provenPresses')}
        value={recipe.provenPresses}
        needed
        {...numberLimits(recipeSchema, ['provenPresses'])}
        hint="With this recipe on this blank."
      />
      <ChecksOfPart>
        <CheckField
          {...of('Pillow under the print, or raised part hung off the platen', 'reliefFromRaisedParts')}
          checked={recipe.reliefFromRaisedParts}
        />
        <CheckField {...of('Clean paper inside and under', 'barrierPaper')} checked={recipe.barrierPaper} />
      </ChecksOfPart>
    </Fieldset>
  );
}
