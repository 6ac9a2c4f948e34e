'use client';

import { FieldGroup } from '@/app/_fields/FieldGroup';
import { MeasureField } from '@/app/_fields/MeasureField';
import { NumberField } from '@/app/_fields/NumberField';
import type { BlankSize } from '@/shared/schemas/blank';
import type { BlankFields } from './blankFields';

type WrapFieldsProps = Readonly<{ fields: BlankFields; size: BlankSize; index: number }>;

/** How far it is around a size; handle and lean are asked once that is known. */
export function WrapFields({ fields: { blank, set, fieldId }, size, index }: WrapFieldsProps) {
  const path = ['sizes', index, 'wrap'] as const;
  const label = `${blank.name}, ${size.name}`;
  const { wrap } = size;
  return (
    <FieldGroup pairs>
      <MeasureField
        label="Around the body"
        id={fieldId(...path, 'circumferenceMm')}
        kind="length"
        width="narrow"
        value={wrap?.circumferenceMm ?? null}
        above={0}
        max={20_000}
        hint="A strip of paper around the real piece tells it best."
        onCommit={(circumferenceMm) =>
          set(
            `Around ${label}`,
            path,
            circumferenceMm === null ? null : { handleGapMm: 0, taperDegrees: 0, ...wrap, circumferenceMm },
          )
        }
      />
      {wrap !== null && (
        <>
          <MeasureField
            label="The handle takes"
            id={fieldId(...path, 'handleGapMm')}
            kind="length"
            width="narrow"
            value={wrap.handleGapMm}
            needed
            min={0}
            max={500}
            hint="0 where the print goes all the way round."
            onCommit={(gap) => set(`Handle of ${label}`, [...path, 'handleGapMm'], gap)}
          />
          <NumberField
            label="The side leans by"
            id={fieldId(...path, 'taperDegrees')}
            unit="°"
            width="narrow"
            value={wrap.taperDegrees}
            needed
            min={0}
            max={45}
            hint="0 for a straight side."
            onCommit={(lean) => set(`Lean of ${label}`, [...path, 'taperDegrees'], lean)}
          />
        </>
      )}
    </FieldGroup>
  );
}
