'use client';

import { type ReactNode, useMemo, useState } from 'react';
import { Card } from '@/app/_controls/Card';
import { LaterPart } from '@/app/_network/LaterPart';
import type { RunOnScreen } from '@/app/_runBook/runOnScreen';
import { laterParts } from '@/app/_runs/run/laterParts';
import { IndexedSections } from '@/app/_sections/IndexedSections';
import { begunStates } from '@/app/_words/making/runs/runStates';
import { begunSections } from '@/app/_words/making/runs/runTable';
import { foldPressings } from '@/lib/pressing/foldPressings';
import type { RunStandard } from '@/shared/schemas/making/runPapers';
import { BegunPlate } from './BegunPlate';
import type { BegunOnScreen } from './begunOnScreen';
import { FrozenClock } from './FrozenClock';
import { FrozenSection } from './FrozenSection';
import { NowFold } from './NowFold';
import { OrderOffers } from './OrderOffers';

type BegunRunProps = Readonly<{
  on: RunOnScreen;
  standard: RunStandard;
  /** What is to be minded before anything else. */
  note: ReactNode;
}>;

/** A run that was begun: how far it is, then sizes, clock and sheet as they were frozen; its plan of now is folded away. */
export function BegunRun({ on: run, standard, note }: BegunRunProps) {
  const { pressings, blankFaults } = run.facts;
  const pressed = useMemo(
    () => foldPressings(standard, pressings, blankFaults),
    [standard, pressings, blankFaults],
  );
  const on: BegunOnScreen = { ...run, standard, pressed };
  const [isSheetOpen, setSheetOpen] = useState(false);
  return (
    <>
      <BegunPlate on={on} />
      {note}
      {!on.facts.isClosed && on.run.archivedOn === null && (
        <LaterPart part={laterParts.late} what="What is done too late" props={{ on }} />
      )}
      <OrderOffers on={on} />
      <IndexedSections
        label="Sections of this run"
        sections={begunSections}
        states={begunStates(on)}
        isUnderBar={false}
        isSheetOpen={isSheetOpen}
        onSheet={setSheetOpen}
      >
        <Card>
          <FrozenSection on={on} numeral={1} />
          <FrozenClock on={on} numeral={2} />
          <LaterPart part={laterParts.paper} what="The run sheet" props={{ on, numeral: 3 }} />
        </Card>
      </IndexedSections>
      <NowFold on={on} />
    </>
  );
}
