'use client';

import { Advice } from '@/app/_controls/Advice';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { MeasureField } from '@/app/_fields/MeasureField';
import { TextField } from '@/app/_fields/TextField';
import { formatterFor } from '@/app/_words/formatter';
import { blankKindWords, choicesOf, coatingWords, supplierWords } from '@/app/_words/workshop/blankWords';
import { numberLimits, textLimits } from '@/shared/limits';
import { blankSchema, substrates } from '@/shared/schemas/blank';
import { recipeRanges } from '@/shared/tables/recipeRanges';
import { celsiusFromFahrenheit } from '@/shared/units';
import type { BlankFields } from './blankFields';

const yesOrNo = [
  { value: 'yes', label: 'Yes' },
  { value: 'no', label: 'No' },
];

/** What a blank is, what makes it take dye, and how hot it may get. */
export function BlankBasics({
  fields: { blank, workspace, set, fieldId },
}: Readonly<{ fields: BlankFields }>) {
  const formatter = formatterFor(workspace.workshop);
  const { fahrenheit, dwellSeconds } = recipeRanges[blank.substrate];
  const [from, to] = fahrenheit.map((value) => formatter.temperature(celsiusFromFahrenheit(value)));
  return (
    <div>
      <FieldGroup>
        <TextField
          label="Name"
          id={fieldId('name')}
          value={blank.name}
          needed
          {...textLimits(blankSchema, ['name'])}
          onCommit={(name) => set('Name of a blank', ['name'], name)}
        />
        <ChoiceField<string>
          label="Kind"
          id={fieldId('kind')}
          value={blank.kind}
          choices={choicesOf(blankKindWords)}
          onCommit={(kind) => set(`Kind of ${blank.name}`, ['kind'], kind)}
        />
        <ChoiceField<string>
          label="Who supplies it"
          id={fieldId('suppliedBy')}
          value={blank.suppliedBy}
          choices={choicesOf(supplierWords)}
          hint={
            blank.suppliedBy === 'customer'
              ? 'It costs you nothing in any job; agree on who replaces a spoiled one.'
              : undefined
          }
          onCommit={(supplier) => set(`Who supplies ${blank.name}`, ['suppliedBy'], supplier)}
        />
        <ChoiceField
          label="Recipe it starts from"
          id={fieldId('substrate')}
          value={blank.substrate}
          choices={substrates.map((value) => ({ value, label: capitalized(recipeRanges[value].label) }))}
          hint={`${from} to ${to}, ${dwellSeconds.join(' to ')} s: a place to start testing.`}
          onCommit={(substrate) => set(`Recipe of ${blank.name}`, ['substrate'], substrate)}
        />
        <ChoiceField<string>
          label="Coating"
          id={fieldId('coating')}
          value={blank.coating}
          choices={choicesOf(coatingWords)}
          onCommit={(coating) => set(`Coating of ${blank.name}`, ['coating'], coating)}
        />
        <MeasureField
          label="Largest safe temperature"
          id={fieldId('maxTemperatureC')}
          kind="temperature"
          value={blank.maxTemperatureC}
          {...numberLimits(blankSchema, ['maxTemperatureC'])}
          hint="As its maker states it; empty where nothing is stated."
          onCommit={(most) => set(`Safe temperature of ${blank.name}`, ['maxTemperatureC'], most)}
        />
        <ChoiceField
          label="Meant for children?"
          id={fieldId('forChildren')}
          value={blank.forChildren === null ? null : blank.forChildren ? 'yes' : 'no'}
          unchosen="Not yet said"
          choices={yesOrNo}
          onCommit={(answer) => set(`For children, ${blank.name}`, ['forChildren'], answer === 'yes')}
        />
      </FieldGroup>
      {blank.forChildren === true && (
        <Advice severity="caution">
          Children’s goods can need test evidence, a certificate and a permanent tracking mark; sleepwear,
          cords and small parts have rules of their own. Ask your local authority before you sell.
        </Advice>
      )}
    </div>
  );
}

// Helpers

const capitalized = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);
