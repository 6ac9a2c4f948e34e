'use client';

import { classes } from '@/app/_controls/classes';
import { goneAskedWords } from '@/app/_words/stall/count/countWords';
import { goodsKey } from '@/lib/stall/goodsKey';
import styles from './Foot.module.css';
import type { TileRow } from './tileRows';
import type { Counting } from './useCount';

/** After a gone tile was counted as asked for: it was there all the same, and the tap becomes a sale. */
export function SoldEvenSo({ counting, rows }: Readonly<{ counting: Counting; rows: readonly TileRow[] }>) {
  const { count, ticket, tapInstead } = counting;
  const last = ticket.last?.body.tap;
  if (last?.what !== 'asked' || last.goods === null) return null;
  const { goods } = last;
  const key = goodsKey(goods);
  const sold = rows.flatMap(({ tiles }) => tiles).find((one) => one.key === key);
  const left = count.goods.find((one) => goodsKey(one) === key)?.left ?? 0;
  if (sold === undefined || left > 0) return null;
  return (
    <button
      type="button"
      className={classes(styles.key, styles.evenSo)}
      onClick={() => tapInstead({ what: 'sale', goods, minor: sold.minor, pay: ticket.pay })}
    >
      {goneAskedWords.sold}
      <span className={classes(styles.small, styles.line)}>{goneAskedWords.of(sold.name, sold.price)}</span>
      <span className="visuallyHidden">{goneAskedWords.why}</span>
    </button>
  );
}
