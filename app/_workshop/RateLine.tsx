'use client';

import { numberLimits } from '@/shared/limits';
import { ratesSchema } from '@/shared/schemas/workshop';
import { type RateName, rateDefinition } from '@/shared/tables/rateCatalogue';
import { workshopFieldId } from '../_documents/fieldAddress';
import { missingRateText } from '../_fields/missingRateText';
import { RateField } from '../_fields/RateField';
import { OriginMark } from '../_figures/OriginMark';
import styles from './RateLine.module.css';
import type { WorkshopDesk } from './workshopDesk';

/** One rate of the catalogue: its name, its mark and what it changes at the left, its value at the right. */
export function RateLine({ desk, name }: Readonly<{ desk: WorkshopDesk; name: RateName }>) {
  const { workshop, set } = desk;
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
        limits={numberLimits(ratesSchema, [name, 'value'])}
        whenMissing={missingRateText(units[0], workshop.currency, name === 'wage')}
        onCommit={(next) => set(label, ['rates', name], next)}
      />
    </div>
  );
}
