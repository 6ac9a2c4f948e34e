'use client';

import { useState } from 'react';
import type { Home } from '@/lib/examples/homeOf';
import { freshWorkshop } from '@/lib/examples/ownWorkshop';
import { Button } from '../_shell/Button';
import { HomeFields } from '../_start/HomeFields';
import { notKeptText } from '../_text/notKeptText';
import styles from './KeepCopy.module.css';
import { lostHome } from './lostHome';
import { WORKSHOP_ID } from './makerDocuments';
import type { Maker } from './useMaker';
import { today } from './useToday';

type FreshWorkshopProps = Readonly<{
  maker: Maker;
  /** The record that cannot be read; `undefined` where there is none. */
  lost: unknown;
}>;

/** Offers a workshop of typical figures beside everything else that is kept. */
export function FreshWorkshop({ maker, lost }: FreshWorkshopProps) {
  const [home, setHome] = useState<Home>(() => lostHome(lost, navigator.language));
  const [trouble, setTrouble] = useState<string | null>(null);
  const begin = async () => {
    const body = freshWorkshop(today(), home);
    const outcome = await maker.putBeside('Fresh workshop', [{ kind: 'workshop', id: WORKSHOP_ID, body }]);
    if (outcome.state === 'notKept') setTrouble(notKeptText[outcome.why]);
  };
  return (
    <section className={styles.copy}>
      <h2>Go on with a fresh workshop</h2>
      <p className={styles.words}>
        It has typical figures, one printer, one press and one sheet. Jobs, blanks, pictures and price lists
        stay as they are; a job that names a machine or a sheet of the old workshop asks for another.
        {lost !== undefined && ' The record that cannot be read stays kept too, shown under Workshop.'} It is
        one step that undo takes back.
      </p>
      <HomeFields home={home} onHome={setHome} />
      <div className={styles.row}>
        <Button kind="strong" onPress={() => void begin()}>
          Begin with a fresh workshop
        </Button>
      </div>
      <p className={styles.wrong} role="alert">
        {trouble}
      </p>
    </section>
  );
}
