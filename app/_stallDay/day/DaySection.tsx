import { CardSection } from '@/app/_controls/CardSection';
import { FoldRow } from '@/app/_controls/FoldRow';
import { LaterPart } from '@/app/_network/LaterPart';
import { laterParts } from '@/app/_stallDay/laterParts';
import type { StallOnScreen } from '@/app/_stallDay/stallOnScreen';
import { hoursWords } from '@/app/_words/minutesWords';
import { dayAnswer, toldCosts } from '@/app/_words/stall/dayWords';
import { stallDueWords } from '@/app/_words/stall/stallListWords';
import { checkStallDay } from '@/lib/stall/check/checkStallDay';
import { duesOf, type StallDue } from '@/lib/stall/days/duesOf';
import { dayCosts } from '@/lib/stall/plan/costs/dayCosts';
import styles from './Day.module.css';

type DaySectionProps = Readonly<{ on: StallOnScreen; numeral: number; onRemoved: (label: string) => void }>;

/** The day itself: when and where, what is due, what it costs whatever is sold. */
export function DaySection({ on, numeral, onRemoved }: DaySectionProps) {
  const { stallDay, workspace, id, today, locale, amount, show } = on;
  const costs = toldCosts(stallDay, dayCosts(stallDay, workspace.workshop));
  const line = dayAnswer(costs, amount, (hours) => hoursWords(hours, locale));
  const dues = duesOf(stallDay);
  const { presses } = workspace.workshop;
  const isToSettle = checkStallDay({ stallDayId: id, stallDay, presses, today }).length > 0;
  return (
    <CardSection
      numeral={numeral}
      id="the-day"
      heading="The day"
      answer={
        <>
          <strong>{line.key}</strong>
          {line.after}
        </>
      }
    >
      {dues.length > 0 && (
        <ul className={styles.dues}>
          {dues.map((due) => {
            const { words, isLate } = stallDueWords(due, today, locale);
            return (
              <li key={words}>
                <button
                  className={isLate ? styles.late : styles.due}
                  type="button"
                  onClick={() => show(placeOf(due, stallDay.costs))}
                >
                  {words}
                </button>
              </li>
            );
          })}
        </ul>
      )}
      {isToSettle && (
        <LaterPart
          part={laterParts.checks}
          what="What is to be settled"
          props={{ id, stallDay, workshop: workspace.workshop }}
        />
      )}
      <FoldRow
        place={id}
        folds={[
          {
            id: 'stall-fold-day',
            name: 'Days and place',
            holds: [
              'stall-days',
              'stall-place',
              'stall-organiser',
              'stall-stage',
              'stall-applyBy',
              'stall-answerBy',
              'stall-channelId',
            ],
            body: () => <LaterPart part={laterParts.day} what="The day" props={{ on }} />,
          },
          {
            id: 'stall-fold-papers',
            name: 'Permit, insurance, files',
            holds: ['stall-permit', 'stall-insurance', 'stall-attachments'],
            body: () => <LaterPart part={laterParts.papers} what="Permit and insurance" props={{ on }} />,
          },
          {
            id: 'stall-fold-costs',
            name: 'Costs',
            holds: ['stall-costs'],
            body: () => <LaterPart part={laterParts.costs} what="The costs" props={{ on }} />,
          },
          {
            id: 'stall-fold-hours',
            name: 'Your hours',
            holds: ['stall-hours'],
            body: () => <LaterPart part={laterParts.hours} what="Your hours" props={{ on }} />,
          },
          {
            id: 'stall-fold-power',
            name: 'Pressing there',
            holds: ['stall-power'],
            body: () => <LaterPart part={laterParts.power} what="The power there" props={{ on }} />,
          },
          {
            id: 'stall-fold-note',
            name: 'Note, put away, remove',
            holds: ['stall-note'],
            body: () => <LaterPart part={laterParts.note} what="The note" props={{ on, onRemoved }} />,
          },
        ]}
      />
    </CardSection>
  );
}

// Helpers

/** The id of the field in which what is due is told. */
function placeOf(due: StallDue, costs: StallOnScreen['stallDay']['costs']): string {
  switch (due.kind) {
    case 'day':
      return 'stall-days';
    case 'apply':
      return 'stall-stage';
    case 'answer':
      return 'stall-stage';
    case 'fee':
      return `stall-costs-${costs.findIndex(({ id }) => id === due.costId)}-paidOn`;
    case 'proof':
    case 'proofEnds':
      return `stall-${due.of}`;
    default:
      return due satisfies never;
  }
}
