'use client';

import { useMemo, useState } from 'react';
import { Fold } from '@/app/_controls/Fold';
import { TextField } from '@/app/_fields/TextField';
import { useTextContext } from '@/app/_fields/useTextContext';
import { unitWords } from '@/app/_words/unitWords';
import { allowedFunctions } from '@/lib/grid/allowedFunctions';
import { usableNames } from '@/lib/grid/usableNames';
import type { OwnRow } from '@/shared/schemas/ownRow';
import styles from './NameHelp.module.css';

type NameHelpProps = Readonly<{
  everyRow: readonly OwnRow[];
  placements: number;
  onInsert: (name: string) => void;
}>;

/** The names a formula may use, with what they are; pressing one writes it into the formula. */
export function NameHelp({ everyRow, placements, onInsert }: NameHelpProps) {
  const { currency } = useTextContext();
  const [sought, setSought] = useState('');
  const names = useMemo(() => usableNames(everyRow, placements), [everyRow, placements]);
  const word = sought.trim().toLowerCase();
  const found = names.filter(({ id, label }) => `${id} ${label}`.toLowerCase().includes(word));
  return (
    <Fold summary="Names and functions for a formula">
      <p className={styles.line}>
        Functions: {allowedFunctions.join(', ')}. Their parts are parted by a semicolon, decimals by a point:
        MAX(0.5; inkMl * 0.1).
      </p>
      <TextField label="Find a name" value={sought} onCommit={setSought} />
      <ul className={styles.names}>
        {found.map((row) => (
          <li key={row.id}>
            <button className={styles.name} type="button" onClick={() => onInsert(row.id)}>
              <code>{row.id}</code>
              <span className={styles.what}>
                {row.label}, {unitWords(row.unit, currency)}
              </span>
            </button>
          </li>
        ))}
      </ul>
      {found.length === 0 && <p className={styles.line}>Nothing goes by that name.</p>}
    </Fold>
  );
}
