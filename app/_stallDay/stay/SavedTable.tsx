import type { StallOnScreen } from '@/app/_stallDay/stallOnScreen';
import { hoursWords } from '@/app/_words/minutesWords';
import { timesFeeWords } from '@/app/_words/stall/feeWords';
import { notKnownYet } from '@/app/_words/stall/stallPlanWords';
import { dayCosts, moneyOf, stallFeeOf } from '@/lib/stall/plan/costs/dayCosts';
import styles from './Stay.module.css';

/** Each cost of the day: saved by staying, or paid either way. */
export function SavedTable({ on }: Readonly<{ on: StallOnScreen }>) {
  const { stallDay, workspace, plan, amount, formatter } = on;
  const { workshop } = workspace;
  const told = (money: number | null) => (money === null ? 'not told' : amount(money));
  // By the same figures as the rows: those of the last plan may be older.
  const costs = dayCosts(stallDay, workshop);
  const { wage } = workshop.rates;
  const timesFee =
    plan === null
      ? null
      : timesFeeWords(
          'Takings to expect',
          plan.mine.weighted.takings,
          stallFeeOf(stallDay, workshop),
          formatter,
        );
  const hours = stallDay.hours.reduce((sum, one) => sum + one.hours, 0);
  return (
    <div className={styles.saved}>
      <p className={styles.words}>
        Goods that are made are paid for either way, and so is what is sunk. Only what staying at home saves
        counts against going.
      </p>
      <table>
        <thead>
          <tr>
            <th scope="col">cost</th>
            <th scope="col">saved</th>
            <th scope="col">paid either way</th>
          </tr>
        </thead>
        <tbody>
          {stallDay.costs.map((cost) => (
            <tr key={cost.id}>
              <th scope="row">{cost.what}</th>
              <td>{cost.kind === 'avoidable' && told(moneyOf(cost, workshop))}</td>
              <td>{cost.kind === 'sunk' && told(moneyOf(cost, workshop))}</td>
            </tr>
          ))}
          <tr>
            <th scope="row">your pay, {hoursWords(hours, on.locale)}</th>
            <td>{told(wage === null ? null : hours * wage.value)}</td>
            <td />
          </tr>
          <tr>
            <th scope="row">in all</th>
            {costs === null ? (
              <td colSpan={2}>{notKnownYet}</td>
            ) : (
              <>
                <td>
                  <strong>{amount(costs.avoidable + costs.hours * costs.wage)}</strong>
                </td>
                <td>
                  <strong>{amount(costs.sunk)}</strong>
                </td>
              </>
            )}
          </tr>
        </tbody>
      </table>
      {timesFee !== null && <p className={styles.words}>{timesFee}</p>}
    </div>
  );
}
