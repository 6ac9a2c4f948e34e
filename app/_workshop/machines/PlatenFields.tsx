'use client';

import { CheckField } from '@/app/_fields/CheckField';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { MeasureField } from '@/app/_fields/MeasureField';
import { useMeasures } from '@/app/_numbers/measures';
import { numberLimits } from '@/shared/limits';
import { type Press, pressSchema } from '@/shared/schemas/workshop';

type Platen = Press['platen'];
type PlatenFieldsProps = Readonly<{ platen: Platen; id: string; onCommit: (platen: Platen) => void }>;

/** The platen of a press, where its kind has one. */
export function PlatenFields({ platen, id, onCommit }: PlatenFieldsProps) {
  const isInch = useMeasures().units.length === 'in';
  const side = isInch ? 15 * 25.4 : 380;
  return (
    <div>
      <CheckField
        label="It has a flat platen"
        checked={platen !== null}
        onCommit={(has) => onCommit(has ? { widthMm: side, heightMm: side } : null)}
      />
      {platen !== null && (
        <FieldGroup pairs>
          <MeasureField
            label="Platen, width"
            id={`${id}-widthMm`}
            kind="length"
            width="narrow"
            value={platen.widthMm}
            needed
            {...numberLimits(pressSchema, ['platen', 'widthMm'])}
            onCommit={(widthMm) => widthMm !== null && onCommit({ ...platen, widthMm })}
          />
          <MeasureField
            label="Platen, height"
            id={`${id}-heightMm`}
            kind="length"
            width="narrow"
            value={platen.heightMm}
            needed
            {...numberLimits(pressSchema, ['platen', 'heightMm'])}
            onCommit={(heightMm) => heightMm !== null && onCommit({ ...platen, heightMm })}
          />
        </FieldGroup>
      )}
    </div>
  );
}
