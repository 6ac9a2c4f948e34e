import { FindingRow } from '@/app/_controls/FindingRow';
import type { OrderOnScreen } from '@/app/_order/orderOnScreen';
import type { PaperTab } from '@/app/_words/orders/papers/paperTabWords';
import { doubledWords, NOTHING_OWED, overGivenWords } from '@/app/_words/orders/waits/billTroubleWords';
import { billTroubles } from '@/lib/orders/billTroubles';
import styles from './Waits.module.css';

type BillTroublesProps = Readonly<{ on: OrderOnScreen; onPaper: (tab: PaperTab) => void }>;

/** What invoices and credit notes come to that devices wrote which had not heard of each other. */
export function BillTroubles({ on, onPaper }: BillTroublesProps) {
  const { facts, standing, locale } = on;
  const { doubled, overGiven, isNothingOwed } = billTroubles(facts.happened, standing);
  if (doubled.length === 0 && overGiven.length === 0 && !isNothingOwed) return null;
  const creditNotes = { label: 'Credit notes', onFix: () => onPaper('creditNote') };
  return (
    <ul className={styles.standing}>
      {doubled.length > 0 && (
        <FindingRow severity="caution" {...doubledWords(doubled, locale)} fix={creditNotes} />
      )}
      {overGiven.map((bill) => (
        <FindingRow
          key={bill.paper.id}
          severity="caution"
          {...overGivenWords(bill, locale)}
          fix={creditNotes}
        />
      ))}
      {isNothingOwed && (
        <FindingRow
          severity="caution"
          {...NOTHING_OWED}
          fix={{ label: 'Invoice', onFix: () => onPaper('invoice') }}
        />
      )}
    </ul>
  );
}
