'use client';

import type { ReactNode } from 'react';
import { BottomSheet } from '@/app/_controls/BottomSheet';
import styles from './Sheet.module.css';

type SheetProps = Readonly<{ name: string; onClose: () => void; children: ReactNode }>;

/** What is opened over the count, under its name. */
export const Sheet = ({ name, onClose, children }: SheetProps) => (
  <BottomSheet label={name} onClose={onClose}>
    {() => (
      <div className={styles.room}>
        <h2 className={styles.name}>{name}</h2>
        {children}
      </div>
    )}
  </BottomSheet>
);
