'use client';

import { workshopFieldId } from '@/app/_documents/fieldAddress';
import { RateField } from '@/app/_fields/RateField';
import { missingRateWords } from '@/app/_words/fields/missingRateWords';
import type { RateSpec } from '@/app/_workshop/rateSpec';
import type { WorkshopFields } from '@/app/_workshop/workshopFields';
import type { FieldPath } from '@/shared/setIn';
import styles from './PartList.module.css';

type PartRatesProps<Part> = Readonly<{
  fields: WorkshopFields;
  part: Part & { readonly name: string };
  /** Where the part stands in the workshop. */
  path: FieldPath;
  specs: readonly RateSpec<Part>[];
}>;

/** The rates of one machine, sheet, packaging or channel. */
export function PartRates<Part>({ fields, part, path, specs }: PartRatesProps<Part>) {
  const { currency } = fields.workshop;
  return (
    <div className={styles.rates}>
      {specs.map(({ key, of, unit, isOptional, ...spec }) => (
        <RateField
          key={key}
          id={workshopFieldId([...path, key])}
          {...spec}
          width="full"
          rate={of(part)}
          units={[unit]}
          whenMissing={isOptional ? undefined : missingRateWords(unit, currency)}
          onCommit={(rate) => fields.set(`${spec.label}, ${part.name}`, [...path, key], rate)}
        />
      ))}
    </div>
  );
}
