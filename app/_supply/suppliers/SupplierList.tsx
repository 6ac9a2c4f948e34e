'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { Disclosure } from '@/app/_controls/Disclosure';
import { Fold } from '@/app/_controls/Fold';
import { RemoveButton } from '@/app/_controls/RemoveButton';
import { ListRow, RowList } from '@/app/_controls/RowList';
import { newId } from '@/app/_documents/newId';
import { NewByName } from '@/app/_supply/NewByName';
import styles from '@/app/_supply/Supply.module.css';
import type { SupplyOnScreen } from '@/app/_supply/supplyOnScreen';
import { putAwayTold, supplierLine, supplierNameTaken } from '@/app/_words/supply/supplierWords';
import { textLimits } from '@/shared/limits';
import { supplierSchema } from '@/shared/schemas/making/supply';
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
  const all = Object.entries(workspace.suppliers).toSorted(([, a], [, b]) =>
    a.name.localeCompare(b.name, locale),
  );
  const here = all.filter(([, { archivedOn }]) => archivedOn === null);
  const away = all.filter(([, { archivedOn }]) => archivedOn !== null);
  const add = (name: string) => {
    const id = newId();
    const body = supplierSchema.parse({ name });
    const outcome = workspace.edit(name, [{ do: 'add', kind: 'supplier', id, body }]);
    if (outcome.state === 'shown') setAdded(id);
    return outcome;
  };
  const put = (id: string, label: string, day: string | null) =>
    void workspace.setField({ kind: 'supplier', id }, label, ['archivedOn'], day);
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
              <Button
                spoken={`Put ${supplier.name} away`}
                onPress={() => put(id, `Put ${supplier.name} away`, today)}
              >
                Put away
              </Button>
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
        taken={all.map(([, { name }]) => name)}
        takenWords={supplierNameTaken}
        onAdd={add}
      />
      {away.length > 0 && (
        <Fold summary="Put away" line={putAwayTold}>
          <RowList label="Suppliers put away">
            {away.map(([id, { name }]) => (
              <ListRow
                key={id}
                acts={
                  <Button spoken={`Bring ${name} back`} onPress={() => put(id, `Bring ${name} back`, null)}>
                    Bring back
                  </Button>
                }
              >
                <bdi>{name}</bdi>
              </ListRow>
            ))}
          </RowList>
        </Fold>
      )}
    </section>
  );
}
