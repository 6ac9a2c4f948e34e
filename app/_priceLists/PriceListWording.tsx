'use client';

import { FieldGroup } from '@/app/_fields/FieldGroup';
import { NumberField } from '@/app/_fields/NumberField';
import { TextField } from '@/app/_fields/TextField';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { numberLimits, textLimits } from '@/shared/limits';
import { type PriceList, priceListSchema } from '@/shared/schemas/priceList';
import styles from './PriceLists.module.css';

type PriceListWordingProps = Readonly<{ id: string; list: PriceList; workspace: ReadyWorkspace }>;

/** The words around the prices, and how long they are to hold. */
export function PriceListWording({ id, list, workspace }: PriceListWordingProps) {
  const set = (label: string, field: keyof PriceList, value: string | number) =>
    workspace.setField({ kind: 'priceList', id }, label, [field], value);
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
        <TextField
          label="Lead time"
          value={list.leadTime}
          rows={2}
          {...textLimits(priceListSchema, ['leadTime'])}
          width="full"
          onCommit={(leadTime) => set('Lead time', 'leadTime', leadTime)}
        />
        <FieldGroup>
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
