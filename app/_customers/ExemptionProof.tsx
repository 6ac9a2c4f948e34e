'use client';

import { Attachments } from '@/app/_attachments/Attachments';
import type { Customer } from '@/shared/schemas/customer';
import type { Attachment } from '@/shared/schemas/keptFile';
import styles from './Customers.module.css';
import type { CustomerFields } from './customerFields';

type ExemptionProofProps = Readonly<{ fields: CustomerFields; proof: Attachment | null }>;

/** The certificate itself, as a file. */
export function ExemptionProof({ fields: { workspace, customerId }, proof }: ExemptionProofProps) {
  const to =
    (next: Attachment | null) =>
    (customer: Customer): Customer =>
      customer.exemption === null
        ? customer
        : { ...customer, exemption: { ...customer.exemption, proof: next } };
  return (
    <div className={styles.proof}>
      <p className={styles.words}>
        {proof === null
          ? 'Keep the certificate itself with it: a scan, a photo, a letter.'
          : 'The certificate:'}
      </p>
      <Attachments
        attachments={proof === null ? [] : [proof]}
        purposes={['exemption']}
        isOne
        readFile={workspace.readFile}
        onAdd={(attachment, file) =>
          workspace.editWithFiles(
            'Add the certificate',
            [{ do: 'change', kind: 'customer', id: customerId, to: to(attachment) }],
            [file],
          )
        }
        onRemove={() => workspace.changeCustomer(customerId, 'Remove the certificate', to(null))}
      />
    </div>
  );
}
