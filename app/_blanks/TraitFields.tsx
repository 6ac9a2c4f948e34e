'use client';

import { CheckField } from '@/app/_fields/CheckField';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { MeasureField } from '@/app/_fields/MeasureField';
import { TextField } from '@/app/_fields/TextField';
import { YesNoField } from '@/app/_fields/YesNoField';
import { childRiskNames } from '@/app/_words/choices/goodsWords';
import { choicesOf } from '@/app/_words/workshop/blankWords';
import { faceWords, finishWords, hardnessWords, layerWords } from '@/app/_words/workshop/traitWords';
import { numberLimits, textLimits } from '@/shared/limits';
import { blankSchema, textileKinds } from '@/shared/schemas/blank';
import { childRisks } from '@/shared/schemas/blankTraits';
import type { BlankFields } from './blankFields';

/** What else the check asks of a blank: its finish or coating, its lot, and what makes it a matter of rules. */
export function TraitFields({ fields: { blank, set, fieldId } }: Readonly<{ fields: BlankFields }>) {
  const { traits, kind, name } = blank;
  const isCloth = textileKinds.includes(kind);
  const isSewn = kind === 'bag' || kind === 'cushion';
  const chosen = traits.childRisks ?? [];
  return (
    <div>
      <FieldGroup>
        {isCloth && (
          <>
            <ChoiceField<string>
              label="Finish"
              id={fieldId('traits', 'finish')}
              value={traits.finish}
              choices={choicesOf(finishWords)}
              onCommit={(finish) => set(`Finish of ${name}`, ['traits', 'finish'], finish)}
            />
            <YesNoField
              label="Dyed cloth?"
              id={fieldId('traits', 'dyed')}
              value={traits.dyed}
              hint="Coloured after it was woven: its own dye may move."
              onCommit={(dyed) => set(`Dye of ${name}`, ['traits', 'dyed'], dyed)}
            />
          </>
        )}
        {isSewn && (
          <ChoiceField<string>
            label="Layers under the print"
            id={fieldId('traits', 'layers')}
            value={traits.layers}
            choices={choicesOf(layerWords)}
            onCommit={(layers) => set(`Layers of ${name}`, ['traits', 'layers'], layers)}
          />
        )}
        {kind === 'drinkware' && (
          <ChoiceField<string>
            label="Its coating is"
            id={fieldId('traits', 'coatingHardness')}
            value={traits.coatingHardness}
            choices={choicesOf(hardnessWords)}
            hint="As the supplier says; soft ones wash out sooner."
            onCommit={(hardness) => set(`Coating of ${name}`, ['traits', 'coatingHardness'], hardness)}
          />
        )}
        {!isCloth && kind !== 'drinkware' && (
          <>
            <ChoiceField<string>
              label="Coated face"
              id={fieldId('traits', 'coatedFace')}
              value={traits.coatedFace}
              choices={choicesOf(faceWords)}
              onCommit={(face) => set(`Coated face of ${name}`, ['traits', 'coatedFace'], face)}
            />
            <MeasureField
              label="Thickness"
              id={fieldId('traits', 'thicknessMm')}
              kind="length"
              value={traits.thicknessMm}
              {...numberLimits(blankSchema, ['traits', 'thicknessMm'])}
              hint="Held against the opening of the press."
              onCommit={(thick) => set(`Thickness of ${name}`, ['traits', 'thicknessMm'], thick)}
            />
          </>
        )}
        <TextField
          label="Lot on the label now"
          id={fieldId('traits', 'lot')}
          value={traits.lot}
          {...textLimits(blankSchema, ['traits', 'lot'])}
          hint="Or the supplier. May stay empty."
          onCommit={(lot) => set(`Lot of ${name}`, ['traits', 'lot'], lot)}
        />
        <TextField
          label="Lot your recipe worked on"
          id={fieldId('traits', 'provenLot')}
          value={traits.provenLot}
          {...textLimits(blankSchema, ['traits', 'provenLot'])}
          onCommit={(lot) => set(`Proven lot of ${name}`, ['traits', 'provenLot'], lot)}
        />
      </FieldGroup>
      {(blank.forChildren === true || chosen.length > 0) && (
        <fieldset id={fieldId('traits', 'childRisks')} tabIndex={-1}>
          <legend>Which of these is it?</legend>
          {childRisks.map((risk) => (
            <CheckField
              key={risk}
              label={childRiskNames[risk]}
              checked={chosen.includes(risk)}
              onCommit={(is) =>
                set(
                  `Special rules for ${name}`,
                  ['traits', 'childRisks'],
                  is ? [...chosen, risk] : chosen.filter((other) => other !== risk),
                )
              }
            />
          ))}
        </fieldset>
      )}
    </div>
  );
}
