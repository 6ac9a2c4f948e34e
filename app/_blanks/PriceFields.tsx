'use client';

import { RateField } from '@/app/_fields/RateField';
import { missingRateText } from '@/app/_words/fields/missingRateWords';
import { blankTypicals } from '@/shared/tables/typicalRates';
import styles from './Blanks.module.css';
import type { BlankDesk } from './blankForm';

/** What one blank costs, size by size. */
export function PriceFields({ desk: { blank, maker, set, fieldId } }: Readonly<{ desk: BlankDesk }>) {
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
          whenMissing={missingRateText('money/piece', maker.workshop.currency)}
          onCommit={(next) => set(`Price of ${blank.name}, ${name}`, ['sizes', index, 'price'], next)}
        />
      ))}
    </div>
  );
}
