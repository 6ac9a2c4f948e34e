'use client';

import { Card } from '@/app/_controls/Card';
import { Disclosure } from '@/app/_controls/Disclosure';
import { LaterPart } from '@/app/_network/LaterPart';
import { laterParts } from '@/app/_runs/run/laterParts';
import styles from '@/app/_runs/run/Run.module.css';
import { MadeSection } from '@/app/_runs/run/sections/MadeSection';
import { WhenSection } from '@/app/_runs/run/sections/WhenSection';
import { runTable } from '@/app/_words/making/runs/runTable';
import type { BegunOnScreen } from './begunOnScreen';

/** What it was planned by, and how it would be planned now: nothing of it changes the run any more. */
export const NowFold = ({ on }: Readonly<{ on: BegunOnScreen }>) => (
  <div className={styles.below}>
    <Disclosure id="run-now" level={2} heading={runTable.nowFold} line={runTable.nowLine}>
      {on.troubles.length > 0 && (
        <LaterPart part={laterParts.troubles} what="What the run asks" props={{ on }} />
      )}
      <Card>
        <MadeSection on={on} numeral={1} />
        <WhenSection on={on} numeral={2} />
        <LaterPart part={laterParts.pace} what="The pace" props={{ on, numeral: 3 }} />
        {!on.facts.isClosed && (
          <>
            <LaterPart part={laterParts.checks} what="The checks" props={{ on, numeral: 4 }} />
            <LaterPart part={laterParts.goods} what="Stock and buying" props={{ on, numeral: 5 }} />
          </>
        )}
      </Card>
    </Disclosure>
  </div>
);
