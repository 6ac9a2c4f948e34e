'use client';

import Link from 'next/link';
import { type ReactNode, useMemo } from 'react';
import { Advice } from '@/app/_controls/Advice';
import { Button } from '@/app/_controls/Button';
import { Fold } from '@/app/_controls/Fold';
import { type Severity, SeverityShape } from '@/app/_controls/SeverityShape';
import { useTextContext } from '@/app/_fields/useTextContext';
import { ClockBehind } from '@/app/_keeping/ClockBehind';
import { formatterFor } from '@/app/_words/formatter';
import { closedNames } from '@/app/_words/stall/closedWords';
import {
  clockBackWords,
  clockElsewhereWords,
  closedDayWords,
  foreignWords,
  lastHourWords,
  laterPlanWords,
  plansOfSeveralWords,
  setAsideWords,
  shortAmount,
  ticketOfManyWords,
  unplannedWords,
} from '@/app/_words/stall/count/countWords';
import { takenBackWords } from '@/app/_words/stall/takenBackWords';
import { isLastHour, sellingTime, type WallTime } from '@/lib/stall/count/sellingTime';
import { tapsSince } from '@/lib/stall/count/tapsSince';
import type { DayClose } from '@/shared/schemas/stallPapers';
import styles from './Count.module.css';
import type { Counting } from './useCount';

type CountToldProps = Readonly<{
  counting: Counting;
  wall: WallTime;
  /** The close of the day that is in force; null while it is open. */
  closed: DayClose | null;
  isOfSeveral: boolean;
  isTakenBack: boolean;
  /** The next tile opens what else can become of it. */
  isChoosing: boolean;
  onStop: () => void;
}>;

/** What is not as it should be, or not as ever, before the goods; each sale is kept all the same. */
export function CountTold({
  counting,
  wall,
  closed,
  isOfSeveral,
  isTakenBack,
  isChoosing,
  onStop,
}: CountToldProps) {
  const { workspace, plan, count, ticket, tapsBefore, problem, locale } = counting;
  const formatter = formatterFor(useTextContext());
  const { stallTap } = workspace.entries;
  const since = useMemo(() => (closed === null ? 0 : tapsSince(closed, stallTap)), [closed, stallTap]);
  const planDays = plan.days.map(({ day }) => formatter.day(day)).join(', ');
  const planned = count.goods.slice(plan.goods.length).reduce((sum, { sold }) => sum + sold, 0);
  return (
    <div className={styles.told}>
      {problem !== null && <Advice severity="stop">{problem}</Advice>}
      {closed !== null && (
        <Advice severity="caution">
          {closedDayWords(since)}{' '}
          <Link href={`/stall/${encodeURIComponent(plan.stallDayId)}/evening`}>{closedNames.evening}</Link>
        </Advice>
      )}
      {workspace.clockBehind !== null && (
        <Short severity="caution" words={clockBackWords}>
          <ClockBehind clockBehind={workspace.clockBehind} />
        </Short>
      )}
      {!sellingTime(plan, wall).isOfPlan && (
        <Short severity="caution" words={clockElsewhereWords.short}>
          <p>{clockElsewhereWords.whole(formatter.day(wall.day), planDays)}</p>
        </Short>
      )}
      {ticket.isOfMany && <Advice severity="note">{ticketOfManyWords}</Advice>}
      {tapsBefore > 0 && (
        <Short severity="note" words={laterPlanWords.short}>
          <p>{laterPlanWords.whole(tapsBefore)}</p>
        </Short>
      )}
      {isOfSeveral && (
        <Short severity="caution" words={plansOfSeveralWords.short}>
          <p>{plansOfSeveralWords.whole}</p>
        </Short>
      )}
      {isTakenBack && <Advice severity="caution">{takenBackWords}</Advice>}
      {count.foreign.length > 0 && (
        <Advice severity="caution">
          {foreignWords(
            count.foreign.map(({ currency, minor }) => `${shortAmount(minor, currency, locale)} ${currency}`),
          )}
        </Advice>
      )}
      {count.setAside > 0 && <Advice severity="caution">{setAsideWords(count.setAside)}</Advice>}
      {planned > 0 && <Advice severity="note">{unplannedWords(planned)}</Advice>}
      {isLastHour(plan, wall) && <p className={styles.line}>{lastHourWords}</p>}
      {isChoosing && (
        <div className={styles.choosing} role="status">
          <p>Tap the piece it is about.</p>
          <Button onPress={onStop}>Go on selling</Button>
        </div>
      )}
    </div>
  );
}

// Helpers

type ShortProps = Readonly<{ severity: Severity; words: string; children: ReactNode }>;

/** What is told in one line, for the goods are what the screen is for; the rest unfolds. */
const Short = ({ severity, words, children }: ShortProps) => (
  <Fold
    summary={
      <span className={styles.short}>
        <SeverityShape severity={severity} />
        {words}
      </span>
    }
  >
    {children}
  </Fold>
);
