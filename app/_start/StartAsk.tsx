'use client';

import Link from 'next/link';
import { useState } from 'react';
import { today } from '@/app/_clock/useToday';
import { Advice } from '@/app/_controls/Advice';
import { Button } from '@/app/_controls/Button';
import { PageHead } from '@/app/_controls/PageHead';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { saveEverything } from '@/app/_keeping/saveEverything';
import type { ReadyMaker } from '@/app/_keeping/WithWorkspace';
import { notKeptText } from '@/app/_words/store/saveFailureWords';
import { currencyChoices } from '@/app/_workshop/currencyChoices';
import { localeChoices } from '@/app/_workshop/localeChoices';
import { exampleJobIds } from '@/lib/examples/exampleJobIds';
import { ownWorkshop } from '@/lib/examples/ownWorkshop';
import { type Home, homeOf } from '@/lib/examples/regionOf';
import { sameValue } from '@/lib/stored/sameValue';
import { typicalMoneyCurrencies } from '@/shared/tables/typicalRates';
import styles from './Start.module.css';
import { unitSets } from './unitSets';

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
  const units = unitSets.find(({ units: set }) => sameValue(set, home.units));
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
        <FieldGroup>
          <ChoiceField
            label="Your money"
            value={home.currency}
            choices={currencyChoices()}
            onCommit={(currency) => setHome({ ...home, currency })}
          />
          <ChoiceField
            label="Units at your bench"
            value={units?.name ?? null}
            choices={unitSets.map(({ name, label }) => ({ value: name, label }))}
            onCommit={(name) =>
              setHome({ ...home, units: unitSets.find((set) => set.name === name)?.units ?? home.units })
            }
          />
          <ChoiceField
            label="Numbers and dates as in"
            value={home.locale}
            choices={localeChoices(home.locale)}
            onCommit={(locale) => setHome({ ...home, locale })}
          />
        </FieldGroup>
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
