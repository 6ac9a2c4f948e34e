'use client';

import Link from 'next/link';
import { classes } from '@/app/_controls/classes';
import { FindingRow } from '@/app/_controls/FindingRow';
import { workshopFieldId } from '@/app/_documents/fieldAddress';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { useBench } from '@/app/_orderBook/useBench';
import type { OrderBook } from '@/app/_orderBook/useOrderBook';
import type { TextContext } from '@/app/_words/formatter';
import { leftOutWords } from '@/app/_words/orders/bench/leftOutWords';
import { ifAllComeWords, weekWords } from '@/app/_words/orders/board/benchWeekWords';
import { AnswerMissing } from '@/app/_workers/AnswerMissing';
import type { WeekAhead } from '@/lib/calendar/weeksAhead';
import { benchClaim } from '@/lib/orders/bench/orderLoad';
import styles from './BenchWeeks.module.css';

type BenchWeeksProps = Readonly<{
  workspace: ReadyWorkspace;
  book: OrderBook;
}>;

/** Hours at the bench by week: what is accepted, what is asked, what is free; and what would be if all of it came. */
export function BenchWeeks({ workspace, book }: BenchWeeksProps) {
  // Asked here, so that each answer draws this part alone.
  const { calendar, weeks, leftOut, ifAllCome, isKnown, isWaiting, failure } = useBench(workspace, book);
  const context: TextContext = workspace.workshop;
  const { board, today } = book;
  const nameOf = (orderId: string) => book.of(orderId)?.facts.order.name ?? '';
  const open = board.filter((order) => benchClaim(order) === 'open').length;
  const [start, end] = ifAllComeWords(ifAllCome, { weeks, open }, nameOf, today, context);
  const untold = leftOutWords(leftOut.map(nameOf));
  const most = Math.max(1, ...weeks.map(({ free, accepted, quoted }) => Math.max(free, accepted + quoted)));
  return (
    <section className={styles.section} aria-labelledby="bench-heading">
      <h2 className={styles.heading} id="bench-heading">
        Bench hours by week
      </h2>
      {calendar === null ? (
        <p className={styles.none}>
          Nobody has said when you are free, so no day can be promised.{' '}
          <Link href={`/workshop#${workshopFieldId(['blocks'])}`}>Say your free hours</Link>
        </p>
      ) : (
        <>
          <p className={styles.answer}>
            {isWaiting ? (
              'Working out what the orders take…'
            ) : (
              <>
                {start} <strong>{end}</strong>
              </>
            )}
          </p>
          {untold !== null && (
            <ul className={styles.untold}>
              <FindingRow severity="caution" {...untold} />
            </ul>
          )}
          <table className={styles.weeks}>
            <caption className="visuallyHidden">Hours at the bench by week</caption>
            <thead className="visuallyHidden">
              <tr>
                <th scope="col">week</th>
                <th scope="col">parts</th>
                <th scope="col">taken</th>
              </tr>
            </thead>
            <tbody>
              {weeks.map((week) => {
                const { name, taken, parts, isOver } = weekWords(week, today, context);
                return (
                  <tr key={week.monday}>
                    <th className={styles.week} scope="row">
                      {name}
                    </th>
                    <td className={styles.bar}>
                      {isKnown && <WeekBar week={week} most={most} />}
                      <span className="visuallyHidden">{isKnown && parts}</span>
                    </td>
                    <td className={classes(styles.taken, isOver && styles.over)}>{isKnown && taken}</td>
                  </tr>
                );
              })}
            </tbody>
          </table>
          <ul className={styles.key}>
            {(['accepted', 'quoted', 'free'] as const).map((part) => (
              <li key={part}>
                <svg className={styles.swatch} viewBox="0 0 18 14" width="18" height="14" aria-hidden="true">
                  <Part part={part} x={0.5} width={17} height={13} />
                </svg>
                {part === 'quoted' ? 'asked or quoted' : part}
              </li>
            ))}
          </ul>
        </>
      )}
      <AnswerMissing what="What some orders take could not be worked out" failure={failure} />
    </section>
  );
}

// Helpers

const FULL_PX = 440;
const HIGH_PX = 26;
const HATCH_PX = 7;

function WeekBar({ week, most }: Readonly<{ week: WeekAhead; most: number }>) {
  const px = (minutes: number) => (minutes / most) * FULL_PX;
  const [free, accepted, used] = [px(week.free), px(week.accepted), px(week.accepted + week.quoted)];
  return (
    <svg
      className={styles.drawing}
      viewBox={`-1 -1 ${FULL_PX + 2} ${HIGH_PX + 2}`}
      preserveAspectRatio="none"
      aria-hidden="true"
      focusable="false"
    >
      {free > 0 && <Part part="free" x={0} width={free} height={HIGH_PX} />}
      {accepted > 0 && <Part part="accepted" x={0} width={accepted} height={HIGH_PX} />}
      {used > accepted && <Part part="quoted" x={accepted} width={used - accepted} height={HIGH_PX} />}
      {used > free && <path className={styles.limit} d={`M${free} -1v${HIGH_PX + 2}`} />}
    </svg>
  );
}

type PartProps = Readonly<{ part: 'accepted' | 'quoted' | 'free'; x: number; width: number; height: number }>;

/** Filled, hatched or dashed: told apart without their colour. */
function Part({ part, x, width, height }: PartProps) {
  return (
    <>
      <rect className={styles[part]} x={x} y={0} width={width} height={height} />
      {part === 'quoted' && <path className={styles.hatch} d={hatching(x, width, height)} />}
    </>
  );
}

/** Slanting lines, cut off at both ends of a box. */
function hatching(x: number, width: number, height: number): string {
  const lines: string[] = [];
  for (let at = HATCH_PX - height; at < width; at += HATCH_PX) {
    const [from, to] = [Math.max(0, at), Math.min(width, at + height)];
    if (to > from) lines.push(`M${x + from} ${height - (from - at)}L${x + to} ${height - (to - at)}`);
  }
  return lines.join('');
}
