'use client';

import { OriginMark } from '@/app/_controls/OriginMark';
import { workshopFieldId } from '@/app/_documents/fieldAddress';
import { RateField } from '@/app/_fields/RateField';
import { missingRateWords } from '@/app/_words/fields/missingRateWords';
import { type RateName, rateDefinition } from '@/shared/tables/rateCatalogue';
import styles from './RateLine.module.css';
import type { WorkshopFields } from './workshopFields';

/** One rate of the catalogue: its name, its mark and what it changes at the left, its value at the right. */
export function RateLine({ fields, name }: Readonly<{ fields: WorkshopFields; name: RateName }>) {
  const { workshop, set } = fields;
  const { label, units, typical, changes } = rateDefinition(name);
  const rate = workshop.rates[name];
  const id = workshopFieldId(['rates', name]);
  return (
    <div className={styles.line}>
      <div>
        <p className={styles.head}>
          <label className={styles.name} htmlFor={id}>
            {label}
          </label>
          {rate && <OriginMark origin={rate.origin} count={rate.count} />}
        </p>
        <p className={styles.changes}>{changes}</p>
      </div>
      <RateField
        {...{ id, label, rate, units, typical }}
        labelled
        max={units[0] === 'share' ? undefined : 1e9}
        whenMissing={missingRateWords(units[0], workshop.currency, name === 'wage')}
        onCommit={(next) => set(label, ['rates', name], next)}
      />
    </div>
  );
}
