import type { OrderOnScreen } from '@/app/_order/orderOnScreen';
import { blanksOnScreen } from '@/app/_order/waits/blanksOnScreen';
import { blanksAheadWords } from '@/app/_words/orders/waits/blanksNeededWords';
import styles from './Money.module.css';

/** What will be laid out for blanks that are still to be ordered, beside the deposit; nothing while it is not known. */
export function BlanksAhead({ on }: Readonly<{ on: OrderOnScreen }>) {
  const { currency, depositMinor } = on.standing.money;
  // What jobs reckon is in the currency of the workshop; a deposit in another cannot be held against it.
  const isAlike = currency === on.workspace.workshop.currency;
  const deposit = { currency, depositMinor: isAlike ? depositMinor : null };
  const told = blanksAheadWords(blanksOnScreen(on), deposit, on.formatter, on.locale);
  return told === null ? null : (
    <p className={told.isShort ? styles.caution : styles.quiet}>{told.sentence}</p>
  );
}
