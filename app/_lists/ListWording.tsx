'use client';

import { numberLimits, textLimits } from '@/shared/limits';
import { type PriceListDocument, priceListSchema } from '@/shared/schemas/priceList';
import type { ReadyMaker } from '../_documents/WithWorkshop';
import { FieldGroup } from '../_fields/FieldGroup';
import { NumberField } from '../_fields/NumberField';
import { TextField } from '../_fields/TextField';
import styles from './Lists.module.css';

type ListWordingProps = Readonly<{ id: string; list: PriceListDocument; maker: ReadyMaker }>;

/** The words around the prices, and how long they are to hold. */
export function ListWording({ id, list, maker }: ListWordingProps) {
  const set = (label: string, field: keyof PriceListDocument, value: string | number) =>
    maker.setField({ kind: 'priceList', id }, label, [field], value);
  return (
    <>
      <h3 className={styles.sub}>Words on the paper</h3>
      <div className={styles.wording}>
        <TextField
          label="Your shop and how to reach it"
          value={list.from}
          rows={2}
          {...textLimits(priceListSchema, ['from'])}
          width="full"
          onCommit={(from) => set('Your shop', 'from', from)}
        />
        <TextField
          label="What is included"
          value={list.notes}
          rows={3}
          {...textLimits(priceListSchema, ['notes'])}
          width="full"
          onCommit={(notes) => set('What is included', 'notes', notes)}
        />
        <FieldGroup>
          <TextField
            label="Lead time"
            value={list.leadTime}
            {...textLimits(priceListSchema, ['leadTime'])}
            onCommit={(leadTime) => set('Lead time', 'leadTime', leadTime)}
          />
          <NumberField
            label="Valid for"
            unit="days"
            value={list.validDays}
            needed
            {...numberLimits(priceListSchema, ['validDays'])}
            onCommit={(validDays) => {
              if (validDays !== null) set('Days the list is valid', 'validDays', validDays);
            }}
          />
        </FieldGroup>
      </div>
    </>
  );
}
