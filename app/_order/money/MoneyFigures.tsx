import { minorWords } from '@/app/_words/orders/minorWords';
import type { OrderMoney } from '@/lib/orders/money/orderMoney';
import type { Settlement } from '@/lib/orders/money/settlement';
import styles from './Money.module.css';

type MoneyFiguresProps = Readonly<{
  money: OrderMoney;
  /** What is to be settled of an order that was called off; null where it goes on. */
  left: Settlement | null;
  locale: string;
}>;

/** The figures of an order’s money; what nobody has agreed yet stands as a dash and never as 0. */
export function MoneyFigures({ money, left, locale }: MoneyFiguresProps) {
  const { currency, totalMinor, depositMinor, depositOpenMinor, spentMinor, receivedMinor, dueMinor } = money;
  const figures: readonly { readonly label: string; readonly minor: number | null }[] = [
    { label: `total with tax, ${currency}`, minor: totalMinor },
    { label: depositOpenMinor === 0 ? 'deposit, here' : 'deposit before you buy', minor: depositMinor },
    { label: 'spent', minor: spentMinor },
    { label: 'came in', minor: receivedMinor },
    left !== null && left.heldMinor > 0
      ? { label: 'held', minor: left.heldMinor }
      : { label: 'owed', minor: left === null ? dueMinor : left.openMinor },
  ];
  return (
    <dl className={styles.figures}>
      {figures.map(({ label, minor }) => (
        <div key={label} className={styles.figure}>
          <dt>{label}</dt>
          <dd>
            {minor === null ? (
              <>
                <span aria-hidden="true">–</span>
                <span className="visuallyHidden">not agreed yet</span>
              </>
            ) : (
              minorWords(minor, currency, locale)
            )}
          </dd>
        </div>
      ))}
    </dl>
  );
}
