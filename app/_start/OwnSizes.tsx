'use client';

import { FieldGroup } from '@/app/_fields/FieldGroup';
import { MeasureField } from '@/app/_fields/MeasureField';
import { type StartChoices, startChoicesSchema } from '@/lib/examples/startChoices';
import { paperSizeOf, platenOf } from '@/lib/examples/startParts';
import { numberLimits } from '@/shared/limits';
import styles from './Start.module.css';

type OwnSizesProps = Readonly<{
  choices: StartChoices;
  onChoose: (answers: Partial<StartChoices>) => void;
}>;

/** The platen of a press that is none of those offered. */
export function PlatenChoice({ choices, onChoose }: OwnSizesProps) {
  const platen = platenOf('other', choices);
  if (platen === null) return null;
  const set = (side: 'widthMm' | 'heightMm') => (value: number | null) =>
    onChoose({ platen: value === null ? null : { ...platen, [side]: value } });
  return (
    <div className={styles.sizes}>
      <FieldGroup pairs>
        {(['widthMm', 'heightMm'] as const).map((side) => (
          <MeasureField
            key={side}
            label={side === 'widthMm' ? 'Width of the platen' : 'Depth of the platen'}
            kind="length"
            width="narrow"
            needed
            value={platen[side]}
            {...numberLimits(startChoicesSchema, ['platen', side])}
            onCommit={set(side)}
          />
        ))}
      </FieldGroup>
    </div>
  );
}

/** How wide a roll is. */
export function RollWidth({ choices, onChoose }: OwnSizesProps) {
  return (
    <div className={styles.sizes}>
      <MeasureField
        label="Width of the roll"
        kind="length"
        width="narrow"
        needed
        value={paperSizeOf('roll', choices).widthMm}
        {...numberLimits(startChoicesSchema, ['rollWidthMm'])}
        onCommit={(rollWidthMm) => onChoose({ rollWidthMm })}
      />
    </div>
  );
}
