'use client';

import { FieldGroup } from '@/app/_fields/FieldGroup';
import { NumberField } from '@/app/_fields/NumberField';
import { TextField } from '@/app/_fields/TextField';
import styles from '@/app/_supply/Supply.module.css';
import { supplierNameTaken } from '@/app/_words/supply/supplierWords';
import { numberLimits, textLimits } from '@/shared/limits';
import { supplierSchema } from '@/shared/schemas/making/supply';
import { currencyDigits } from '@/shared/tables/currencies';
import { OfferList } from './OfferList';
import type { SupplierFields } from './supplierFields';

/** Everything that is known of one supplier. */
export function SupplierEditor({ fields }: Readonly<{ fields: SupplierFields }>) {
  const { id, supplier, workspace, set, fieldId } = fields;
  const { currency } = workspace.workshop;
  const money = { unit: currency, minDecimals: currencyDigits(currency) ?? 2, width: 'narrow' } as const;
  const isTaken = Object.entries(workspace.suppliers).some(
    ([other, { name }]) => other !== id && name.toLowerCase() === supplier.name.toLowerCase(),
  );
  return (
    <div className={styles.editor}>
      <FieldGroup>
        <TextField
          label="Name"
          id={fieldId('name')}
          needed
          value={supplier.name}
          caution={isTaken ? supplierNameTaken(supplier.name) : undefined}
          {...textLimits(supplierSchema, ['name'])}
          onCommit={(name) => set('Name of a supplier', ['name'], name)}
        />
        <TextField
          label="Your customer number there"
          id={fieldId('customerNumber')}
          value={supplier.customerNumber}
          {...textLimits(supplierSchema, ['customerNumber'])}
          onCommit={(text) => set('Customer number', ['customerNumber'], text)}
        />
        <NumberField
          label="From order to arrival"
          id={fieldId('leadWorkingDays')}
          unit="working days"
          value={supplier.leadWorkingDays}
          {...numberLimits(supplierSchema, ['leadWorkingDays'])}
          hint="Empty follows the blank."
          onCommit={(days) => set('Lead time of a supplier', ['leadWorkingDays'], days)}
        />
        <NumberField
          label="Least order"
          id={fieldId('minimumOrder')}
          {...money}
          value={supplier.minimumOrder}
          {...numberLimits(supplierSchema, ['minimumOrder'])}
          hint="Goods without freight. Empty where there is none."
          onCommit={(amount) => set('Least order of a supplier', ['minimumOrder'], amount)}
        />
        <NumberField
          label="Freight of an order"
          id={fieldId('freight')}
          {...money}
          value={supplier.freight}
          {...numberLimits(supplierSchema, ['freight'])}
          hint="0 where it comes free. Empty where you do not know."
          onCommit={(amount) => set('Freight of a supplier', ['freight'], amount)}
        />
        <NumberField
          label="Free from"
          id={fieldId('freeFreightFrom')}
          {...money}
          value={supplier.freeFreightFrom}
          {...numberLimits(supplierSchema, ['freeFreightFrom'])}
          hint="Goods without freight. Empty where it never is."
          onCommit={(amount) => set('Free freight of a supplier', ['freeFreightFrom'], amount)}
        />
      </FieldGroup>
      <FieldGroup>
        <TextField
          label="How to reach them"
          id={fieldId('contact')}
          rows={3}
          value={supplier.contact}
          {...textLimits(supplierSchema, ['contact'])}
          hint="Stands on orders to them."
          onCommit={(contact) => set('Contact of a supplier', ['contact'], contact)}
        />
        <TextField
          label="Note"
          id={fieldId('note')}
          rows={3}
          value={supplier.note}
          {...textLimits(supplierSchema, ['note'])}
          hint="For you alone."
          onCommit={(note) => set('Note on a supplier', ['note'], note)}
        />
      </FieldGroup>
      <OfferList fields={fields} />
    </div>
  );
}
