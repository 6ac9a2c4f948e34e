'use client';

import { RateField } from '@/app/_fields/RateField';
import { missingRateWords } from '@/app/_words/fields/missingRateWords';
import { blankTypicals } from '@/shared/tables/typicalRates';
import styles from './Blanks.module.css';
import type { BlankFields } from './blankFields';

/** What one blank costs, size by size. */
export function PriceFields({
  fields: { blank, workspace, set, fieldId },
}: Readonly<{ fields: BlankFields }>) {
  const { typical } = blankTypicals[blank.kind].price;
  return (
    <div className={styles.grid}>
      {blank.sizes.map(({ name, price }, index) => (
        <RateField
          key={name}
          label={name}
          id={fieldId('sizes', index, 'price')}
          width="full"
          rate={price}
          units={['money/piece']}
          typical={typical}
          whenMissing={missingRateWords('money/piece', workspace.workshop.currency)}
          onCommit={(next) => set(`Price of ${blank.name}, ${name}`, ['sizes', index, 'price'], next)}
        />
      ))}
    </div>
  );
}
