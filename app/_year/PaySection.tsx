import { CardSection } from '@/app/_controls/CardSection';
import { FoldRow } from '@/app/_controls/FoldRow';
import { Answer } from '@/app/_docket/common/Answer';
import { doubtWords } from '@/app/_words/year/entryWords';
import { isBlankYear, payAnswer, payNotes } from '@/app/_words/year/payWords';
import { MonthDrawing } from './MonthDrawing';
import { PayBridge } from './PayBridge';
import styles from './Year.module.css';
import type { YearSectionProps } from './yearSection';

/** The pay of the year’s hour first, drawn from takings to what is left, then what looks wrong and the months. */
export function PaySection({ on: { standing, today, locale } }: YearSectionProps) {
  const doubts = doubtWords(standing, today, locale);
  const hasMoved = standing.months.some(
    ({ takingsMinor, expensesMinor }) => takingsMinor !== 0 || expensesMinor !== 0,
  );
  const months = { id: 'pay-months', name: 'Month by month' };
  return (
    <CardSection
      numeral={1}
      heading="Pay of the year’s hour"
      id="year-pay"
      answer={<Answer words={payAnswer(standing, locale)} />}
    >
      {!isBlankYear(standing) && <PayBridge {...{ standing, locale }} />}
      {doubts.length > 0 && (
        <ul className={styles.cautions} aria-label="To be looked at">
          {doubts.map((words) => (
            <li key={words}>{words}</li>
          ))}
        </ul>
      )}
      <FoldRow
        place="year"
        folds={[
          ...(hasMoved ? [{ ...months, body: () => <MonthDrawing {...{ standing, locale }} /> }] : []),
          {
            id: 'pay-sum',
            name: 'What it rests on',
            body: () =>
              payNotes(standing).map((words) => (
                <p className={styles.quiet} key={words}>
                  {words}
                </p>
              )),
          },
        ]}
      />
    </CardSection>
  );
}
