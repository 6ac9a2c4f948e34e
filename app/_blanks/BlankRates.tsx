'use client';

import { NumberField } from '@/app/_fields/NumberField';
import { RateField } from '@/app/_fields/RateField';
import { missingRateWords } from '@/app/_words/fields/missingRateWords';
import { blankTypicals } from '@/shared/tables/typicalRates';
import styles from './Blanks.module.css';
import type { BlankFields } from './blankFields';

/** How many come faulty, how long one takes to finish, how long the supplier takes. */
export function BlankRates({
  fields: { blank, workspace, set, fieldId },
}: Readonly<{ fields: BlankFields }>) {
  const { blankFault, finishMinutes } = blankTypicals[blank.kind];
  const { currency } = workspace.workshop;
  return (
    <div className={styles.grid}>
      <RateField
        label="Faulty on arrival"
        id={fieldId('blankFault')}
        width="full"
        rate={blank.blankFault}
        units={['share']}
        max={0.9}
        typical={blankFault.typical}
        whenMissing={missingRateWords('share', currency)}
        onCommit={(rate) => set(`Faulty share of ${blank.name}`, ['blankFault'], rate)}
      />
      <RateField
        label="Inspect, fold and bag one"
        id={fieldId('finishMinutes')}
        width="full"
        rate={blank.finishMinutes}
        units={['min']}
        typical={finishMinutes.typical}
        whenMissing={missingRateWords('min', currency)}
        onCommit={(rate) => set(`Finishing of ${blank.name}`, ['finishMinutes'], rate)}
      />
      <NumberField
        label="From order to arrival"
        id={fieldId('leadWorkingDays')}
        width="full"
        unit="working days"
        value={blank.leadWorkingDays}
        decimals={0}
        min={0}
        max={250}
        hint="Empty where you do not know; then nobody says by when to order."
        onCommit={(days) => set(`Lead time of ${blank.name}`, ['leadWorkingDays'], days)}
      />
    </div>
  );
}
