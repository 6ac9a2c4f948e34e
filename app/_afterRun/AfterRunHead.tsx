import { doubtTable } from '@/app/_words/afterRun/afterRunWords';
import type { Formatter } from '@/app/_words/formatter';
import { minorWords } from '@/app/_words/orders/minorWords';
import type { RunResult } from '@/lib/variances/runResult';
import { toMinor } from '@/shared/money';
import styles from './AfterRun.module.css';

type AfterRunHeadProps = Readonly<{
  result: RunResult;
  formatter: Formatter;
  locale: string;
  /** A time that was noted is hardly so: pay and profit rest on it. */
  isDoubtful: boolean;
}>;

/** What an hour of the run paid, and what is left of the profit. */
export function AfterRunHead({ result, formatter, locale, isDoubtful }: AfterRunHeadProps) {
  const { bridge, came, quoted, currency } = result;
  const money = (amount: number) => minorWords(toMinor(amount, currency), currency, locale);
  if (bridge === null || came === null || quoted === null)
    return (
      <p className={styles.head}>
        No price was asked when it began, so it has no profit to compare. The gaps below are of its costs.
      </p>
    );
  return (
    <dl className={styles.head}>
      {isDoubtful && (
        <div className={styles.doubt}>
          <dt>{doubtTable.head}</dt>
          <dd>{doubtTable.why}</dd>
        </div>
      )}
      {came.payPerHour !== null && (
        <Figure
          name={isDoubtful ? doubtTable.pay : 'it paid you an hour'}
          value={money(came.payPerHour)}
          isFirst={!isDoubtful}
        />
      )}
      {quoted.payPerHour !== null && <Figure name="as quoted" value={money(quoted.payPerHour)} />}
      <Figure
        name={`profit, of ${minorWords(bridge.from, currency, locale)} quoted`}
        value={minorWords(bridge.to, currency, locale)}
        isFirst={!isDoubtful}
      />
      {came.margin !== null && quoted.margin !== null && (
        <div className={styles.margin}>
          <dt>margin</dt>
          <dd>{`${formatter.share(came.margin)}, quoted ${formatter.share(quoted.margin)}`}</dd>
        </div>
      )}
    </dl>
  );
}

// Helpers

const Figure = ({ name, value, isFirst = false }: { name: string; value: string; isFirst?: boolean }) => (
  <div className={isFirst ? styles.figure : styles.other}>
    <dt>{name}</dt>
    <dd>{value}</dd>
  </div>
);
