import type { OrderOnScreen } from '@/app/_order/orderOnScreen';
import { blanksCostWords, blanksNeededWords } from '@/app/_words/orders/waits/blanksNeededWords';
import { blanksOnScreen } from './blanksOnScreen';
import styles from './Waits.module.css';

/** How many blanks are to be bought and what they come to; nothing while that is not known. */
export function BlanksToBuy({ on }: Readonly<{ on: OrderOnScreen }>) {
  const { needed, cost } = blanksOnScreen(on);
  const told = needed.filter(({ get }) => get !== null);
  const money = blanksCostWords({ cost }, on.formatter);
  return (
    <>
      {told.map((one) => (
        <p key={one.blankId} className={styles.line}>
          {blanksNeededWords(one, on.formatter)}
        </p>
      ))}
      {told.length > 0 && money !== null && <p className={styles.line}>{money}</p>}
    </>
  );
}
