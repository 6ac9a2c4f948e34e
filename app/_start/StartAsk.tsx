'use client';

import Link from 'next/link';
import { useState } from 'react';
import { today } from '@/app/_clock/useToday';
import { Advice } from '@/app/_controls/Advice';
import { Button } from '@/app/_controls/Button';
import { PageHead } from '@/app/_controls/PageHead';
import { RegionFields } from '@/app/_fields/RegionFields';
import { saveEverything } from '@/app/_keeping/saveEverything';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { saveFailureWords } from '@/app/_words/store/saveFailureWords';
import { exampleJobIds } from '@/lib/examples/exampleJobIds';
import { ownWorkshop } from '@/lib/examples/ownWorkshop';
import { type Region, regionOf } from '@/lib/examples/regionOf';
import { typicalMoneyCurrencies } from '@/shared/tables/typicalRates';
import styles from './Start.module.css';

type StartAskProps = Readonly<{ workspace: ReadyWorkspace; onStarted: () => void }>;

/** Says what is taken away and what comes, and asks for money and units before anything is done. */
export function StartAsk({ workspace, onStarted }: StartAskProps) {
  const [region, setRegion] = useState<Region>(() => regionOf(navigator.language));
  const [problem, setProblem] = useState<string | null>(null);
  const own = workspace.jobs.filter(({ id }) => !exampleJobIds.includes(id));
  const start = async () => {
    const outcome = await workspace.startOwn('Start of your own workshop', ownWorkshop(today(), region));
    if (outcome.state === 'replaced') onStarted();
    else setProblem(saveFailureWords[outcome.why]);
  };
  const saveCopy = async () => setProblem(await saveEverything(workspace.exportWithFiles));
  const hasTypicalMoney = typicalMoneyCurrencies.includes(region.currency);
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
        <RegionFields region={region} onRegion={setRegion} />
        {!hasTypicalMoney && (
          <p className={styles.quiet}>
            Typical amounts are known only for money whose unit is about the size of a dollar, a euro or a
            pound. In {region.currency} you are asked for each amount that a first price needs; there is no
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
        <p className={styles.problem} role="alert">
          {problem}
        </p>
      </div>
    </div>
  );
}
