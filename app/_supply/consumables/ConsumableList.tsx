'use client';

import { useState } from 'react';
import { Disclosure } from '@/app/_controls/Disclosure';
import { RemoveButton } from '@/app/_controls/RemoveButton';
import { newId } from '@/app/_documents/newId';
import { NewByName } from '@/app/_supply/NewByName';
import styles from '@/app/_supply/Supply.module.css';
import type { SupplyOnScreen } from '@/app/_supply/supplyOnScreen';
import { consumableLine, consumableNameTaken } from '@/app/_words/supply/supplierWords';
import { textLimits } from '@/shared/limits';
import { consumableSchema } from '@/shared/schemas/making/supply';
import { ConsumableEditor } from './ConsumableEditor';

type ConsumableListProps = Readonly<{ supply: SupplyOnScreen; onRemoved: (name: string) => void }>;

/** What is used up: tape, protective paper, bags, cards, cartons. */
export function ConsumableList({ supply, onRemoved }: ConsumableListProps) {
  const { workspace, formatter, locale } = supply;
  const [added, setAdded] = useState<string | null>(null);
  const here = Object.entries(workspace.consumables).toSorted(([, a], [, b]) =>
    a.name.localeCompare(b.name, locale),
  );
  const add = (name: string) => {
    const id = newId();
    const body = consumableSchema.parse({ name });
    const outcome = workspace.edit(name, [{ do: 'add', kind: 'consumable', id, body }]);
    if (outcome.state === 'shown') setAdded(id);
    return outcome;
  };
  const atHome = (id: string) =>
    workspace.piles.find(
      ({ item, place, grade }) =>
        item.kind === 'consumable' && item.consumableId === id && place.kind === 'home' && grade === 'first',
    )?.quantity ?? null;
  return (
    <section aria-labelledby="consumables">
      <h2 className={styles.heading} id="consumables">
        What is used up
      </h2>
      <div className={styles.list}>
        {here.map(([id, consumable]) => (
          <Disclosure
            key={id}
            level={3}
            id={`consumable-${id}`}
            heading={consumable.name}
            line={consumableLine(consumable, atHome(id), formatter)}
            open={id === added}
          >
            <ConsumableEditor {...{ workspace, id, consumable }} />
            <div className={styles.acts}>
              <RemoveButton
                what={consumable.name}
                usedBy={[]}
                onRemove={() => {
                  workspace.remove({ kind: 'consumable', id }, `Remove ${consumable.name}`);
                  onRemoved(consumable.name);
                }}
              />
            </div>
          </Disclosure>
        ))}
        {here.length === 0 && (
          <p className={styles.none}>Tape, protective paper, bags, cards: nothing is kept yet.</p>
        )}
      </div>
      <NewByName
        label="New consumable"
        limits={textLimits(consumableSchema, ['name'])}
        taken={here.map(([, { name }]) => name)}
        takenWords={consumableNameTaken}
        onAdd={add}
      />
    </section>
  );
}
