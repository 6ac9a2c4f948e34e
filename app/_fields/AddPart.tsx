'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import styles from './AddPart.module.css';
import { ChoiceField } from './ChoiceField';

/** One thing that can be added. */
export interface Adder<Part> {
  readonly label: string;
  readonly make: (id: string) => Part;
}

type AddPartProps<Part> = Readonly<{
  noun: string;
  adders: readonly Adder<Part>[];
  blockedBy?: string | undefined;
  onAdd: (make: (id: string) => Part) => void;
}>;

/** Adds one of some starting sets; the set is chosen first and added by the button, never by the choice alone. */
export function AddPart<Part>({ noun, adders, blockedBy, onAdd }: AddPartProps<Part>) {
  const [chosen, setChosen] = useState(0);
  const adder = adders[chosen] ?? adders[0];
  if (adder === undefined) return null;
  return (
    <div className={styles.add}>
      {adders.length > 1 && (
        <ChoiceField
          label={`A further ${noun}`}
          width="full"
          value={String(chosen)}
          choices={adders.map(({ label }, index) => ({ value: String(index), label }))}
          onCommit={(value) => setChosen(Number(value))}
        />
      )}
      <Button blockedBy={blockedBy} onPress={() => onAdd(adder.make)}>
        Add {adders.length > 1 ? 'it' : `a ${noun}`}
      </Button>
    </div>
  );
}
