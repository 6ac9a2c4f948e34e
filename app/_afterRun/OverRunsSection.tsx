import Link from 'next/link';
import { CardSection } from '@/app/_controls/CardSection';
import { causeWords, gapWords } from '@/app/_words/afterRun/gapWords';
import { overRunsTable, overRunsWords } from '@/app/_words/afterRun/overRunsWords';
import { minorWords } from '@/app/_words/orders/minorWords';
import { type ClosedRun, linesOverRuns } from '@/lib/variances/acrossRuns';
import { paidOfRun } from '@/lib/variances/paidOfRun';
import { toMinor } from '@/shared/money';
import styles from './AfterRun.module.css';
import type { AfterRunOnScreen } from './afterRunOnScreen';
import { PayDrawing } from './PayDrawing';

/** Quoted, made and paid of every run that is closed, what an hour of each paid, and what keeps going wrong. */
export function OverRunsSection({ on }: Readonly<{ on: AfterRunOnScreen }>) {
  const { workspace, figures, formatter, locale } = on;
  const { closed } = figures;
  const { currency } = workspace.workshop;
  const words = (minor: number) => minorWords(minor, currency, locale);
  const wrong = closed.length > 1 ? linesOverRuns(closed) : [];
  const { key, after } = overRunsWords(closed, currency, formatter, locale);
  return (
    <CardSection
      numeral={4}
      id="after-runs"
      heading={overRunsTable.heading}
      answer={
        <>
          <strong>{key}</strong>
          {after}
        </>
      }
    >
      <RunsTable on={on} />
      <PayDrawing {...{ closed, currency, locale }} />
      {wrong.length > 0 && (
        <>
          <h3 className={styles.wrong}>{overRunsTable.wrong}</h3>
          <ul className={styles.lessons}>
            {wrong.map(({ line, minor, against, runs, causes }) => (
              <li key={line} className={styles.lesson}>
                <p>
                  <strong>{gapWords[line]}</strong>{' '}
                  {`${words(minor)} in all, against you in ${against} of ${runs}`}
                  {causes.length > 0 &&
                    `: ${causes.map((one) => `${causeWords[one.cause].toLowerCase()} ${one.runs}`).join(', ')}`}
                </p>
              </li>
            ))}
          </ul>
        </>
      )}
    </CardSection>
  );
}

// Helpers

function RunsTable({ on }: Readonly<{ on: AfterRunOnScreen }>) {
  const { workspace, figures, formatter, locale } = on;
  const { currency } = workspace.workshop;
  const payments = workspace.entries.payment.map(({ body }) => body);
  const words = (minor: number) => minorWords(minor, currency, locale);
  const amount = (units: number | null | undefined) =>
    units == null ? '–' : words(toMinor(units, currency));
  const paidWords = (run: ClosedRun) => {
    const paid = paidOfRun(run.runId, workspace.runs, payments, currency);
    if (paid === null) return overRunsTable.noOrder;
    if (paid.minor === null) return paid.isElsewhere ? overRunsTable.paidElsewhere : overRunsTable.nonePaid;
    return `${words(paid.minor)}${paid.isShared ? overRunsTable.shared : ''}`;
  };
  return (
    <>
      <table className={styles.runs}>
        <caption className="visuallyHidden">{overRunsTable.caption(currency)}</caption>
        <thead>
          <tr>
            <th scope="col">{overRunsTable.run}</th>
            {Object.values(overRunsTable.columns).map((name) => (
              <th scope="col" key={name}>
                {name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {figures.closed.map((run) => {
            const { bridge, quoted, came } = run.result;
            const cells = {
              quoted: amount(quoted?.revenue),
              made: amount(came?.revenue),
              paid: paidWords(run),
              profitQuoted: bridge === null ? '–' : words(bridge.from),
              profitMade: bridge === null ? '–' : words(bridge.to),
              hourQuoted: amount(quoted?.payPerHour),
              hourMade: amount(came?.payPerHour),
            } satisfies Record<keyof typeof overRunsTable.columns, string>;
            return (
              <tr key={run.runId}>
                <th scope="row">
                  <Link href={`/making/${encodeURIComponent(run.runId)}/after`}>{run.name}</Link>,{' '}
                  {formatter.day(run.closedOn)}
                </th>
                {Object.entries(overRunsTable.columns).map(([of, name]) => (
                  <td key={of} data-name={name}>
                    {cells[of as keyof typeof cells]}
                  </td>
                ))}
              </tr>
            );
          })}
        </tbody>
      </table>
      <p className={styles.quiet}>{overRunsTable.told}</p>
    </>
  );
}
