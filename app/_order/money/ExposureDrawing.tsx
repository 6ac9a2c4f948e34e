import { minorMoney } from '@/app/_words/orders/minorWords';
import { lowestWords } from '@/app/_words/orders/money/orderMoneyWords';
import { shortDay } from '@/app/_words/orders/orderDayWords';
import type { Exposure } from '@/lib/orders/money/exposure';
import { daysBetween } from '@/shared/days';
import styles from './Money.module.css';

type ExposureDrawingProps = Readonly<{ exposure: Exposure; currency: string; today: string; locale: string }>;

const WIDE = 200;
const HIGH = 60;

/** What came less what was spent, day by day: a step line over a line of nothing, the maker’s own money hatched. */
export function ExposureDrawing({ exposure, currency, today, locale }: ExposureDrawingProps) {
  const { points, lowest } = exposure;
  const [first, last] = [points.at(0), points.at(-1)];
  if (first === undefined || last === undefined || lowest === null) return null;
  const days = Math.max(1, daysBetween(first.day, last.day));
  const most = Math.max(0, ...points.map(({ balanceMinor }) => balanceMinor));
  const least = Math.min(0, lowest.balanceMinor);
  const range = most - least || 1;
  const across = (day: string) => (daysBetween(first.day, day) / days) * (WIDE - 20) + 10;
  const down = (minor: number) => 5 + ((most - minor) / range) * (HIGH - 10);
  const zero = down(0);
  const steps = points.map(({ day, balanceMinor }) => `H${across(day)}V${down(balanceMinor)}`).join('');
  const line = `M0 ${zero}${steps}H${WIDE}`;
  return (
    <figure className={styles.exposure}>
      <svg viewBox={`0 0 ${WIDE} ${HIGH}`} preserveAspectRatio="none" aria-hidden="true" focusable="false">
        <path className={styles.area} d={`${line}V${zero}Z`} />
        <path className={styles.nothing} d={`M0 ${zero}H${WIDE}`} />
        <path className={styles.balance} d={line} />
        {least < 0 && (
          <path className={styles.lowest} d={`M${across(lowest.day)} ${zero}V${down(lowest.balanceMinor)}`} />
        )}
      </svg>
      <figcaption className={styles.ends}>
        <span>{shortDay(first.day, today, locale)}</span>
        <span>line: nothing in it</span>
        <span>{shortDay(last.day, today, locale)}</span>
      </figcaption>
      <p>{lowestWords(exposure, currency, today, locale)}</p>
      <table className="visuallyHidden">
        <caption>What came less what was spent</caption>
        <tbody>
          {points.map(({ day, balanceMinor }) => (
            <tr key={day}>
              <th scope="row">{shortDay(day, today, locale)}</th>
              <td>{minorMoney(balanceMinor, currency, locale)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </figure>
  );
}
