'use client';

import { useState } from 'react';
import { today } from '@/app/_clock/useToday';
import { Button } from '@/app/_controls/Button';
import styles from '@/app/_copies/Copies.module.css';
import { WORKSHOP_ID } from '@/app/_documents/documentsByKind';
import type { Workspace } from '@/app/_documents/useWorkspace';
import { RegionFields } from '@/app/_fields/RegionFields';
import { saveFailureWords } from '@/app/_words/store/saveFailureWords';
import { freshWorkshop } from '@/lib/examples/freshWorkshop';
import type { Region } from '@/lib/examples/regionOf';
import { lostRegion } from './lostRegion';

type FreshWorkshopProps = Readonly<{
  workspace: Workspace;
  /** The record that cannot be read; `undefined` where there is none. */
  lost: unknown;
  /** There is nothing it would stand beside. */
  isAllGone?: boolean;
}>;

/** Offers a workshop of typical figures beside everything else that is kept. */
export function FreshWorkshop({ workspace, lost, isAllGone = false }: FreshWorkshopProps) {
  const [region, setRegion] = useState<Region>(() => lostRegion(lost, navigator.language));
  const [problem, setProblem] = useState<string | null>(null);
  const begin = async () => {
    const body = freshWorkshop(today(), region);
    const outcome = await workspace.putBeside('Fresh workshop', [
      { kind: 'workshop', id: WORKSHOP_ID, body },
    ]);
    if (outcome.state === 'notKept') setProblem(saveFailureWords[outcome.why]);
  };
  return (
    <section className={styles.copies}>
      <h2>{isAllGone ? 'Begin again' : 'Go on with a fresh workshop'}</h2>
      <p className={styles.words}>
        It has typical figures, one printer, one press and one sheet.{' '}
        {!isAllGone &&
          'Jobs, blanks, pictures and price lists stay as they are; a job that names a machine or a sheet of the old workshop needs another chosen.'}
        {lost !== undefined && ' The record that cannot be read stays kept too, shown under Workshop.'} It is
        one step that undo takes back.
      </p>
      <RegionFields region={region} onRegion={setRegion} />
      <div className={styles.row}>
        <Button kind="strong" onPress={() => void begin()}>
          Begin with a fresh workshop
        </Button>
      </div>
      <p className={styles.wrong} role="alert">
        {problem}
      </p>
    </section>
  );
}
