'use client';

import Link from 'next/link';
import { useState } from 'react';
import { exampleJobIds } from '@/lib/examples/exampleJobIds';
import { type Home, homeOf } from '@/lib/examples/homeOf';
import { ownWorkshop } from '@/lib/examples/ownWorkshop';
import { typicalMoneyCurrencies } from '@/shared/tables/typicalRates';
import { saveEverything } from '../_documents/saveEverything';
import { today } from '../_documents/useToday';
import type { ReadyMaker } from '../_documents/WithWorkshop';
import { Advice } from '../_shell/Advice';
import { Button } from '../_shell/Button';
import { PageHead } from '../_shell/PageHead';
import { notKeptText } from '../_text/notKeptText';
import { HomeFields } from './HomeFields';
import styles from './Start.module.css';

type StartAskProps = Readonly<{ maker: ReadyMaker; onStarted: () => void }>;

/** Says what is taken away and what comes, and asks for money and units before anything is done. */
export function StartAsk({ maker, onStarted }: StartAskProps) {
  const [home, setHome] = useState<Home>(() => homeOf(navigator.language));
  const [trouble, setTrouble] = useState<string | null>(null);
  const own = maker.jobs.filter(({ id }) => !exampleJobIds.includes(id));
  const start = async () => {
    const outcome = await maker.startOwn('Start of your own workshop', ownWorkshop(today(), home));
    if (outcome.state === 'replaced') onStarted();
    else setTrouble(notKeptText[outcome.why]);
  };
  const saveCopy = async () => setTrouble(await saveEverything(maker.exportWithFiles));
  const hasTypicalMoney = typicalMoneyCurrencies.includes(home.currency);
  return (
    <div className={styles.page}>
      <PageHead
        title="Start your own workshop"
        line={
          hasTypicalMoney
            ? 'A dozen figures, each with what is typical. Five minutes, and every one can wait.'
            : 'Some twenty figures, the amounts among them yours to find. Every one can wait.'
        }
      />
      <div className={styles.slip}>
        <p className={styles.what}>
          {own.length === 0
            ? 'The example with its jobs, blanks and rates is taken away.'
            : 'Everything that is here now is taken away, the example and your own jobs too.'}{' '}
          In its place comes a workshop with typical figures, one shirt and one job to fill. It is one step:
          undo brings all of it back.
        </p>
        {own.length > 0 && (
          <Advice severity="caution">
            {own.length === 1 ? 'One job here is' : `${own.length} jobs here are`} your own:{' '}
            {own
              .slice(0, 3)
              .map(({ job }) => job.name)
              .join(', ')}
            {own.length > 3 && ' and more'}. Keep a copy of them first.
          </Advice>
        )}
        <HomeFields home={home} onHome={setHome} />
        {!hasTypicalMoney && (
          <p className={styles.quiet}>
            Typical amounts are known only for money whose unit is about the size of a dollar, a euro or a
            pound. In {home.currency} you are asked for each amount that a first price needs; there is no
            price before all of them are in.
          </p>
        )}
        <div className={styles.ways}>
          <Button kind="strong" onPress={() => void start()}>
            {own.length === 0 ? 'Take the example away and start' : 'Take everything away and start'}
          </Button>
          {own.length > 0 && <Button onPress={() => void saveCopy()}>Save everything as a file</Button>}
          <Link className={styles.back} href="/">
            Not now
          </Link>
        </div>
        <p className={styles.trouble} role="alert">
          {trouble}
        </p>
      </div>
    </div>
  );
}
