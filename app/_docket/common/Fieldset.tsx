import type { ReactNode } from 'react';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import styles from './Fieldset.module.css';

type PartProps = Readonly<{
  /** What the fields have in common. */
  name: string;
  children: ReactNode;
}>;

/** A few fields under one small name. */
export function Part({ name, children }: PartProps) {
  return (
    <fieldset className={styles.part}>
      <legend className={styles.name}>{name}</legend>
      <FieldGroup>{children}</FieldGroup>
    </fieldset>
  );
}
