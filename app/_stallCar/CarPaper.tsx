'use client';

import { useMemo, useState } from 'react';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { PaperToPrint } from '@/app/_papers/PaperToPrint';
import type { CarListBody } from '@/lib/papers/bodies/carListPaper';
import styles from './Car.module.css';
import { carListSource } from './carListSource';
import type { CarOnScreen, StallPart } from './carOnScreen';

/** The list to load by: of the fixed plan, else of the plan of now. */
export function CarPaper({ part, car }: Readonly<{ part: StallPart; car: CarOnScreen }>) {
  const { workshop, readFile } = part.workspace;
  const [page, setPage] = useState<CarListBody['page']>(workshop.units.length === 'in' ? 'letter' : 'a4');
  const source = useMemo(() => carListSource(part, car, page), [part, car, page]);
  if (source === null) return <p>There is nothing to load yet: the plan comes first.</p>;
  return (
    <div className={styles.rows}>
      <ChoiceField
        label="Printed on"
        value={page}
        choices={[
          { value: 'a4', label: 'A4' },
          { value: 'letter', label: 'Letter' },
        ]}
        onCommit={setPage}
      />
      <PaperToPrint {...{ source, readFile }} words={workshop.papers.words} spoken="the list for the car" />
    </div>
  );
}
