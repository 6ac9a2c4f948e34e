'use client';

import { numberLimits } from '@/shared/limits';
import { blankSizeSchema } from '@/shared/schemas/blank';
import { blankTypicals } from '@/shared/tables/typicalRates';
import { missingRateText } from '../_fields/missingRateText';
import { RateField } from '../_fields/RateField';
import styles from './Blanks.module.css';
import type { BlankDesk } from './blankDesk';

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
          limits={numberLimits(blankSizeSchema, ['price', 'value'])}
          typical={typical}
          whenMissing={missingRateText('money/piece', maker.workshop.currency)}
          onCommit={(next) => set(`Price of ${blank.name}, ${name}`, ['sizes', index, 'price'], next)}
        />
      ))}
    </div>
  );
}
