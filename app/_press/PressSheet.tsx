'use client';

import type { ReactNode } from 'react';
import { BottomSheet } from '@/app/_controls/BottomSheet';
import styles from './Press.module.css';

type PressSheetProps = Readonly<{ name: string; onClose: () => void; children: ReactNode }>;

/** What is opened over the press, under its name. */
export const PressSheet = ({ name, onClose, children }: PressSheetProps) => (
  <BottomSheet label={name} onClose={onClose}>
    {() => (
      <div className={styles.sheet}>
        <h2>{name}</h2>
        {children}
      </div>
    )}
  </BottomSheet>
);
