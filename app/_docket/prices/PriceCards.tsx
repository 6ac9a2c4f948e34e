'use client';

import { classes } from '@/app/_controls/classes';
import { useTextContext } from '@/app/_fields/useTextContext';
import { amountWords } from '@/app/_words/amountWords';
import { listMoney, type PriceVoice } from '@/app/_words/docket/pricesWords';
import { sizesWords } from '@/app/_words/docket/sizesWords';
import { formatterFor } from '@/app/_words/formatter';
import type { TablePrice } from '@/lib/price/priceTable';
import type { PriceEndings } from '@/lib/studies/breaks/priceEndings';
import styles from './PriceCards.module.css';
import type { PriceGroup } from './priceGrid';

type PriceCardsProps = Readonly<{
  groups: readonly PriceGroup[];
  /** The neighbours of the first price on the maker's ending; null where they are not known. */
  endings: PriceEndings | null;
  taxSaid: string;
  voice: PriceVoice;
}>;

/** One price a size as cards: what it leaves and pays, and beside the first its neighbours on the ending. */
export function PriceCards({ groups, endings, taxSaid, voice }: PriceCardsProps) {
  const context = useTextContext();
  const formatter = formatterFor(context);
  const pay = (amount: number) => `pays ${amountWords(amount, voice.currency, context.locale)} an hour`;
  const cardOf = (cell: TablePrice) => ({
    price: cell.price,
    margin: cell.margin,
    payPerHour: cell.payPerHour,
    breakEvenAt: null as number | null,
    stands: true,
  });
  return (
    <div className={styles.groups}>
      {groups.map(({ sizes, cells }, at) => {
        const [cell] = cells;
        if (cell === undefined) return null;
        const around =
          at === 0 && endings !== null
            ? [endings.below, endings.above].flatMap((one) =>
                one === null || one.price === cell.price ? [] : [{ ...one, stands: false }],
              )
            : [];
        const cards = [cardOf(cell), ...around].sort((a, b) => a.price - b.price);
        return (
          <section className={styles.group} key={sizes.join(' ')} aria-label={sizesWords(sizes)}>
            <h3 className={styles.sizes}>
              {sizesWords(sizes)}, {taxSaid}
            </h3>
            <ul className={styles.cards}>
              {cards.map((card) => (
                <li className={classes(styles.card, card.stands && styles.stands)} key={card.price}>
                  <span className={styles.price}>{listMoney(card.price, voice)}</span>
                  <span>leaves {formatter.share(card.margin)}</span>
                  <span>{pay(card.payPerHour)}</span>
                  {card.breakEvenAt !== null && (
                    <span>pays its way from {formatter.number(card.breakEvenAt, 0)}</span>
                  )}
                </li>
              ))}
            </ul>
          </section>
        );
      })}
    </div>
  );
}
