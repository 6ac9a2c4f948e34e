'use client';

import { useState } from 'react';
import { Disclosure } from '@/app/_controls/Disclosure';
import { RemoveButton } from '@/app/_controls/RemoveButton';
import { newId } from '@/app/_documents/newId';
import { NewByName } from '@/app/_supply/NewByName';
import styles from '@/app/_supply/Supply.module.css';
import type { SupplyOnScreen } from '@/app/_supply/supplyOnScreen';
import { supplierLine, supplierNameTaken } from '@/app/_words/supply/supplierWords';
import { textLimits } from '@/shared/limits';
import { supplierSchema } from '@/shared/schemas/supply';
import { SupplierEditor } from './SupplierEditor';
import { supplierFields } from './supplierFields';

type SupplierListProps = Readonly<{
  supply: SupplyOnScreen;
  /** Told what was removed, as undo says it. */
  onRemoved: (name: string) => void;
}>;

/** Everybody the maker buys from. */
export function SupplierList({ supply, onRemoved }: SupplierListProps) {
  const { workspace, formatter, locale, today } = supply;
  const [added, setAdded] = useState<string | null>(null);
  const here = Object.entries(workspace.suppliers).toSorted(([, a], [, b]) =>
    a.name.localeCompare(b.name, locale),
  );
  const add = (name: string) => {
    const id = newId();
    const body = supplierSchema.parse({ name });
    if (workspace.edit(name, [{ do: 'add', kind: 'supplier', id, body }]).state === 'shown') setAdded(id);
  };
  return (
    <section aria-labelledby="suppliers">
      <h2 className={styles.heading} id="suppliers">
        Who you buy from
      </h2>
      <div className={styles.list}>
        {here.map(([id, supplier]) => (
          <Disclosure
            key={id}
            level={3}
            id={`supplier-${id}`}
            heading={supplier.name}
            line={supplierLine(supplier, formatter)}
            open={id === added}
          >
            <SupplierEditor fields={supplierFields(workspace, id, supplier, today)} />
            <div className={styles.acts}>
              <RemoveButton
                what={supplier.name}
                usedBy={[]}
                onRemove={() => {
                  workspace.remove({ kind: 'supplier', id }, `Remove ${supplier.name}`);
                  onRemoved(supplier.name);
                }}
              />
            </div>
          </Disclosure>
        ))}
        {here.length === 0 && <p className={styles.none}>Nobody yet.</p>}
      </div>
      <NewByName
        label="New supplier"
        limits={textLimits(supplierSchema, ['name'])}
        taken={here.map(([, { name }]) => name)}
        takenWords={supplierNameTaken}
        onAdd={add}
      />
    </section>
  );
}
