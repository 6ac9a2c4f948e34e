import Link from 'next/link';
import { CardSection } from '@/app/_controls/CardSection';
import styles from '@/app/_runs/run/Run.module.css';
import { runTable } from '@/app/_words/making/runs/runTable';
import { sparesWords } from '@/app/_words/press/sparesWords';
import { frozenPlan } from '@/lib/making/standard/frozenPlan';
import type { BegunOnScreen } from './begunOnScreen';

/** What is made by what was frozen: pieces and blanks by size, and what became of them so far. */
export function FrozenSection({ on, numeral }: Readonly<{ on: BegunOnScreen; numeral: number }>) {
  const { standard, pressed, formatter } = on;
  const { number, count } = formatter;
  const { pieces, take } = frozenPlan(standard);
  const { works } = standard;
  return (
    <CardSection
      {...{ numeral }}
      id="frozen"
      heading={runTable.made}
      answer={
        <>
          <strong>{count(pieces, 'piece')}</strong> of {count(works.length, 'job')};{' '}
          {runTable.take(number(take), count(take - pieces, 'spare'))}
        </>
      }
    >
      <SizesTable on={on} />
      {pressed.turns.some(({ counts }) => counts.some(({ isShared }) => isShared)) && (
        <p className={styles.quiet}>{runTable.sharedTold}</p>
      )}
      <p className={styles.quiet}>{runTable.frozenTold}</p>
      <WorkLinks on={on} />
    </CardSection>
  );
}

// Helpers

/** Spares of what no press knows. */
function untouched({ take, wanted }: Readonly<{ take: number; wanted: number }>) {
  const spares = take - wanted;
  return { spares, sparesLeft: spares, short: 0 };
}

function SizesTable({ on: { standard, pressed, formatter } }: Readonly<{ on: BegunOnScreen }>) {
  const { number } = formatter;
  const { frozenHead: head } = runTable;
  const lines = standard.works.flatMap(({ jobId, lines: own }) => own.map((line) => ({ jobId, ...line })));
  return (
    <table className={styles.table} aria-label={runTable.frozenTable}>
      <thead>
        <tr>
          <th scope="col">{head.size}</th>
          <th scope="col">{head.wanted}</th>
          <th scope="col">{head.take}</th>
          <th scope="col">{head.good}</th>
          <th scope="col">{head.left}</th>
        </tr>
      </thead>
      <tbody>
        {standard.sizes.flatMap(({ jobId, lineId, size }) => {
          const line = lines.find((one) => one.jobId === jobId && one.lineId === lineId);
          const frozen = line?.sizes.find((one) => one.size === size);
          const counts = pressed.turns
            .find((turn) => turn.jobId === jobId && turn.lineId === lineId && turn.isLast)
            ?.counts.find((one) => one.size === size);
          if (line === undefined || frozen === undefined) return [];
          return [
            <tr key={`${jobId} ${lineId} ${size}`}>
              <th scope="row">{lines.length === 1 ? size : `${size}, ${line.name}`}</th>
              <td className={styles.figure}>{number(frozen.wanted)}</td>
              <td className={styles.figure}>{number(frozen.take)}</td>
              <td className={styles.figure}>{number(counts?.good ?? 0)}</td>
              <td className={styles.figure}>{sparesWords(counts ?? untouched(frozen))}</td>
            </tr>,
          ];
        })}
      </tbody>
    </table>
  );
}

/** Back to the jobs it makes, and to whoever waits for them. */
function WorkLinks({ on: { standard, workspace } }: Readonly<{ on: BegunOnScreen }>) {
  const { jobs, kinds, stallDays } = workspace;
  return (
    <ul className={styles.rows}>
      {standard.works.map(({ jobId, orderId, stallDayId, name }) => {
        const order = orderId === null ? undefined : kinds.order.bodies[orderId];
        const day = stallDayId === null ? undefined : stallDays[stallDayId];
        return (
          <li key={jobId} className={styles.row}>
            <span>
              {jobs.some(({ id }) => id === jobId) ? (
                <Link href={`/jobs/${jobId}`}>
                  <bdi>{name}</bdi>
                </Link>
              ) : (
                <bdi>{name}</bdi>
              )}
            </span>
            {order !== undefined && (
              <Link href={`/orders/${orderId}`}>
                <bdi>{runTable.forOrder(order.name)}</bdi>
              </Link>
            )}
            {day !== undefined && (
              <Link href={`/stall/${stallDayId}`}>
                <bdi>{runTable.forOrder(day.name)}</bdi>
              </Link>
            )}
          </li>
        );
      })}
    </ul>
  );
}
