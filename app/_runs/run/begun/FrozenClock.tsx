import { CardSection } from '@/app/_controls/CardSection';
import { ClockTable } from '@/app/_runs/run/sections/ClockTable';
import { weekdayWords } from '@/app/_words/making/runs/runAnswerWords';
import { runTable } from '@/app/_words/making/runs/runTable';
import { heatingsWords } from '@/app/_words/making/runs/runTroubleWords';
import { frozenPlan } from '@/lib/making/standard/frozenPlan';
import type { BegunOnScreen } from './begunOnScreen';

/** The clock as it was frozen. */
export function FrozenClock({ on, numeral }: Readonly<{ on: BegunOnScreen; numeral: number }>) {
  const { standard, locale } = on;
  const { sessions, lastDay } = frozenPlan(standard);
  const isDone = on.facts.isClosed;
  return (
    <CardSection
      {...{ numeral }}
      id="frozen-clock"
      heading={runTable.when}
      answer={
        <>
          <strong>{runTable.plannedFor(weekdayWords(lastDay, locale), isDone)}</strong>,{' '}
          {heatingsWords(sessions.length)}
        </>
      }
    >
      <ClockTable clock={standard.clock} designs={standard.works} locale={locale} />
    </CardSection>
  );
}
