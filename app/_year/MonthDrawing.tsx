import { minorMoney } from '@/app/_words/orders/minorWords';
import { monthName } from '@/app/_words/year/yearNames';
import type { YearStanding } from '@/lib/year/yearStanding';
import styles from './Year.module.css';

type MonthDrawingProps = Readonly<{ standing: Pick<YearStanding, 'months' | 'currency'>; locale: string }>;

const WIDE = 240;
const HIGH = 70;
const STEP = WIDE / 12;

/** Takings up and expenses down, month by month; the table says the same. */
export function MonthDrawing({ standing: { months, currency }, locale }: MonthDrawingProps) {
  const all = months.flatMap(({ takingsMinor, expensesMinor }) => [takingsMinor, -expensesMinor]);
  const [most, least] = [Math.max(0, ...all), Math.min(0, ...all)];
  if (most === 0 && least === 0) return null;
  const scale = HIGH / (most - least);
  const zero = most * scale;
  const bar = (minor: number) => ({ y: zero - Math.max(0, minor) * scale, height: Math.abs(minor) * scale });
  return (
    <figure className={styles.months}>
      <svg viewBox={`0 0 ${WIDE} ${HIGH}`} preserveAspectRatio="none" aria-hidden="true" focusable="false">
        {months.map(({ from, takingsMinor, expensesMinor }, at) => (
          <g key={from}>
            <rect className={styles.came} x={at * STEP + 3} width={STEP - 6} {...bar(takingsMinor)} />
            <rect className={styles.went} x={at * STEP + 3} width={STEP - 6} {...bar(-expensesMinor)} />
          </g>
        ))}
        <path className={styles.zero} d={`M0 ${zero}H${WIDE}`} />
      </svg>
      <div className={styles.monthNames} aria-hidden="true">
        {months.map(({ from }) => (
          <span key={from}>{monthName(from, locale).slice(0, 1)}</span>
        ))}
      </div>
      <figcaption className={styles.quiet}>Above the line takings, beneath it expenses</figcaption>
      {/* A table is as wide as its cells, hidden or not: only what holds it can cut it off. */}
      <div className="visuallyHidden">
        <table>
          <caption>Takings and expenses by month</caption>
          <tbody>
            {months.map(({ from, takingsMinor, expensesMinor }) => (
              <tr key={from}>
                <th scope="row">{monthName(from, locale, 'long')}</th>
                <td>{minorMoney(takingsMinor, currency, locale)}</td>
                <td>{minorMoney(expensesMinor, currency, locale)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </figure>
  );
}
