'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { RemovedNote } from '@/app/_controls/RemovedNote';
import { newId } from '@/app/_documents/newId';
import { typing } from '@/app/_documents/typing';
import { personRemovalWords } from '@/app/_words/customers/customerWords';
import { mostEntries } from '@/shared/limits';
import { customerSchema, type Person } from '@/shared/schemas/customer';
import { AddOne } from './AddOne';
import { AskedRemove } from './AskedRemove';
import styles from './Customers.module.css';
import type { CustomerFields } from './customerFields';
import type { OrderOfCustomer } from './customerOrders';
import { PersonFields } from './PersonFields';

type PeopleFieldsProps = Readonly<{ fields: CustomerFields; orders: readonly OrderOfCustomer[] }>;

const most = mostEntries(customerSchema, ['people']);
const nobody = { name: '', part: '', email: '', phone: '' };

/** Whom to write to: the first, unless an order names another. */
export function PeopleFields({ fields, orders }: PeopleFieldsProps) {
  const { workspace, customer, set } = fields;
  const { people } = customer;
  const [removed, setRemoved] = useState<string | null>(null);
  const [added, setAdded] = useState<typeof nobody | null>(null);
  const remove = (person: Person) => {
    typing.ends();
    set(
      `Remove ${person.name}`,
      ['people'],
      people.filter(({ id }) => id !== person.id),
    );
    setRemoved(person.name);
  };
  const putFirst = (person: Person) =>
    set(`Write to ${person.name}`, ['people'], [person, ...people.filter(({ id }) => id !== person.id)]);
  const add = () => {
    if (added === null) return;
    typing.ends();
    set(`Add ${added.name.trim()}`, ['people', people.length], { ...added, id: newId() });
    setAdded(null);
  };
  const namedBy = (id: string) =>
    orders.filter(({ order }) => order.personId === id).map(({ called }) => called);
  const missing = added?.name.trim() === '' ? 'The name is missing.' : undefined;
  return (
    <div className={styles.rows}>
      {people.length > 0 && (
        <ul className={styles.rows}>
          {people.map((person, index) => (
            <li key={person.id} className={styles.row}>
              <PersonFields
                person={person}
                isKept
                onSet={(label, key, value) => set(label, ['people', index, key], value)}
              />
              <div className={styles.ends}>
                {index > 0 && (
                  <Button kind="quiet" spoken={`Write to ${person.name}`} onPress={() => putFirst(person)}>
                    Write to them first
                  </Button>
                )}
                <AskedRemove
                  what={person.name}
                  told={personRemovalWords(person.name, namedBy(person.id))}
                  onRemove={() => remove(person)}
                />
              </div>
            </li>
          ))}
        </ul>
      )}
      <RemovedNote
        what={workspace.undoLabel === `Remove ${removed}` ? removed : null}
        onUndo={() => void workspace.undo()}
      />
      <AddOne
        words={{ begin: 'Add a person', form: 'A further person', add: 'Add them' }}
        most={people.length >= most ? most : null}
        isAdding={added !== null}
        missing={missing}
        onBegin={() => setAdded(nobody)}
        onAdd={add}
        onLeave={() => setAdded(null)}
      >
        {added !== null && (
          <PersonFields
            person={added}
            isKept={false}
            onSet={(_, key, value) => setAdded({ ...added, [key]: value })}
          />
        )}
      </AddOne>
    </div>
  );
}
