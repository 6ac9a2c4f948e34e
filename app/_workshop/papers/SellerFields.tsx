'use client';

import { workshopFieldId } from '@/app/_documents/fieldAddress';
import { TextField } from '@/app/_fields/TextField';
import styles from '@/app/_workshop/WorkshopParts.module.css';
import type { WorkshopFields } from '@/app/_workshop/workshopFields';
import { textLimits } from '@/shared/limits';
import type { SellerIdentity } from '@/shared/schemas/seller';
import { workshopSchema } from '@/shared/schemas/workshop';
import { LogoField } from './LogoField';

/** Who stands at the head of papers, and how they are paid. */
export function SellerFields({ fields }: Readonly<{ fields: WorkshopFields }>) {
  const { workshop, set } = fields;
  const { seller } = workshop;
  const of = (label: string, key: Exclude<keyof SellerIdentity, 'logo'>) => ({
    label,
    id: workshopFieldId(['seller', key]),
    width: 'full' as const,
    value: seller[key],
    ...textLimits(workshopSchema, ['seller', key]),
    onCommit: (value: string) => set(label, ['seller', key], value),
  });
  return (
    <div className={styles.stack}>
      <TextField {...of('Name on papers', 'name')} placeholder={workshop.name} />
      <TextField {...of('What you do, in a few words', 'tagline')} />
      <TextField {...of('Your address', 'address')} rows={3} />
      <TextField {...of('How to reach you', 'contact')} rows={2} />
      <TextField
        {...of('Your tax number', 'taxNumber')}
        hint="Whether papers have to name one your local authority says."
      />
      <TextField
        {...of('How to pay you', 'howToPay')}
        rows={3}
        hint="Account and reference, or whatever a customer needs. It stands on quotes, confirmations, requests and invoices."
      />
      <LogoField fields={fields} logo={seller.logo} />
    </div>
  );
}
