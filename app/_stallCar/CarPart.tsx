'use client';

import { useMemo } from 'react';
import { CardSection } from '@/app/_controls/CardSection';
import { FoldRow } from '@/app/_controls/FoldRow';
import { LaterPart } from '@/app/_network/LaterPart';
import { formatterFor } from '@/app/_words/formatter';
import { carAnswer, carWords } from '@/app/_words/stall/carWords';
import { loadsOf } from '@/lib/stall/car/dayMoves';
import { piecesOf } from '@/lib/stall/car/planDifferences';
import { type CarOnScreen, carOnScreen, type StallPart, worthOf } from './carOnScreen';
import { FixPlan } from './FixPlan';
import { laterParts } from './laterParts';

/** What goes into the car and the tin: fixed, carried to the phone, and back. */
export function CarPart({ numeral, ...props }: StallPart & Readonly<{ numeral: number }>) {
  const { workspace, id, stallDay, answer, left, isOld, today } = props;
  const part = useMemo(
    () => ({ workspace, id, stallDay, answer, left, isOld, today }),
    [workspace, id, stallDay, answer, left, isOld, today],
  );
  const { stockMove } = workspace.entries;
  const loaded = useMemo(() => loadsOf(stockMove, id), [stockMove, id]);
  const car = useMemo(() => carOnScreen(part, loaded), [part, loaded]);
  const { counts } = car.plans;
  const line = carAnswer(
    counts === null ? null : { pieces: piecesOf(counts.body), day: counts.body.issuedOn },
    isToldOf(part, car) ? worthOf(counts?.body.float ?? car.float) : null,
    formatterFor(workspace.workshop),
  );
  const both = { part, car };
  return (
    <CardSection
      numeral={numeral}
      id="car"
      heading={carWords.heading}
      answer={
        <>
          <strong>{line.key}</strong>
          {line.after}
        </>
      }
    >
      <FixPlan {...both} />
      <FoldRow
        place={`${id} car`}
        folds={[
          {
            id: 'car-phone',
            name: 'To the phone and back',
            body: () => <LaterPart part={laterParts.phone} what="The way to the phone" props={both} />,
          },
          {
            id: 'car-float',
            name: 'The float',
            holds: ['stall-float'],
            body: () => <LaterPart part={laterParts.float} what="The float" props={both} />,
          },
          {
            id: 'car-take',
            name: 'Take along',
            body: () => <LaterPart part={laterParts.take} what="The list to take along" props={{ part }} />,
          },
          {
            id: 'car-paper',
            fieldId: 'stall-car-paper',
            holds: ['stall-car-paper'],
            name: 'List to load by',
            body: () => <LaterPart part={laterParts.paper} what="The list to load by" props={both} />,
          },
        ]}
      />
    </CardSection>
  );
}

// Helpers

/** Whether it is known what goes into the tin: fixed, typed or advised. */
const isToldOf = ({ stallDay }: StallPart, { plans, advice }: CarOnScreen): boolean =>
  plans.counts !== null || stallDay.float.coins !== null || advice.kind === 'advised';
