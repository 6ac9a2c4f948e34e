'use client';

import { ChoiceField } from '@/app/_fields/ChoiceField';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import type { OrderForm } from '@/app/_fields/formMemory';
import { MeasureField } from '@/app/_fields/MeasureField';
import { NumberField } from '@/app/_fields/NumberField';
import { useTyped } from '@/app/_fields/useTyped';
import { jobChoices } from '@/app/_words/docket/choiceWords';
import { numberLimits } from '@/shared/limits';
import { type Recipe, recipeSchema } from '@/shared/schemas/job';

interface RecipeTyped {
  readonly value: Recipe;
  readonly onChange: (recipe: Recipe) => void;
}

/** A recipe as it was set for a test, beginning with another. */
export function useRecipeTyped(form: OrderForm, fresh: Recipe): RecipeTyped {
  const [value, onChange] = useTyped(form, 'recipe', recipeSchema, fresh);
  return { value, onChange };
}

/** What is set at the press. */
export function RecipeFields({ value, onChange }: RecipeTyped) {
  const { temperature, dwellSeconds, pressure, pressureKpa, preheatSeconds, steps } = value;
  return (
    <FieldGroup>
      <NumberField
        label="Temperature"
        unit={`°${temperature.unit}`}
        needed
        {...numberLimits(recipeSchema, ['temperature', 'value'])}
        value={temperature.value}
        onCommit={(set) =>
          set !== null && onChange({ ...value, temperature: { ...temperature, value: set } })
        }
      />
      <NumberField
        label="Time"
        unit="s"
        needed
        {...numberLimits(recipeSchema, ['dwellSeconds'])}
        value={dwellSeconds}
        onCommit={(set) => set !== null && onChange({ ...value, dwellSeconds: set })}
      />
      {pressureKpa === null ? (
        <ChoiceField
          label="Pressure"
          value={pressure}
          choices={jobChoices.pressure}
          onCommit={(set) => onChange({ ...value, pressure: set })}
        />
      ) : (
        <MeasureField
          label="Pressure"
          kind="pressure"
          needed
          {...numberLimits(recipeSchema, ['pressureKpa'])}
          value={pressureKpa}
          onCommit={(set) => set !== null && onChange({ ...value, pressureKpa: set })}
        />
      )}
      <NumberField
        label="Preheat"
        unit="s"
        {...numberLimits(recipeSchema, ['preheatSeconds'])}
        value={preheatSeconds}
        onCommit={(set) => onChange({ ...value, preheatSeconds: set })}
      />
      <NumberField
        label="Cool in place"
        unit="s"
        {...numberLimits(recipeSchema, ['steps', 'coolSeconds'])}
        value={steps.coolSeconds}
        onCommit={(set) => onChange({ ...value, steps: { ...steps, coolSeconds: set } })}
      />
      <ChoiceField
        label="Protective paper"
        value={value.protectivePaper}
        choices={jobChoices.protectivePaper}
        onCommit={(set) => onChange({ ...value, protectivePaper: set })}
      />
    </FieldGroup>
  );
}
