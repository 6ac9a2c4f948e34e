import type { ReactNode } from 'react';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import styles from './Fieldset.module.css';

type FieldsetProps = Readonly<{
  /** What the fields have in common. */
  name: string;
  children: ReactNode;
}>;

/** A few fields under one small name. */
export function Fieldset({ name, children }: FieldsetProps) {
  return (
    <fieldset className={styles.part}>
      <legend className={styles.name}>{name}</legend>
      <FieldGroup>{children}</FieldGroup>
    </fieldset>
  );
}
