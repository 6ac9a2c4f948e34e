'use client';

import { useMemo, useState } from 'react';
import { CardSection } from '@/app/_controls/CardSection';
import { FoldRow } from '@/app/_controls/FoldRow';
import { LaterPart } from '@/app/_network/LaterPart';
import { pricesAnswer, priceWords } from '@/app/_words/stall/priceWords';
import { laterParts } from './laterParts';
import { endingsOf, type PricesPart as Part, priceWriter } from './pricesOnScreen';
import { usePrices } from './usePrices';

/** What is asked for at the stall: one price a size, sets, the last hour, and the papers that say so. */
export function PricesPart({ numeral, ...props }: Part & Readonly<{ numeral: number }>) {
  const { workspace, id, stallDay, answer } = props;
  const part = useMemo(() => ({ workspace, id, stallDay, answer }), [workspace, id, stallDay, answer]);
  const [, fives] = endingsOf(part);
  const [step, setStep] = useState(fives);
  const prices = usePrices(part, step);
  const rows = prices?.rows.map(({ row, price }) => ({ ...row, price })) ?? [];
  const both = { part, prices };
  return (
    <CardSection
      numeral={numeral}
      id="prices"
      heading={priceWords.heading}
      answer={
        rows.length === 0 ? priceWords.none : <strong>{pricesAnswer(rows, priceWriter(workspace))}</strong>
      }
    >
      <FoldRow
        place={`${id} prices`}
        folds={[
          {
            id: 'prices-rows',
            name: 'Each price and its neighbours',
            body: () => (
              <LaterPart
                part={laterParts.rows}
                what="The prices"
                props={{ ...both, step, onStep: setStep }}
              />
            ),
          },
          {
            id: 'prices-sets',
            name: 'Pairs and sets',
            body: () => <LaterPart part={laterParts.sets} what="The sets" props={both} />,
          },
          {
            id: 'prices-late',
            name: 'Last hour',
            body: () => <LaterPart part={laterParts.late} what="The last hour" props={both} />,
          },
          {
            id: 'prices-seconds',
            name: 'Seconds',
            body: () => <LaterPart part={laterParts.seconds} what="The price of seconds" props={both} />,
          },
          {
            id: 'prices-papers',
            fieldId: 'stall-prices-papers',
            holds: ['stall-prices-papers'],
            name: 'List and cards',
            body: () => <LaterPart part={laterParts.papers} what="The papers" props={both} />,
          },
        ]}
      />
    </CardSection>
  );
}
