'use client';

import { FoldRow } from '@/app/_controls/FoldRow';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import styles from '@/app/_supply/Supply.module.css';
import { askedWords, leftOverWords, leftWords, purchaseWords } from '@/app/_words/supply/buyingWords';
import type { BuyingPlan, BuyingRow, Purchase } from '@/lib/buying/buyingPlan';
import { stockKey } from '@/lib/stock/stockKey';
import type { BuyingOnScreen } from './buyingOnScreen';

type PlannedProps = Readonly<{ on: BuyingOnScreen; plan: BuyingPlan }>;

/** What is behind a list: where each thing is bought, what else would do, what is left, what customers bring. */
export function BuyingFolds({ on, plan }: PlannedProps) {
  const withChoice = plan.rows.filter(({ offers, substitutes }) => offers.length + substitutes.length > 1);
  const left = plan.rows.filter((row) => row.left > 0);
  return (
    <FoldRow
      place={`buying ${on.listId}`}
      folds={[
        ...(left.length === 0
          ? []
          : [{ id: 'left', name: 'What is left over', body: () => <Left {...{ on, plan }} rows={left} /> }]),
        ...(withChoice.length === 0
          ? []
          : [
              {
                id: 'where',
                name: 'Where it is bought',
                body: () => (
                  <div className={styles.rows}>
                    {withChoice.map((row) => (
                      <WhereField key={stockKey(row.item)} {...{ on, row }} />
                    ))}
                  </div>
                ),
              },
            ]),
        ...(plan.asked.length === 0
          ? []
          : [{ id: 'asked', name: 'What customers bring', body: () => <Asked {...{ on, plan }} /> }]),
      ]}
    />
  );
}

// Helpers

function Left({ on, plan, rows }: PlannedProps & { readonly rows: readonly BuyingRow[] }) {
  const { formatter, locale, nameOf } = on.supply;
  return (
    <>
      <p>{leftWords(plan, locale)}</p>
      <ul>
        {rows.map(({ item, left }) => (
          <li key={stockKey(item)}>
            {leftOverWords(left, formatter)} × {nameOf(item)}
          </li>
        ))}
      </ul>
    </>
  );
}

const CHEAPEST = 'cheapest';

function WhereField({ on, row }: Readonly<{ on: BuyingOnScreen; row: BuyingRow }>) {
  const { nameOf, supplierName, formatter, locale, workspace } = on.supply;
  const name = nameOf(row.item);
  const chosen = on.list.chosen.find(({ item }) => stockKey(item) === stockKey(row.item));
  const offers = [...row.offers, ...row.substitutes].filter(isOffered);
  const words = (offer: Purchase) =>
    purchaseWords(
      offer,
      {
        supplier: supplierName(offer.supplierId),
        instead: stockKey(offer.item) === stockKey(row.item) ? null : nameOf(offer.item),
      },
      { currency: workspace.workshop.currency, formatter, locale },
    );
  return (
    <ChoiceField
      label={name}
      width="full"
      value={chosen?.offerId ?? CHEAPEST}
      choices={[
        { value: CHEAPEST, label: 'Where it costs least' },
        ...offers.map((offer) => ({ value: offer.offerId, label: words(offer) })),
      ]}
      onCommit={(offerId) => {
        const offer = offers.find((one) => one.offerId === offerId);
        on.choose(
          name,
          row.item,
          offer === undefined ? null : { supplierId: offer.supplierId, offerId: offer.offerId },
        );
      }}
    />
  );
}

type Offered = Purchase & { readonly supplierId: string; readonly offerId: string };

const isOffered = (one: Purchase): one is Offered => one.supplierId !== null && one.offerId !== null;

function Asked({ on, plan }: PlannedProps) {
  return (
    <ul>
      {plan.asked.map((one) => (
        <li key={`${one.jobId} ${one.lineId}`}>{askedWords(one, on.supply.formatter)}</li>
      ))}
    </ul>
  );
}
