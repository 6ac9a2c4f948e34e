import { overRunsTable } from '@/app/_words/afterRun/overRunsWords';
import { minorMoney } from '@/app/_words/orders/minorWords';
import type { ClosedRun } from '@/lib/variances/acrossRuns';
import { toMinor } from '@/shared/money';
import styles from './AfterRun.module.css';

type PayDrawingProps = Readonly<{ closed: readonly ClosedRun[]; currency: string; locale: string }>;

const STEP = 20;
const HIGH = 70;

/** Pay of an hour over time, a bar a run, beside a line for what was quoted; the table above says the same. */
export function PayDrawing({ closed, currency, locale }: PayDrawingProps) {
  const runs = closed.flatMap(({ runId, result: { came, quoted } }) =>
    came?.payPerHour == null ? [] : [{ runId, came: came.payPerHour, quoted: quoted?.payPerHour ?? null }],
  );
  if (runs.length < 2) return null;
  const all = runs.flatMap(({ came, quoted }) => [came, quoted ?? 0]);
  const [most, least] = [Math.max(0, ...all), Math.min(0, ...all)];
  if (most === least) return null;
  const scale = HIGH / (most - least);
  const y = (pay: number) => (most - pay) * scale;
  const wide = runs.length * STEP;
  return (
    <figure className={styles.pay}>
      <svg viewBox={`0 0 ${wide} ${HIGH}`} preserveAspectRatio="none" aria-hidden="true" focusable="false">
        {runs.map(({ runId, came, quoted }, at) => (
          <g key={runId}>
            <rect
              className={styles.made}
              x={at * STEP + 3}
              width={STEP - 6}
              y={Math.min(y(came), y(0))}
              height={Math.abs(came) * scale}
            />
            {quoted !== null && (
              <path className={styles.quoted} d={`M${at * STEP + 1} ${y(quoted)}h${STEP - 2}`} />
            )}
          </g>
        ))}
        <path className={styles.zero} d={`M0 ${y(0)}H${wide}`} />
      </svg>
      <figcaption className={styles.quiet}>
        {`${overRunsTable.pay}, up to ${minorMoney(toMinor(most, currency), currency, locale)}`}
      </figcaption>
    </figure>
  );
}
