import type { SeenMaking } from '@/app/_words/stall/makingWords';
import type { BroughtAnswer } from '@/lib/stall/making/toPress';
import type { Making } from './useMaking';

/** @returns what its words are made of. */
export function seenMaking(making: Making, answer: BroughtAnswer): SeenMaking {
  const { jobs, press, answerOf, isWaiting, stopped, times, hasCalendar, firstDay, today, ordersLeftOut } =
    making;
  const known = jobs.flatMap(({ designId }) => answerOf(designId) ?? []);
  const sum = (values: readonly number[]) => values.reduce((all, value) => all + value, 0);
  return {
    ...{ isWaiting, stopped, times, hasCalendar, firstDay, today, ordersLeftOut },
    isPlanned: answer.kind === 'planned',
    pieces: sum(press.map((one) => one.press)),
    work:
      known.length < jobs.length
        ? null
        : {
            minutes: sum(known.map(({ attendedMinutes }) => attendedMinutes)),
            sessions: sum(known.map(({ work }) => work.press?.sessions ?? 0)),
          },
  };
}
