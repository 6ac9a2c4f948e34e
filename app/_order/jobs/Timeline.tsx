'use client';

import { useMemo } from 'react';
import { KeptFileButton } from '@/app/_attachments/KeptFileButton';
import { dayOf } from '@/app/_clock/dayOf';
import { Button } from '@/app/_controls/Button';
import { classes } from '@/app/_controls/classes';
import { takingBack, useNoting } from '@/app/_order/notes/useNoting';
import type { OrderOnScreen } from '@/app/_order/orderOnScreen';
import { timelineWords } from '@/app/_words/orders/notes/orderTimelineWords';
import { shortDay } from '@/app/_words/orders/orderDayWords';
import { deviceLetters } from '@/lib/orders/deviceLetters';
import { paymentsOf, withPayouts } from '@/lib/orders/money/payments';
import { orderTimeline } from '@/lib/orders/orderTimeline';
import { orderEventSchema } from '@/shared/schemas/orderEvents';
import styles from './Jobs.module.css';

/** Everything that was noted and issued, with what was taken back; what passed a gate stands out. */
export function Timeline({ on }: Readonly<{ on: OrderOnScreen }>) {
  const { workspace, facts, orderId, order, today, locale } = on;
  const { allEntries, entries, papers, device } = workspace;
  const { problem, note } = useNoting(on);
  // What counts changes with every entry; all of them are asked for only then.
  // biome-ignore lint/correctness/useExhaustiveDependencies: as said
  const rows = useMemo(() => {
    const [all, out] = [allEntries(), Object.values(papers).flat()];
    return orderTimeline({
      ...{ orderId, jobIds: order.jobIds, entries: all },
      artworkIds: facts.artworks.map(({ artworkId }) => artworkId),
      papers: out,
      letters: deviceLetters(all, out, device),
    })
      .filter(({ of }) => !isToldByPaper(of))
      .toReversed();
  }, [allEntries, entries, papers, device, facts, orderId, order.jobIds]);
  const goingWith = (id: string) => {
    const payment = paymentsOf(facts.happened).find(({ entry }) => entry.id === id);
    return payment === undefined ? [id] : withPayouts(payment);
  };
  return (
    <>
      <ol className={styles.list}>
        {rows.map((row) => {
          const words = timelineWords(row, locale);
          const notedOn = dayOf(new Date(row.at));
          const day = row.day ?? notedOn;
          return (
            <li
              key={workspace.firstId(row.id)}
              className={classes(
                styles.moment,
                words.isOverride && styles.override,
                row.isTakenBack && styles.takenBack,
              )}
            >
              <span className={styles.when}>{shortDay(day, today, locale)}</span>
              <div className={styles.words}>
                <p>
                  <strong>{words.what}</strong>
                  {words.detail !== '' && <bdi> {words.detail}</bdi>}
                </p>
                <p className={styles.quiet}>
                  {[
                    ...(row.isTakenBack ? ['taken back'] : []),
                    ...(notedOn === day ? [] : [`noted ${shortDay(notedOn, today, locale)}`]),
                    ...(row.letter === null ? [] : [`on device ${row.letter}`]),
                  ].join(', ')}
                </p>
              </div>
              <div className={styles.acts}>
                {words.file !== null && (
                  <KeptFileButton attachment={words.file} readFile={workspace.readFile} />
                )}
                {words.canGoBack && !row.isTakenBack && (
                  <Button
                    kind="quiet"
                    spoken={`Take back ${words.what} of ${shortDay(day, today, locale)}`}
                    onPress={() => note(`Take back ${words.what}`, takingBack(goingWith(row.id)))}
                  >
                    Take back
                  </Button>
                )}
              </div>
            </li>
          );
        })}
      </ol>
      <p role="alert">{problem}</p>
    </>
  );
}

/** A quote stands in it itself; the step that it went out says no more. */
function isToldByPaper(of: ReturnType<typeof orderTimeline>[number]['of']): boolean {
  const event = of.table === 'entry' ? orderEventSchema.safeParse(of.entry.body) : null;
  return event?.success === true && event.data.step.what === 'quoted';
}
