'use client';

import { useEffect, useId } from 'react';
import { focusById } from '@/app/_controls/focusById';
import { TextField } from '@/app/_fields/TextField';
import { emailCaution } from '@/app/_words/customers/customerWords';
import { textLimits } from '@/shared/limits';
import { type Person, personSchema } from '@/shared/schemas/customer';
import styles from './Customers.module.css';

type Key = 'name' | 'part' | 'email' | 'phone';

type PersonFieldsProps = Readonly<{
  person: Pick<Person, Key>;
  /** False while the person is being added. */
  isKept: boolean;
  onSet: (label: string, key: Key, value: string) => void;
}>;

/** What is known of one person. */
export function PersonFields({ person, isKept, onSet }: PersonFieldsProps) {
  const id = useId();
  useEffect(() => {
    if (!isKept) focusById(`${id}-name`);
  }, [id, isKept]);
  const of = (label: string, key: Key) => ({
    label,
    id: `${id}-${key}`,
    width: 'full' as const,
    value: person[key],
    ...textLimits(personSchema, [key]),
    onCommit: (value: string) => onSet(`${label}, ${person.name || 'a person'}`, key, value),
  });
  return (
    <div className={styles.person}>
      <TextField {...of('Name', 'name')} needed={isKept} />
      <TextField {...of('What they do there', 'part')} />
      <TextField {...of('Mail', 'email')} caution={emailCaution(person.email)} />
      <TextField {...of('Phone', 'phone')} />
    </div>
  );
}
