import { HeatFigure } from '@/app/_controls/HeatFigure';
import { breakEvenMarks } from '@/app/_stallDay/head/breakEvenMarks';
import { PiecesRuler } from '@/app/_stallDay/head/PiecesRuler';
import styles from '@/app/_stallDay/head/StallPlate.module.css';
import type { Formatter } from '@/app/_words/formatter';
import { closedAgainst, closedSold, decisionWords } from '@/app/_words/stall/closedWords';
import { payWords } from '@/app/_words/stall/stallHeadWords';
import { fromMinor, type MinorUnits } from '@/shared/money';
import type { DayClose, StallPlan } from '@/shared/schemas/stallPapers';

/** What a closed day is told by: its close, the plan it was counted by, and how figures are written. */
export interface ClosedTold {
  readonly close: DayClose;
  /** Null where it is not on this device. */
  readonly plan: StallPlan | null;
  readonly amount: (money: number) => string;
  readonly formatter: Formatter;
  readonly locale: string;
}

/** What came of a day: profit, pay, pieces, whether to go again. */
export function ClosedPlate({ close, plan, amount, formatter, locale }: ClosedTold) {
  const { result, money, currency, decision } = close;
  const pay = payWords(result.payPerHour, result.hours + result.benchHours, { formatter, locale });
  const sold = close.goods.reduce((sum, one) => sum + one.sold, 0);
  return (
    <section className={styles.plate} aria-label="What came of it">
      <div>
        <p className={styles.expect}>
          {result.profit === null ? (
            <span>What it left is not known: see the evening.</span>
          ) : (
            <>
              <span className={styles.figure}>
                <HeatFigure text={amount(result.profit)} face="display" />
              </span>{' '}
              <span className={styles.under}>{closedAgainst(close, plan, amount)}</span>
            </>
          )}
        </p>
        {pay !== null && (
          <p>
            paid you about <strong className={styles.pay}>{pay.figure}</strong> {pay.after}
          </p>
        )}
      </div>
      <PiecesRuler
        breakEvens={breakEvenMarks(plan?.breakEven ?? null)}
        weathers={[{ id: 'sold', label: 'sold', value: sold }]}
        format={(pieces) => formatter.number(pieces, 0)}
      />
      <div className={styles.verdict}>
        <p className={styles.go}>{decision === null ? 'Not decided yet' : decisionWords[decision]}</p>
        <p className={styles.quiet}>
          <strong>{amount(fromMinor(money.gross as MinorUnits, currency))}</strong> taken,{' '}
          {closedSold(close, formatter)}
        </p>
      </div>
    </section>
  );
}
