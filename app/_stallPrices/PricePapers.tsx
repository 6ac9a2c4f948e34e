'use client';

import { useMemo, useState } from 'react';
import { CheckField } from '@/app/_fields/CheckField';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { PaperToPrint } from '@/app/_papers/PaperToPrint';
import { clockWords } from '@/app/_words/clockWords';
import { planActs } from '@/app/_words/stall/dayWords';
import { priceWords, setLeftOutWords } from '@/app/_words/stall/priceWords';
import type { StallPricesBody } from '@/lib/papers/bodies/stallPricesPaper';
import type { PricesOfDay } from '@/lib/stall/prices/pricesOfDay';
import styles from './Prices.module.css';
import { type PricesPart, priceWriter } from './pricesOnScreen';
import { stallPricesBody } from './stallPricesBody';

type PricePapersProps = Readonly<{ part: PricesPart; prices: PricesOfDay | null }>;

/** The list for the table and the cards beside the goods, for the day and for its last hour. */
export function PricePapers({ part, prices }: PricePapersProps) {
  const { workspace, stallDay } = part;
  const { workshop, readFile } = workspace;
  const { lastHour } = stallDay.prices;
  const [kind, setKind] = useState<'tableList' | 'priceCards'>('tableList');
  const [when, setWhen] = useState<'day' | 'late'>('day');
  const [page, setPage] = useState<StallPricesBody['page']>(workshop.units.length === 'in' ? 'letter' : 'a4');
  const [offersOrders, setOffersOrders] = useState(true);
  const isLate = when === 'late' && lastHour !== null;
  const source = useMemo(() => {
    const { sets } = prices ?? { sets: [] };
    const body = stallPricesBody(part, { page, offersOrders, isLate, sets });
    return body === null ? null : ({ kind, body } as const);
  }, [part, prices, page, offersOrders, isLate, kind]);
  if (prices === null || source === null) return <p>{priceWords.none}</p>;
  return (
    <div className={styles.rows}>
      <FieldGroup pairs>
        <ChoiceField
          label="Paper"
          value={kind}
          choices={[
            { value: 'tableList', label: planActs.table },
            { value: 'priceCards', label: 'Price cards' },
          ]}
          onCommit={setKind}
        />
        <ChoiceField
          label="Printed on"
          value={page}
          choices={[
            { value: 'a4', label: 'A4' },
            { value: 'letter', label: 'Letter' },
          ]}
          onCommit={setPage}
        />
        {lastHour !== null && (
          <ChoiceField
            label="Prices of"
            value={when}
            choices={[
              { value: 'day', label: 'the day' },
              { value: 'late', label: `from ${clockWords(lastHour.fromMinute, workshop.locale)}` },
            ]}
            onCommit={setWhen}
          />
        )}
      </FieldGroup>
      {kind === 'tableList' && (
        <CheckField label={priceWords.offersOrders} checked={offersOrders} onCommit={setOffersOrders} />
      )}
      {isLate &&
        prices.sets.map(({ set, lateSingles }) =>
          lateSingles === null ? null : (
            <p key={set.id}>{setLeftOutWords(set.name, lateSingles, priceWriter(workspace))}</p>
          ),
        )}
      <PaperToPrint
        {...{ source, readFile }}
        words={workshop.papers.words}
        spoken={kind === 'tableList' ? 'the list for the table' : 'the price cards'}
      />
    </div>
  );
}
