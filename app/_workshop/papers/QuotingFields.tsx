'use client';

import { workshopFieldId } from '@/app/_documents/fieldAddress';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { MeasureField } from '@/app/_fields/MeasureField';
import { NumberField } from '@/app/_fields/NumberField';
import styles from '@/app/_workshop/WorkshopParts.module.css';
import type { WorkshopFields } from '@/app/_workshop/workshopFields';
import { numberLimits } from '@/shared/limits';
import type { Quoting } from '@/shared/schemas/seller';
import { workshopSchema } from '@/shared/schemas/workshop';

/** What is usual of a quote; an order may say otherwise. Changes touch only what is written from now on. */
export function QuotingFields({ fields }: Readonly<{ fields: WorkshopFields }>) {
  const { workshop, set } = fields;
  const { quoting } = workshop;
  const of = (label: string, key: keyof Quoting) => ({
    label,
    id: workshopFieldId(['quoting', key]),
    width: 'narrow' as const,
    value: quoting[key],
    needed: key !== 'creditDays',
    ...numberLimits(workshopSchema, ['quoting', key]),
    onCommit: (value: number | null) => set(label, ['quoting', key], value),
  });
  return (
    <>
      <p className={styles.words}>Papers that went out keep what they said.</p>
      <FieldGroup>
        <NumberField {...of('A quote is valid for', 'validDays')} unit="days" />
        <MeasureField
          {...of('Deposit', 'depositShare')}
          kind="share"
          hint="Of the total with tax; 0 for none."
        />
        <NumberField
          {...of('Rounds of changes', 'revisionsIncluded')}
          hint="Of the proof, included. The price of further ones is told first."
        />
      </FieldGroup>
      <h3 className={styles.sub}>After the order</h3>
      <FieldGroup>
        <NumberField
          {...of('To pay within', 'creditDays')}
          unit="days"
          hint="Of the invoice. Empty where it is paid before the goods go out."
        />
        <NumberField
          {...of('Made again within', 'remakeDays')}
          unit="days"
          hint="A piece spoiled beyond the spares, or its price is paid back."
        />
        <NumberField
          {...of('Complaints within', 'claimDays')}
          unit="days"
          hint="The law of your place may ask for more: ask your local authority."
        />
      </FieldGroup>
      <h3 className={styles.sub}>For your own plans</h3>
      <FieldGroup>
        <MeasureField
          {...of('An open quote comes', 'winChance')}
          kind="share"
          hint="How often, as you guess it. The weeks ahead count open quotes by it."
        />
        <NumberField
          {...of('Idle printer', 'idleDays')}
          unit="days"
          hint="After so many without a print you are told, since ink dries in nozzles."
        />
      </FieldGroup>
    </>
  );
}
