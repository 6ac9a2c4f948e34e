import { classes } from '@/app/_controls/classes';
import type { EveningOnScreen } from '@/app/_evening/eveningOnScreen';
import styles from './Slips.module.css';

/** Older fairs tell no more. */
const MOST_SHOWN = 5;

type ComparedProps = Readonly<{ on: Pick<EveningOnScreen, 'evening' | 'past' | 'formatter'> }>;

/** What an hour brought at this fair and at others, beside the wage that is wanted. */
export function FairsCompared({ on }: ComparedProps) {
  const { evening, past, formatter } = on;
  const { plan, result } = evening;
  const others = past.flatMap(({ stallDayId, name, payPerHour }) =>
    payPerHour === null ? [] : [{ id: stallDayId, name, pay: payPerHour, isOwn: false }],
  );
  if (result.payPerHour === null) return null;
  const fairs = [
    { id: plan.stallDayId, name: plan.title, pay: result.payPerHour, isOwn: true },
    ...others.slice(0, MOST_SHOWN),
  ];
  const most = Math.max(plan.costs.wage, ...fairs.map(({ pay }) => pay)) || 1;
  const wage = (plan.costs.wage / most) * 100;
  return (
    <table className={styles.table}>
      <caption className={styles.caption}>
        {`${plan.currency} an hour; wage wanted, ${formatter.number(plan.costs.wage)}`}
      </caption>
      <tbody>
        {fairs.map(({ id, name, pay, isOwn }) => (
          <tr key={id}>
            <th scope="row">{name}</th>
            <td className={styles.bar}>
              <svg viewBox="0 0 100 10" preserveAspectRatio="none" aria-hidden="true" focusable="false">
                <rect
                  className={classes(isOwn ? styles.own : styles.planned)}
                  width={Math.max(0.6, (pay / most) * 100)}
                  height="10"
                />
                <path className={styles.wage} d={`M${wage} 0V10`} />
              </svg>
            </td>
            <td>{formatter.number(pay, 0)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
