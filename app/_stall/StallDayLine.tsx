import { useMemo } from 'react';
import { classes } from '@/app/_controls/classes';
import sheet from '@/app/_controls/ListSheet.module.css';
import { OpenLine, OpenName } from '@/app/_controls/OpenLine';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { amountWords } from '@/app/_words/amountWords';
import { formatterFor } from '@/app/_words/formatter';
import { closedLine, closedWord, notClosedWhole } from '@/app/_words/stall/closedWords';
import { stageWords, stallDaysWords, stallDueWords } from '@/app/_words/stall/stallListWords';
import { usableLocale } from '@/app/_words/usableLocale';
import { tapsSince } from '@/lib/stall/count/tapsSince';
import { duesOf } from '@/lib/stall/days/duesOf';
import type { StallDayRow } from '@/lib/stall/days/stallCalendar';
import type { DayClose } from '@/shared/schemas/stallPapers';
import type { Workshop } from '@/shared/schemas/workshop';
import styles from './Stall.module.css';

type StallDayLineProps = Readonly<{
  row: StallDayRow;
  /** Null while the day is not closed. */
  close: DayClose | null;
  today: string;
  workspace: Pick<ReadyWorkspace, 'workshop' | 'entries'>;
}>;

/** One stall day of the calendar: which, when and where, and what is due next for it or came of it. */
export function StallDayLine({ row: { id, stallDay }, close, today, workspace }: StallDayLineProps) {
  const { workshop, entries } = workspace;
  const { stallTap } = entries;
  const isAsCounted = useMemo(() => close === null || tapsSince(close, stallTap) === 0, [close, stallTap]);
  const reader = usableLocale(workshop.locale);
  const isAhead =
    close === null && stallDay.archivedOn === null && !stallDay.days.some(({ day }) => day < today);
  const [due, ...more] = isAhead ? duesOf(stallDay) : [];
  const told = due === undefined ? null : stallDueWords(due, today, reader);
  return (
    <OpenLine className={styles.line}>
      <div>
        <OpenName level={3} href={`/stall/${id}`}>
          <bdi>{stallDay.name}</bdi>
        </OpenName>
        <p className={sheet.quiet}>
          {stallDaysWords(stallDay, today, reader)}
          {stallDay.place !== '' && (
            <>
              , <bdi>{stallDay.place}</bdi>
            </>
          )}
        </p>
      </div>
      <div className={sheet.state}>
        <p className={styles.stage}>{close === null ? stageWords[stallDay.stage] : closedWord}</p>
        {close !== null && <p className={styles.due}>{closedResult(close, workshop)}</p>}
        {!isAsCounted && <p className={classes(styles.due, styles.late)}>{notClosedWhole}</p>}
        {told !== null && (
          <p className={classes(styles.due, told.isLate && styles.late)}>
            {told.words}
            {more.length > 0 && <span className={sheet.quiet}> and {more.length} more</span>}
          </p>
        )}
      </div>
    </OpenLine>
  );
}

// Helpers

function closedResult(close: DayClose, workshop: Workshop): string {
  const locale = usableLocale(workshop.locale);
  const { currency } = close;
  return closedLine(
    close,
    (money) => amountWords(money, currency, locale),
    formatterFor({ ...workshop, currency }),
  );
}
