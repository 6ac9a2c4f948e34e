'use client';

import { classes } from '@/app/_controls/classes';
import { useTextContext } from '@/app/_fields/useTextContext';
import { amountWords } from '@/app/_words/amountWords';
import { listMoney, type PriceVoice } from '@/app/_words/docket/pricesWords';
import { sizesWords } from '@/app/_words/docket/sizesWords';
import { formatterFor } from '@/app/_words/formatter';
import type { Offer, OfferedSizes } from '@/lib/price/offer';
import type { PriceNeighbours } from '@/lib/studies/breaks/priceNeighbours';
import styles from './PriceCards.module.css';

type PriceCardsProps = Readonly<{
  /** What is asked for each size, else what is suggested. */
  offered: readonly OfferedSizes[];
  /** What the whole job leaves by it. */
  whole: Pick<Offer, 'margin' | 'payPerHour'>;
  /** Of the first price on the maker's ending; null where they are not known. */
  neighbours: PriceNeighbours | null;
  taxSaid: string;
  voice: PriceVoice;
}>;

/**
 * One price a size as cards, and beside the first its neighbours on the ending. The first tells what the whole job
 * leaves, as the head does and as its neighbours do; of other sizes what a piece of them leaves.
 */
export function PriceCards({ offered, whole, neighbours, taxSaid, voice }: PriceCardsProps) {
  const context = useTextContext();
  const formatter = formatterFor(context);
  const pay = (amount: number) => `pays ${amountWords(amount, voice.currency, context.locale)} an hour`;
  return (
    <div className={styles.groups}>
      {offered.map(({ sizes, ...own }, at) => {
        const around =
          at === 0 && neighbours?.each === own.price
            ? [neighbours.below, neighbours.above].flatMap((one) => one ?? [])
            : [];
        const stands = {
          ...own,
          ...(at === 0 ? { margin: whole.margin, payPerHour: whole.payPerHour } : {}),
        };
        const cards = [{ ...stands, breakEvenAt: null }, ...around].toSorted((a, b) => a.price - b.price);
        return (
          <section className={styles.group} key={sizes.join(' ')} aria-label={sizesWords(sizes)}>
            <h3 className={styles.sizes}>
              {sizesWords(sizes)}, {taxSaid}
            </h3>
            <ul className={styles.cards}>
              {cards.map(({ price, margin, payPerHour, breakEvenAt }) => (
                <li
                  className={classes(styles.card, price === own.price && styles.stands)}
                  aria-current={price === own.price || undefined}
                  key={price}
                >
                  <span className={styles.price}>{listMoney(price, voice)}</span>
                  <span>leaves {formatter.share(margin)}</span>
                  <span>{pay(payPerHour)}</span>
                  {breakEvenAt !== null && <span>pays its way from {formatter.number(breakEvenAt, 0)}</span>}
                </li>
              ))}
            </ul>
          </section>
        );
      })}
    </div>
  );
}
