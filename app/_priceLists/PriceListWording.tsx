'use client';

import { FieldGroup } from '@/app/_fields/FieldGroup';
import { NumberField } from '@/app/_fields/NumberField';
import { TextField } from '@/app/_fields/TextField';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { PriceList } from '@/shared/schemas/priceList';
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
          longest={300}
          width="full"
          onCommit={(from) => set('Your shop', 'from', from)}
        />
        <TextField
          label="What is included"
          value={list.notes}
          rows={3}
          longest={1000}
          width="full"
          onCommit={(notes) => set('What is included', 'notes', notes)}
        />
        <FieldGroup>
          <TextField
            label="Lead time"
            value={list.leadTime}
            longest={200}
            onCommit={(leadTime) => set('Lead time', 'leadTime', leadTime)}
          />
          <NumberField
            label="Valid for"
            unit="days"
            value={list.validDays}
            min={1}
            max={730}
            decimals={0}
            onCommit={(validDays) => {
              if (validDays !== null) set('Days the list is valid', 'validDays', validDays);
            }}
          />
        </FieldGroup>
      </div>
    </>
  );
}
