import { classes } from '@/app/_controls/classes';
import { paySteps } from '@/app/_words/year/payWords';
import { bridgeScale } from '@/lib/variances/bridgeScale';
import type { YearStanding } from '@/lib/year/yearStanding';
import type { MinorUnits } from '@/shared/money';
import styles from './Year.module.css';

type PayBridgeProps = Readonly<{ standing: YearStanding; locale: string }>;

/** From takings to what is left for all hours, a bar a step; its figures say the same. */
export function PayBridge({ standing, locale }: PayBridgeProps) {
  const steps = paySteps(standing, locale);
  const moves = steps.slice(0, -1);
  // From nothing, so that the scale begins at 0 or lower and no bar is torn.
  const scale = bridgeScale(
    { from: 0 as MinorUnits, to: standing.leftMinor as MinorUnits },
    moves.map(({ minor }) => ({ minor: minor ?? 0 })),
  );
  return (
    <table className={styles.bridge}>
      <caption className="visuallyHidden">From takings to what is left</caption>
      <thead className="visuallyHidden">
        <tr>
          <th scope="col">Step</th>
          <th scope="col">Drawn</th>
          <th scope="col">{standing.currency}</th>
        </tr>
      </thead>
      <tbody>
        {steps.map(({ name, figure, minor, look }, at) => {
          const across = at === moves.length ? scale.to : scale.bars[at];
          return (
            <tr className={classes(look === 'ink' && styles.end)} key={name}>
              <th scope="row">{name}</th>
              <td className={styles.bar}>
                {across !== undefined && minor !== null && minor !== 0 && (
                  <svg viewBox="0 0 100 10" preserveAspectRatio="none" aria-hidden="true" focusable="false">
                    <rect className={styles[look]} x={across.x} width={across.width} height="10" />
                  </svg>
                )}
              </td>
              <td className={styles.amount}>{figure}</td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
