import Link from 'next/link';
import { causeWords, gapWords } from '@/app/_words/afterRun/gapWords';
import type { Formatter } from '@/app/_words/formatter';
import { minorWords } from '@/app/_words/orders/minorWords';
import { type ClosedRun, linesOverRuns } from '@/lib/variances/acrossRuns';
import { toMinor } from '@/shared/money';
import styles from './AfterRun.module.css';

type OverRunsProps = Readonly<{ closed: readonly ClosedRun[]; formatter: Formatter; locale: string }>;

/** What keeps going wrong, and what each run paid beside what it was quoted at. */
export function OverRuns({ closed, formatter, locale }: OverRunsProps) {
  const currency = closed[0]?.result.currency ?? '';
  const words = (minor: number) => minorWords(minor, currency, locale);
  const pay = (amount: number | null | undefined) =>
    amount == null ? '–' : words(toMinor(amount, currency));
  return (
    <>
      <ul className={styles.lessons}>
        {linesOverRuns(closed).map(({ line, minor, against, runs, causes }) => (
          <li key={line} className={styles.lesson}>
            <strong>{gapWords[line]}</strong> {`${words(minor)} in all, against you in ${against} of ${runs}`}
            {causes.length > 0 &&
              `: ${causes.map((one) => `${causeWords[one.cause].toLowerCase()} ${one.runs}`).join(', ')}`}
          </li>
        ))}
      </ul>
      <div className={styles.wide}>
        <table className={styles.minutes}>
          <caption className="visuallyHidden">Runs, quoted and made</caption>
          <thead>
            <tr>
              <th scope="col">Run</th>
              <th scope="col">Quoted</th>
              <th scope="col">Made</th>
              <th scope="col">An hour, quoted</th>
              <th scope="col">An hour, made</th>
            </tr>
          </thead>
          <tbody>
            {closed.map(({ runId, name, closedOn, result: { bridge, quoted, came } }) => (
              <tr key={runId}>
                <th scope="row">
                  <Link href={`/making/${encodeURIComponent(runId)}/after`}>{name}</Link>,{' '}
                  {formatter.day(closedOn)}
                </th>
                <td>{bridge === null ? '–' : words(bridge.from)}</td>
                <td>{bridge === null ? '–' : words(bridge.to)}</td>
                <td>{pay(quoted?.payPerHour)}</td>
                <td>{pay(came?.payPerHour)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </>
  );
}
